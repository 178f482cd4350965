package org.sagwise.picture.layout;

import org.sagwise.scenario.Note;
import org.sagwise.scenario.Scenario;

import java.awt.Point;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Places notes and the meter in the hand near what they speak of. */
final class NotePlaces {

    private static final int CHARACTERS = 26;
    private static final int CHARACTER_WIDTH = 7;
    private static final int LINE_HEIGHT = 17;
    private static final int PADDING = 10;
    private static final int JACK = 10;
    private static final int INSIDE = 16;
    private static final int METER_WIDTH = 104;
    private static final int METER_HEIGHT = 44;

    private final Scenario scenario;
    private final List<PartBox> parts;
    private final Routing routing;
    private final double textScale;
    private final FreeRoom room;

    NotePlaces(Scenario scenario, List<PartBox> parts, Routing routing, double textScale) {
        this.scenario = scenario;
        this.parts = parts;
        this.routing = routing;
        this.textScale = textScale;
        this.room = new FreeRoom(parts, routing.routes());
    }

    /** The meter in the hand, if the scenario's probes rest on terminals of the bench. */
    Optional<ProbeBox> probes() {
        return scenario.probes()
                .flatMap(
                        probes ->
                                terminal(probes.red().toString())
                                        .flatMap(
                                                red ->
                                                        terminal(probes.black().toString())
                                                                .map(black -> meter(red, black))));
    }

    private ProbeBox meter(TerminalPoint red, TerminalPoint black) {
        Rectangle card =
                room.take(
                        List.of(new Point(red.x(), red.y()), new Point(black.x(), black.y())),
                        (int) (textScale * METER_WIDTH),
                        (int) (textScale * METER_HEIGHT));
        return new ProbeBox(
                card, red, routing.lead(card, red, -JACK), black, routing.lead(card, black, JACK));
    }

    private Optional<TerminalPoint> terminal(String name) {
        return parts.stream()
                .flatMap(part -> part.terminals().stream())
                .filter(point -> point.ref().toString().equals(name))
                .findFirst();
    }

    /** Places of all notes whose part or link is on the bench. */
    List<NoteBox> notes() {
        List<NoteBox> boxes = new ArrayList<>();
        for (Note note : scenario.notes()) {
            anchor(note).ifPresent(anchor -> boxes.add(place(note, anchor)));
        }
        return boxes;
    }

    private Optional<Point> anchor(Note note) {
        for (PartBox part : parts) {
            if (part.id().equals(note.on())) {
                return Optional.of(new Point(part.x(), part.y()));
            }
        }
        for (LinkRoute route : routing.routes()) {
            if (scenario.links().get(route.link()).id().equals(Optional.of(note.on()))) {
                return Optional.of(route.middle());
            }
        }
        return Optional.empty();
    }

    private NoteBox place(Note note, Point anchor) {
        List<String> lines = Lines.wrap(note.text(), CHARACTERS);
        int longest = lines.stream().mapToInt(String::length).max().orElse(1);
        int width = (int) (textScale * longest * CHARACTER_WIDTH) + 2 * PADDING;
        int height = (int) (textScale * lines.size() * LINE_HEIGHT) + 2 * PADDING;
        Rectangle box = room.take(List.of(anchor), width, height);
        return new NoteBox(note, lines, box, edge(note, box, anchor));
    }

    /** Where a line from a note ends: just inside the part that it speaks of. */
    private Point edge(Note note, Rectangle box, Point anchor) {
        for (PartBox part : parts) {
            if (part.id().equals(note.on())) {
                Rectangle body = new Rectangle(part.body());
                body.grow(-INSIDE, -INSIDE);
                return new Point(
                        (int) Math.max(body.x, Math.min(body.getMaxX(), box.getCenterX())),
                        (int) Math.max(body.y, Math.min(body.getMaxY(), box.getCenterY())));
            }
        }
        return anchor;
    }
}
