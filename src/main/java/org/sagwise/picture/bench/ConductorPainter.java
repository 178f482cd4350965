package org.sagwise.picture.bench;

import java.util.List;
import org.sagwise.picture.geometry.GridPoint;
import org.sagwise.picture.geometry.Line;
import org.sagwise.picture.geometry.Oval;
import org.sagwise.picture.geometry.Path;
import org.sagwise.picture.geometry.Point;
import org.sagwise.picture.layout.Conductor;
import org.sagwise.picture.layout.LinkRoute;
import org.sagwise.picture.look.ThemedPen;
import org.sagwise.picture.look.Tone;
import org.sagwise.picture.pen.Colour;
import org.sagwise.picture.scene.BenchScene;
import org.sagwise.picture.scene.PotentialScale;
import org.sagwise.reading.LinkReading;
import org.sagwise.scenario.Joint;
import org.sagwise.scenario.Link;

/** Paints wires and plates in the colour of their potential. */
final class ConductorPainter {

    /** How much wider than a wire its halo is. */
    static final double HALO = 15;

    private static final double RIM = 3.2;

    /** How much wider than a wire is what hides the things behind it. */
    static final double CASING = 2 * RIM + 1;

    private static final double SEEN_SHARE = 0.015;

    private final ThemedPen pen;
    private final BenchScene scene;
    private final PotentialScale scale;

    ConductorPainter(ThemedPen pen, BenchScene scene, PotentialScale scale) {
        this.pen = pen;
        this.scene = scene;
        this.scale = scale;
    }

    void paint() {
        List<Conductor> conductors = scene.layout().conductors();
        conductors.stream().filter(this::isEmphasised).forEach(this::halo);
        conductors.stream().filter(conductor -> !conductor.isWire()).forEach(this::conductor);
        conductors.stream().filter(Conductor::isWire).forEach(this::conductor);
        scene.layout().routes().stream()
                .filter(this::isTouch)
                .map(scene.layout()::own)
                .forEach(this::lens);
    }

    private boolean isEmphasised(Conductor conductor) {
        return scene.emphasis().links().stream().anyMatch(conductor::carries);
    }

    private void halo(Conductor conductor) {
        double width = ConductorLook.width(conductor, scene.scenario()) + HALO;
        pen.draw(shape(conductor), Tone.CHOSEN, width);
    }

    private void conductor(Conductor conductor) {
        double width = ConductorLook.width(conductor, scene.scenario());
        Path shape = shape(conductor);
        if (conductor.isWire()) {
            pen.draw(shape, Tone.FELT, width + CASING);
        }
        pen.draw(shape, Tone.CONDUCTOR_EDGE, width + RIM);
        double fromV = potential(conductor, true);
        double toV = potential(conductor, false);
        if (!conductor.isWire() && ConductorLook.isMetal(conductor, scene.scenario())) {
            pen.draw(shape, Tone.METAL, width);
            pen.draw(shape, colour((fromV + toV) / 2), 0.5 * width);
        } else if (Math.abs(scale.share(toV) - scale.share(fromV)) < SEEN_SHARE || Double.isNaN(fromV)) {
            pen.draw(shape, colour((fromV + toV) / 2), width);
        } else {
            graded(conductor, fromV, toV, width);
        }
    }

    /** A wire along which the potential falls enough to be seen. */
    private void graded(Conductor conductor, double fromV, double toV, double width) {
        List<Point> points = SoftPath.points(conductor.points(), ConductorLook.radius(conductor));
        double length = 0;
        for (int i = 1; i < points.size(); i++) {
            length += points.get(i - 1).distance(points.get(i));
        }
        double passed = 0;
        for (int i = 1; i < points.size(); i++) {
            double stretch = points.get(i - 1).distance(points.get(i));
            int pieces = Math.max(1, (int) (stretch / 24));
            for (int piece = 0; piece < pieces; piece++) {
                double middle = passed + stretch * (piece + 0.5) / pieces;
                pen.draw(
                        Line.between(
                                points.get(i - 1).toward(points.get(i), (double) piece / pieces),
                                points.get(i - 1).toward(points.get(i), (piece + 1.0) / pieces)),
                        colour(fromV + (toV - fromV) * middle / length),
                        width);
            }
            passed += stretch;
        }
    }

    /** Potential at one end of a wire; of a plate the mean of what it joins. */
    private double potential(Conductor conductor, boolean atStart) {
        if (conductor.isWire()) {
            LinkReading reading =
                    scene.readings().links().get(conductor.shares().get(0).link());
            return scene.readings().potentialV(atStart ? reading.from() : reading.to());
        }
        double sum = 0;
        for (Conductor.Share share : conductor.shares()) {
            LinkReading reading = scene.readings().links().get(share.link());
            sum += scene.readings().potentialV(reading.from());
            sum += scene.readings().potentialV(reading.to());
        }
        return sum / (2 * conductor.shares().size());
    }

    private Colour colour(double potentialV) {
        return scale.colour(potentialV).orElseGet(() -> pen.colour(Tone.METAL));
    }

    static Path shape(Conductor conductor) {
        return SoftPath.shape(conductor.points(), ConductorLook.radius(conductor));
    }

    private boolean isTouch(LinkRoute route) {
        Link link = scene.scenario().links().get(route.link());
        return link.joint() instanceof Joint.Touch;
    }

    /** A small lens of metal where two parts touch. */
    private void lens(LinkRoute route) {
        GridPoint middle = route.middle();
        boolean level = route.isLevelAt(middle);
        double along = 5.5;
        double across = 13;
        Oval lens = level
                ? new Oval(middle.x(), middle.y(), along, across)
                : new Oval(middle.x(), middle.y(), across, along);
        pen.shape(lens, Tone.METAL_LIGHT, Tone.CONDUCTOR_EDGE, 1.8);
    }
}
