/**
 * The electrical network, nodal analysis and the operating point with its residuals. Knows no cell,
 * no coil and no file, only nodes and elements.
 *
 * <p>Uses no other room; Commons Math does the linear algebra.
 */
package org.sagwise.network;
