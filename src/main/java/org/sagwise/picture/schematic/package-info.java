/**
 * The bench as a schematic: symbols in the manner of IEC 60617, joined by straight lines. Paints a
 * layout that was made for {@link org.sagwise.picture.layout.Drawing#SCHEMATIC}.
 */
package org.sagwise.picture.schematic;
