package org.sagwise.picture.bench;

import java.util.ArrayList;
import java.util.List;
import org.sagwise.picture.geometry.Line;
import org.sagwise.picture.geometry.Path;
import org.sagwise.picture.geometry.Point;
import org.sagwise.picture.layout.Conductor;
import org.sagwise.picture.look.ThemedPen;
import org.sagwise.picture.look.Tone;
import org.sagwise.picture.scene.BenchScene;
import org.sagwise.picture.schematic.SchematicPainter;

/** What is seen of a halo behind a conductor, and behind the parts that it joins: a seam on either side. */
final class Halo {

    /** Length of the pieces that a seam is cut into, bench units. */
    private static final double PIECE = 1;

    private Halo() {}

    static void paint(ThemedPen pen, BenchScene scene, Conductor conductor) {
        boolean thin = scene.isSchematic();
        double width = thin ? 0 : ConductorLook.width(conductor, scene.scenario());
        double outer = (thin ? SchematicPainter.HALO : width + ConductorPainter.HALO) / 2;
        double inner = (thin ? SchematicPainter.LINE : width + ConductorPainter.CASING) / 2;
        List<Point> way = SoftPath.points(conductor.points(), thin ? 0 : ConductorLook.radius(conductor));
        Path.Builder seams = new Path.Builder();
        for (int side : new int[] {-1, 1}) {
            seam(seams, scene, way, side * (outer + inner) / 2);
        }
        pen.drawBlunt(seams.build(), pen.colour(Tone.CHOSEN), outer - inner);
    }

    /** A line beside a way, but where it runs over a part or, in a bend, over the way itself. */
    private static void seam(Path.Builder seams, BenchScene scene, List<Point> way, double aside) {
        boolean isOn = false;
        for (Point place : beside(way, aside)) {
            boolean free = distance(way, place) > Math.abs(aside) - PIECE / 2
                    && scene.layout().parts().stream()
                            .noneMatch(part -> part.body().contains(place.x(), place.y()));
            if (free && isOn) {
                seams.lineTo(place.x(), place.y());
            } else if (free) {
                seams.moveTo(place.x(), place.y());
            }
            isOn = free;
        }
    }

    private static double distance(List<Point> way, Point place) {
        double least = Double.MAX_VALUE;
        for (int i = 1; i < way.size(); i++) {
            least = Math.min(least, Line.between(way.get(i - 1), way.get(i)).distance(place.x(), place.y()));
        }
        return least;
    }

    private static List<Point> beside(List<Point> way, double aside) {
        List<Point> places = new ArrayList<>();
        for (int i = 1; i < way.size(); i++) {
            Point from = way.get(i - 1);
            Point to = way.get(i);
            double length = from.distance(to);
            int pieces = (int) Math.ceil(length / PIECE);
            for (int piece = 0; piece <= pieces && length > 0; piece++) {
                places.add(from.toward(to, (double) piece / pieces)
                        .moved(-aside * (to.y() - from.y()) / length, aside * (to.x() - from.x()) / length));
            }
        }
        return places;
    }
}
