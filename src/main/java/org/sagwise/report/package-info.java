/**
 * Explanations and tables for other people and programs: Markdown, HTML, text and CSV.
 *
 * <p>May use {@code picture}, {@code run} and {@code lesson}.
 */
package org.sagwise.report;
