/** The few strokes by which everything is painted, and the typeface; every surface has a pen of its own. */
package org.sagwise.picture.pen;
