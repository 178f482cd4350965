/** Lessons in the window: the list, the column of a running lesson, and what keeps them going. */
package org.sagwise.ui.lesson;
