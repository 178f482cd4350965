/** Points, boxes, lines and paths: small, immutable, and known to no surface. */
package org.sagwise.picture.geometry;
