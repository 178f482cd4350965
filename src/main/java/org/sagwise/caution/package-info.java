/**
 * The hazard rules, one class each, and their texts. A rule looks at readings and finds cautions:
 * signal word, parts, number against limit, why, and what to do.
 *
 * <p>May use {@code reading}.
 */
package org.sagwise.caution;
