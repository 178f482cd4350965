/**
 * Posts that explain a scenario to a stranger: put together once as blocks, and written as
 * Markdown, BBCode, plain text or one HTML file.
 */
package org.sagwise.report.post;
