/**
 * Lessons: their steps, the conditions that a step waits for, and a learner's progress.
 *
 * <p>May use {@code plan}.
 */
package org.sagwise.lesson;
