/**
 * The shape of a circuit: which terminals are one piece of metal, which cells stand side by side or
 * in a row, which of them is turned round, which joint is missing. What links join is asked of
 * {@link org.sagwise.scenario.net.Nets}; what parts add to that stands here. Knows no hazard and no
 * text.
 */
package org.sagwise.circuit;
