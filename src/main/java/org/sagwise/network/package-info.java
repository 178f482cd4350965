/**
 * The electrical network of a bench at one instant: elements between numbered nodes in, potentials
 * and currents out. It knows no cell, no coil and no file; callers map their terminals to nodes.
 *
 * <p>Entry points: {@link org.sagwise.network.Network} describes, {@link
 * org.sagwise.network.NetworkSolver} solves, {@link org.sagwise.network.OperatingPoint} answers.
 * Everything is immutable and every function pure. Expected trouble (a short of an ideal source,
 * sources that contradict each other) is a {@link org.sagwise.network.Finding}, never an exception.
 *
 * <h2>Method</h2>
 *
 * Kirchhoff's laws are solved on a spanning forest of least resistance, rooted at the reference
 * nodes: every branch outside the forest closes one loop, and the loop currents are the unknowns
 * (or, where that is fewer, the voltages along the forest). The matrix is symmetric positive
 * definite and is factorised by Cholesky, followed by one step of iterative refinement with
 * residuals in doubled precision; the potentials follow by walking the forest from the reference.
 *
 * <p>Node equations (nodal analysis) state the same laws, but hold currents as differences of
 * potentials: across a joint of 1e-7 Ω at 4.2 V the last bit of a {@code double} is 9 nA, 2 % of
 * what a 10 MΩ meter draws. With a forest of least resistance the condition of the diagonally
 * scaled loop matrix is at most loops × nodes, whatever the values of the resistances.
 *
 * <h2>One-way elements, chargers, converters</h2>
 *
 * An {@link org.sagwise.network.Element.OneWay} conducts from its first node to its second with a drop and a resistance
 * and not at all back; chargers and converters ({@link org.sagwise.network.Element.Charger}, {@link
 * org.sagwise.network.Element.Converter}) hold a current, a voltage or a power. Each is in one of a few states, every one of
 * them a linear network; states are tried until all of them agree with their currents and voltages.
 *
 * <h2>Accuracy</h2>
 *
 * For resistances from 1e-7 Ω to 1e9 Ω in one network the currents at each node sum to zero within
 * 1e-9 of the largest current, and the power delivered equals the power absorbed within 1e-9;
 * {@link org.sagwise.network.Residual} reports what was reached. A branch that lies in no loop
 * carries exactly zero.
 */
package org.sagwise.network;
