/**
 * The command line: one command class a verb, thin over the other rooms. Writes results to the
 * streams it is given.
 *
 * <p>May use every room but {@code ui} and {@code app}; loads nothing of JavaFX.
 */
package org.sagwise.cli;
