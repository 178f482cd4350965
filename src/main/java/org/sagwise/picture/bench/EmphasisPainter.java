package org.sagwise.picture.bench;

import org.sagwise.picture.geometry.GridBox;
import org.sagwise.picture.geometry.Round;
import org.sagwise.picture.layout.Conductor;
import org.sagwise.picture.layout.PartBox;
import org.sagwise.picture.look.ThemedPen;
import org.sagwise.picture.look.Tone;
import org.sagwise.picture.pen.Pen;
import org.sagwise.picture.scene.BenchScene;
import org.sagwise.picture.scene.BenchView;

/**
 * Paints what stands out on a bench over a picture of it in which nothing does, so that pointing at
 * something does not paint everything anew.
 */
public final class EmphasisPainter {

    private final ThemedPen pen;
    private final BenchScene scene;

    private EmphasisPainter(ThemedPen pen, BenchScene scene) {
        this.pen = pen;
        this.scene = scene;
    }

    /**
     * Paints the emphasis of a scene, over nothing: the surface is not cleared.
     *
     * @param surface any surface
     */
    public static void paint(Pen surface, BenchScene scene, BenchView view) {
        ThemedPen pen =
                new ThemedPen(surface, scene.theme(), scene.layout().textScale(), view.scale(), scene.lineScale());
        surface.within(view.transform(), () -> new EmphasisPainter(pen, scene).paint());
    }

    private void paint() {
        for (Conductor conductor : scene.layout().conductors()) {
            if (scene.emphasis().links().stream().anyMatch(conductor::carries)) {
                Halo.paint(pen, scene, conductor);
            }
        }
        rings(pen, scene);
        noteRings(pen, scene);
        new LinkTags(pen, scene).paint();
    }

    static void rings(ThemedPen pen, BenchScene scene) {
        for (PartBox box : scene.layout().parts()) {
            if (scene.emphasis().isOn(box.id())) {
                ring(pen, box.body(), scene.emphasis().chosen().contains(box.id()));
            }
        }
    }

    static void noteRings(ThemedPen pen, BenchScene scene) {
        scene.layout().notes().stream()
                .filter(note -> scene.emphasis().notes().contains(note.index()))
                .forEach(note -> ring(pen, note.box(), true));
    }

    private static void ring(ThemedPen pen, GridBox body, boolean chosen) {
        pen.draw(
                Round.between(body.x() - 4, body.y() - 4, body.right() + 4, body.bottom() + 4, 10),
                Tone.CHOSEN,
                chosen ? 4 : 2.5);
    }
}
