/** Words, numbers and typeface of the window. */
package org.sagwise.ui.text;
