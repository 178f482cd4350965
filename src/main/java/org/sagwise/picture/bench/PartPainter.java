package org.sagwise.picture.bench;

import org.sagwise.picture.layout.PartBox;
import org.sagwise.picture.look.ThemedPen;
import org.sagwise.picture.scene.BenchScene;

/** Paints the body of one kind of part, without its figures. */
interface PartPainter {

    void paint(ThemedPen pen, BenchScene scene, PartBox box);
}
