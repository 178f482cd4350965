package org.sagwise.picture.schematic;

import org.sagwise.picture.layout.PartBox;
import org.sagwise.picture.scene.BenchScene;

/** Draws the symbol of one kind of part. */
interface Symbol {

    /**
     * @param pen draws about the middle of the part, before it is turned
     */
    void paint(SymbolPen pen, BenchScene scene, PartBox box);
}
