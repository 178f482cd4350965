/** Lessons of one's own in the window: opened from a folder, watched while they are written. */
package org.sagwise.ui.lesson.author;
