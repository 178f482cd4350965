/** The card of what is chosen on the bench, and the rows by which it is changed. */
package org.sagwise.ui.inspector;
