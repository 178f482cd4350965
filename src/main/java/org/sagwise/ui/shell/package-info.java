/** The window itself: its menus, columns, title and arrangement. */
package org.sagwise.ui.shell;
