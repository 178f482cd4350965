/**
 * The border to the disk: scenario JSON and its schema, share text, loading of catalogue and
 * lessons, atomic saving. Every problem found is reported with its place.
 *
 * <p>May use {@code scenario} and {@code lesson}.
 */
package org.sagwise.file;
