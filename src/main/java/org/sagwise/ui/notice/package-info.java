/** Safety messages about the real world, and about the program itself. */
package org.sagwise.ui.notice;
