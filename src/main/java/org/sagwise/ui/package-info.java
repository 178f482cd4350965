/**
 * The JavaFX window: bench, shelf, ledger, staircase, cautions, lesson, clock and dialogs.
 *
 * <p>May use every room but {@code cli} and {@code app}.
 */
package org.sagwise.ui;
