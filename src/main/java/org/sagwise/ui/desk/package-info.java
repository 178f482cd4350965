/** The builder's desk: winding, choosing, varying, and one's own cells. */
package org.sagwise.ui.desk;
