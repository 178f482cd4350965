/**
 * A bench in one line of trade words, as helpers in a forum write it: {@code 2p inr18650-2500-20A at 4.15 V; B
 * reversed; coil 0.5}. Reads such a line in every language of the program at once, says what it had to assume, and
 * writes a bench as such a line where it can. Which words there are stands in the bundle {@code trade-words}, which
 * reading and writing share; which amount means which key of a part, in {@code Clause}.
 *
 * <p>May use {@code scenario}.
 */
package org.sagwise.words;
