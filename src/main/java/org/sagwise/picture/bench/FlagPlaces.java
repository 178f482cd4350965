package org.sagwise.picture.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.sagwise.hazard.Caution;
import org.sagwise.hazard.Signal;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.geometry.GridPoint;
import org.sagwise.picture.layout.LinkRoute;
import org.sagwise.picture.layout.PartBox;
import org.sagwise.picture.scene.BenchScene;

/**
 * Where flags stand: at what is wrong, be it a part, a wire or a joint, and over no figures, wires, notes and other
 * parts as far as there is room beside them.
 */
public final class FlagPlaces {

    /** Half of the width that a wire or plate is kept free in. */
    private static final double WIRE = 9;

    /** More flags for the wires of one caution say no more. */
    private static final int MOST_LINKS = 4;

    /** Covering what a part is made of weighs less than covering what can be read. */
    private static final double OWN_BODY = 0.25;

    /** How much covered area an earlier candidate is worth: about that of a letter. */
    private static final double RANK = 12;

    private static final double[] SHARES = {0.5, 0.38, 0.62, 0.25, 0.75};

    /**
     * A flag.
     *
     * @param x of its pole
     * @param y so far above the foot of its pole as the pole is thick at the knee: see {@link FlagPainter}
     * @param toRight whether the cloth flies to the right
     * @param signal how grave
     */
    public record Place(double x, double y, boolean toRight, Signal signal) {

        /** All that it covers. */
        public Box box() {
            return Box.between(toRight ? x - 5 : x - 34, y - 30, toRight ? x + 34 : x + 5, y + 12);
        }
    }

    private final BenchScene scene;
    private final List<Box> taken = new ArrayList<>();
    private final List<Place> places = new ArrayList<>();

    private FlagPlaces(BenchScene scene) {
        this.scene = scene;
    }

    /** Flags of a scene, in the order of its parts and then of its links. */
    public static List<Place> of(BenchScene scene) {
        FlagPlaces flags = new FlagPlaces(scene);
        flags.find();
        return List.copyOf(flags.places);
    }

    /** The link that a caution is about: one of the named terminals, and not a part. */
    private static boolean isAboutLinks(Caution caution) {
        return caution.details().containsKey("from") && !caution.links().isEmpty();
    }

    private void find() {
        Map<Integer, Signal> links = new LinkedHashMap<>();
        for (Caution caution : scene.cautions()) {
            if (isAboutLinks(caution)) {
                caution.links().stream()
                        .limit(MOST_LINKS)
                        .forEach(link -> links.merge(link, caution.signal(), FlagPlaces::graver));
            }
        }
        List<PartBox> flagged = scene.layout().parts().stream()
                .filter(box -> signalOf(box.id()).isPresent())
                .toList();
        if (flagged.isEmpty() && links.isEmpty()) {
            return;
        }
        take();
        flagged.forEach(box -> stand(beside(box, signalOf(box.id()).orElseThrow()), box));
        links.forEach((link, signal) -> scene.layout()
                .route(link)
                .ifPresent(route -> stand(along(scene.layout().own(route), signal), null)));
    }

    private static Signal graver(Signal one, Signal other) {
        return one.compareTo(other) <= 0 ? one : other;
    }

    private Optional<Signal> signalOf(String part) {
        return scene.cautions().stream()
                .filter(caution -> !isAboutLinks(caution) && caution.parts().contains(part))
                .map(Caution::signal)
                .min(Comparator.naturalOrder());
    }

    /** What no flag should cover. */
    private void take() {
        scene.layout().parts().forEach(box -> {
            taken.add(box.label().box());
            taken.add(box.body().box());
        });
        scene.layout().notes().forEach(note -> taken.add(note.box().box()));
        scene.layout().routes().forEach(route -> line(route.points()));
        scene.layout().probes().ifPresent(probes -> {
            taken.add(probes.card().box());
            line(probes.redLead());
            line(probes.blackLead());
            taken.add(around(
                    new GridPoint(probes.red().x(), probes.red().y()),
                    probes.redLead().get(probes.redLead().size() - 1)));
            taken.add(around(
                    new GridPoint(probes.black().x(), probes.black().y()),
                    probes.blackLead().get(probes.blackLead().size() - 1)));
        });
    }

    private void line(List<GridPoint> points) {
        for (int i = 1; i < points.size(); i++) {
            taken.add(around(points.get(i - 1), points.get(i)));
        }
    }

    private static Box around(GridPoint one, GridPoint other) {
        return Box.between(
                        Math.min(one.x(), other.x()),
                        Math.min(one.y(), other.y()),
                        Math.max(one.x(), other.x()),
                        Math.max(one.y(), other.y()))
                .grown(WIRE);
    }

    private static List<Place> beside(PartBox part, Signal signal) {
        Box body = part.body().box();
        return List.of(
                new Place(body.right() - 8, body.y() + 4, true, signal),
                new Place(body.x() + 8, body.y() + 4, false, signal),
                new Place(body.right() + 7, body.middleY() + 10, true, signal),
                new Place(body.x() - 7, body.middleY() + 10, false, signal),
                new Place(body.right() + 7, body.bottom() - 6, true, signal),
                new Place(body.x() - 7, body.bottom() - 6, false, signal),
                new Place(body.right() + 7, body.y() + 24, true, signal),
                new Place(body.x() - 7, body.y() + 24, false, signal),
                new Place(body.right() - 10, body.bottom() + 32, true, signal),
                new Place(body.x() + 10, body.bottom() + 32, false, signal),
                new Place(body.middleX() + 12, body.bottom() + 32, true, signal),
                new Place(body.middleX() + 12, body.y() - 12, true, signal));
    }

    private static List<Place> along(LinkRoute route, Signal signal) {
        List<Place> places = new ArrayList<>();
        for (double share : SHARES) {
            GridPoint at = route.at(share);
            if (route.isLevelAt(at)) {
                places.add(new Place(at.x(), at.y() - 22, true, signal));
                places.add(new Place(at.x(), at.y() - 22, false, signal));
                places.add(new Place(at.x(), at.y() + 40, true, signal));
                places.add(new Place(at.x(), at.y() + 40, false, signal));
            } else {
                places.add(new Place(at.x() + 15, at.y() + 10, true, signal));
                places.add(new Place(at.x() - 15, at.y() + 10, false, signal));
            }
        }
        return places;
    }

    private void stand(List<Place> candidates, PartBox own) {
        Place best = candidates.get(0);
        double least = Double.MAX_VALUE;
        for (int i = 0; i < candidates.size(); i++) {
            double covered = covered(candidates.get(i).box(), own) + i * RANK;
            if (covered < least) {
                least = covered;
                best = candidates.get(i);
            }
        }
        places.add(best);
        taken.add(best.box());
    }

    private double covered(Box flag, PartBox own) {
        Box body = own == null ? null : own.body().box();
        double covered = 0;
        for (Box other : taken) {
            covered += flag.common(other).area() * (other.equals(body) ? OWN_BODY : 1);
        }
        return covered;
    }
}
