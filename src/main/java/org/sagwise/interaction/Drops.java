package org.sagwise.interaction;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.sagwise.picture.layout.PartShape;
import org.sagwise.scenario.Placement;
import org.sagwise.scenario.Probes;
import org.sagwise.scenario.TerminalRef;
import org.sagwise.scenario.edit.AddPart;
import org.sagwise.scenario.edit.ChangeNote;
import org.sagwise.scenario.edit.Edit;
import org.sagwise.scenario.edit.JoinTerminals;
import org.sagwise.scenario.edit.JointChoice;
import org.sagwise.scenario.edit.PlaceParts;
import org.sagwise.scenario.edit.SetProbes;
import org.sagwise.scenario.edit.Together;

/**
 * What comes of letting go of something.
 *
 * @param bench where it is let go
 */
record Drops(Surface bench) {

    private static final double QUARTER = 90;

    /** A part from the shelf comes to lie; where it meets a terminal it touches it. */
    Edit lay(Tool.Fresh fresh) {
        Snap snap = bench.snapped(fresh.part(), fresh.quarters(), fresh.x(), fresh.y());
        List<Edit> edits = new ArrayList<>();
        edits.add(new AddPart(fresh.part(), placeOf(fresh)));
        if (snap.dx() == fresh.x() && snap.dy() == fresh.y()) {
            edits.addAll(touches(snap));
        }
        return new Together(edits);
    }

    private static Placement placeOf(Tool.Fresh fresh) {
        return new Placement(grid(fresh.x()), grid(fresh.y()), fresh.quarters() * QUARTER);
    }

    /** Parts come to lie elsewhere; where they meet a terminal they touch it. */
    Edit place(Set<String> ids, int dx, int dy) {
        Map<String, Placement> places = new HashMap<>();
        for (String id : ids) {
            bench.placeOf(id)
                    .map(old -> new Placement(old.x() + grid(dx), old.y() + grid(dy), old.turnDegrees()))
                    .ifPresent(place -> places.put(id, place));
        }
        List<Edit> edits = new ArrayList<>();
        edits.add(new PlaceParts(places));
        Snap snap = bench.snapped(ids, dx, dy);
        if (snap.dx() == dx && snap.dy() == dy) {
            edits.addAll(touches(snap));
        }
        return new Together(edits);
    }

    /** A note comes to lie elsewhere; empty for one that is not on the bench. */
    Optional<Edit> layNote(int note, double dx, double dy) {
        return bench.layout()
                .note(note)
                .map(box -> new ChangeNote(
                        note,
                        new ChangeNote.Place(
                                hundredths(box.dx() + dx / PartShape.GRID),
                                hundredths(box.dy() + dy / PartShape.GRID))));
    }

    /** As a person would write it into a file. */
    private static double hundredths(double value) {
        return Math.rint(value * 100) / 100;
    }

    /** A probe comes to rest; the other one too, if it rested nowhere. */
    Edit probe(Tool.Tip tip) {
        TerminalRef to = tip.over().orElseThrow();
        Optional<Probes> old = bench.scenario().probes();
        boolean red = tip.probe() == Tool.Probe.RED;
        return new SetProbes(Optional.of(old.orElseGet(() -> Probes.of(to, to))
                .restingOn(
                        red ? to : old.map(Probes::red).orElse(to),
                        red ? old.map(Probes::black).orElse(to) : to)));
    }

    private List<Edit> touches(Snap snap) {
        return snap.touches().stream()
                .filter(touch ->
                        !bench.isJoined(touch.moved().ref(), touch.other().ref()))
                .<Edit>map(touch ->
                        JoinTerminals.touch(touch.other().ref(), touch.moved().ref(), JointChoice.CONTACT_MOHM))
                .toList();
    }

    private static double grid(int units) {
        return (double) units / PartShape.GRID;
    }
}
