/**
 * The launcher: decides between a command-line verb and the window, and wires the one to the other.
 *
 * <p>May use {@code cli} and {@code ui}.
 */
package org.sagwise.app;
