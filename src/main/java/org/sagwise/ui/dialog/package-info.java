/** Dialogs in the words and looks of the window. */
package org.sagwise.ui.dialog;
