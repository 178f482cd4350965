package org.sagwise.picture.bench;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import org.sagwise.picture.layout.Conductor;
import org.sagwise.picture.layout.PartBox;
import org.sagwise.picture.look.Pen;
import org.sagwise.picture.look.Tone;
import org.sagwise.picture.scene.BenchScene;
import org.sagwise.picture.scene.BenchView;
import org.sagwise.picture.schematic.SchematicPainter;

/**
 * Paints what stands out on a bench over a picture of it in which nothing does, so that pointing at
 * something does not paint everything anew.
 */
public final class EmphasisPainter {

    private final Pen pen;
    private final BenchScene scene;

    private EmphasisPainter(Pen pen, BenchScene scene) {
        this.pen = pen;
        this.scene = scene;
    }

    /**
     * Paints the emphasis of a scene, over nothing: the surface is not cleared.
     *
     * @param surface any surface; its transform is put back afterward
     */
    public static void paint(Graphics2D surface, BenchScene scene, BenchView view) {
        Pen pen = new Pen(surface, scene.theme(), scene.layout().textScale(), view.scale(), scene.lineScale());
        AffineTransform window = surface.getTransform();
        surface.transform(view.transform());
        new EmphasisPainter(pen, scene).paint();
        surface.setTransform(window);
    }

    private void paint() {
        for (Conductor conductor : scene.layout().conductors()) {
            if (scene.emphasis().links().stream().anyMatch(conductor::carries)) {
                pen.fill(around(conductor), Tone.CHOSEN);
            }
        }
        rings(pen, scene);
        noteRings(pen, scene);
        new LinkTags(pen, scene).paint();
    }

    static void rings(Pen pen, BenchScene scene) {
        for (PartBox box : scene.layout().parts()) {
            if (scene.emphasis().isOn(box.id())) {
                ring(pen, box.body(), scene.emphasis().chosen().contains(box.id()));
            }
        }
    }

    static void noteRings(Pen pen, BenchScene scene) {
        scene.layout().notes().stream()
                .filter(note -> scene.emphasis().notes().contains(note.index()))
                .forEach(note -> ring(pen, note.box(), true));
    }

    private static void ring(Pen pen, Rectangle body, boolean chosen) {
        pen.draw(
                Shapes.round(body.getMinX() - 6, body.getMinY() - 6, body.getMaxX() + 6, body.getMaxY() + 6, 12),
                Tone.CHOSEN,
                chosen ? 4 : 2.5);
    }

    /** What is seen of a halo behind a conductor and behind the parts that it joins. */
    private Area around(Conductor conductor) {
        Area halo;
        if (scene.isSchematic()) {
            Shape line = SchematicPainter.shape(conductor);
            halo = stroked(line, SchematicPainter.HALO);
            halo.subtract(stroked(line, SchematicPainter.LINE));
        } else {
            Shape way = ConductorPainter.shape(conductor);
            double width = ConductorLook.width(conductor, scene.scenario());
            halo = stroked(way, width + ConductorPainter.HALO);
            halo.subtract(stroked(way, width + ConductorPainter.CASING));
        }
        for (PartBox box : scene.layout().parts()) {
            if (halo.intersects(box.body())) {
                halo.subtract(new Area(box.body()));
            }
        }
        return halo;
    }

    private static Area stroked(Shape shape, double width) {
        BasicStroke stroke = new BasicStroke((float) width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
        return new Area(stroke.createStrokedShape(shape));
    }
}
