/** The window of the instructor: notes, running order and votes. */
package org.sagwise.ui.lesson.instructor;
