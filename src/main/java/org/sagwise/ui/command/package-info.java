/** What the window can be told to do, and the menu items and buttons that tell it. */
package org.sagwise.ui.command;
