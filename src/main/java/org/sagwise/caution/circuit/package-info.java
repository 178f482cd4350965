/**
 * The shape of a circuit for the hazard rules: which terminals are one piece of metal, which cells
 * stand side by side or in a row, which of them is turned round, which joint is missing. Knows no
 * hazard and no text.
 */
package org.sagwise.caution.circuit;
