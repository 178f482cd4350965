/** Choosing a pack: every layout of a handful of cells built, solved and run for a wish. */
package org.sagwise.plan.pack;
