/**
 * How work is called off that somebody asked for and no longer wants, and that nobody should wait for any longer.
 *
 * <p>Entry point: {@link org.sagwise.errand.Errand}. It stands below every other room, so that whatever takes long can
 * heed it.
 */
package org.sagwise.errand;
