/**
 * Explanations and tables for other people and programs: Markdown, HTML, text and CSV.
 *
 * <p>May use {@code picture} and {@code run}.
 */
package org.sagwise.report;
