/** The window as a whole: header, menus, columns, place on the screen. */
package org.sagwise.ui.frame;
