/** Which cells of a drawer belong together, and what that is worth. */
package org.sagwise.plan.pairing;
