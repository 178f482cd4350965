/**
 * What is printed for a class: a sheet with gaps for each bench, and the key for who teaches.
 *
 * <p>One list of items is made from a lesson; HTML and PDF are two ways to set it.
 */
package org.sagwise.report.handout;
