/**
 * The hazard rules and their texts. A rule looks at readings and finds cautions: signal word, parts,
 * number against limit, why, and what to do.
 *
 * <p>May use {@code circuit}, {@code reading} and {@code run}.
 */
package org.sagwise.hazard;
