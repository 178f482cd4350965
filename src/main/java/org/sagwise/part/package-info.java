/**
 * Part descriptions and the physics of one part: a cell's chemistry and rest-voltage curve, a
 * coil's winding, a wire's gauge, a fuse; and the catalogue they come from. Knows nothing of how
 * parts are joined.
 *
 * <p>May use {@code quantity}.
 */
package org.sagwise.part;
