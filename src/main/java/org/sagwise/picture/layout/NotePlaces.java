package org.sagwise.picture.layout;

import org.sagwise.scenario.Note;
import org.sagwise.scenario.Scenario;

import java.awt.Point;
import java.awt.Rectangle;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Finds room for notes near what they speak of, clear of parts, figures and conductors. */
final class NotePlaces {

    private static final int CHARACTERS = 26;
    private static final int CHARACTER_WIDTH = 8;
    private static final int LINE_HEIGHT = 17;
    private static final int PADDING = 10;
    private static final int RINGS = 24;

    private final Scenario scenario;
    private final List<PartBox> parts;
    private final List<LinkRoute> routes;
    private final double textScale;
    private final List<Rectangle> taken = new ArrayList<>();

    private NotePlaces(
            Scenario scenario, List<PartBox> parts, List<LinkRoute> routes, double textScale) {
        this.scenario = scenario;
        this.parts = parts;
        this.routes = routes;
        this.textScale = textScale;
        parts.forEach(part -> taken.add(part.body()));
        parts.forEach(part -> taken.add(part.label()));
        routes.forEach(route -> take(route.points()));
    }

    static List<NoteBox> of(
            Scenario scenario, List<PartBox> parts, List<LinkRoute> routes, double textScale) {
        NotePlaces places = new NotePlaces(scenario, parts, routes, textScale);
        List<NoteBox> boxes = new ArrayList<>();
        for (Note note : scenario.notes()) {
            places.anchor(note).ifPresent(anchor -> boxes.add(places.place(note, anchor)));
        }
        return boxes;
    }

    private void take(List<Point> way) {
        for (int i = 1; i < way.size(); i++) {
            Rectangle stretch = new Rectangle(way.get(i - 1));
            stretch.add(way.get(i));
            stretch.grow(6, 6);
            taken.add(stretch);
        }
    }

    private Optional<Point> anchor(Note note) {
        for (PartBox part : parts) {
            if (part.id().equals(note.on())) {
                return Optional.of(new Point(part.x(), part.y()));
            }
        }
        for (LinkRoute route : routes) {
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
        Rectangle box = free(anchor, width, height);
        taken.add(box);
        return new NoteBox(note, lines, box, anchor);
    }

    private Rectangle free(Point anchor, int width, int height) {
        for (int ring = 1; ring < RINGS; ring++) {
            int far = ring * PartShape.LATTICE;
            for (int along = -far; along <= far; along += PartShape.LATTICE) {
                for (Point offset :
                        List.of(
                                new Point(far, along),
                                new Point(-far, along),
                                new Point(along, far),
                                new Point(along, -far))) {
                    Rectangle box =
                            new Rectangle(
                                    anchor.x + offset.x - (offset.x < 0 ? width : 0),
                                    anchor.y + offset.y - (offset.y < 0 ? height : 0),
                                    width,
                                    height);
                    if (isFree(box)) {
                        return box;
                    }
                }
            }
        }
        int lowest = taken.stream().mapToInt(area -> area.y + area.height).max().orElse(0);
        return new Rectangle(anchor.x - width / 2, lowest + PADDING, width, height);
    }

    private boolean isFree(Rectangle box) {
        Rectangle room = new Rectangle(box);
        room.grow(PADDING, PADDING);
        return taken.stream().noneMatch(room::intersects);
    }
}
