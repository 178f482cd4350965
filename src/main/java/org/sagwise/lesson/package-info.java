/**
 * Lessons: their steps, the conditions that a step waits for, and a learner's progress.
 *
 * <p>May use {@code run}.
 */
package org.sagwise.lesson;
