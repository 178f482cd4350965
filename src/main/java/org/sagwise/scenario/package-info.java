/**
 * The document: parts, links, placement, notes and ambient temperature, immutable; its edits, each
 * of which makes a new document; and its validation.
 *
 * <p>May use {@code part}.
 */
package org.sagwise.scenario;
