/** Scrolling that follows the focus. */
package org.sagwise.ui.scroll;
