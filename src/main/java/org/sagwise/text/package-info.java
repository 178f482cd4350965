/**
 * Words: the sentences of the bundles, texts in every language of the program, wrapping, and the
 * signs that a terminal can show.
 *
 * <p>Uses the JDK alone.
 */
package org.sagwise.text;
