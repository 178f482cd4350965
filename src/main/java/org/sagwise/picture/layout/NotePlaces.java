package org.sagwise.picture.layout;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.sagwise.picture.geometry.GridBox;
import org.sagwise.picture.geometry.GridPoint;
import org.sagwise.scenario.Note;
import org.sagwise.scenario.Scenario;

/** Places notes and the meter in the hand near what they speak of. */
final class NotePlaces {

    private static final int CHARACTERS = 26;
    private static final int MOST_CHARACTERS = 64;

    /** Characters on a side of a square of text, squared: they are higher than wide. */
    private static final double SQUARE = 17.0 / 7;

    private static final int CHARACTER_WIDTH = 7;
    private static final int LINE_HEIGHT = 17;
    private static final int PADDING = 10;
    private static final int JACK = 10;
    private static final int INSIDE = 16;

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
                .flatMap(probes -> terminal(probes.red().toString())
                        .flatMap(red -> terminal(probes.black().toString()).map(black -> meter(red, black))));
    }

    private ProbeBox meter(TerminalPoint red, TerminalPoint black) {
        GridBox card = room.takeOnLeads(
                List.of(new GridPoint(red.x(), red.y()), new GridPoint(black.x(), black.y())),
                (int) (textScale * ProbeBox.WIDTH),
                (int) (textScale * ProbeBox.HEIGHT));
        return new ProbeBox(card, red, routing.lead(card, red, -JACK), black, routing.lead(card, black, JACK));
    }

    private Optional<TerminalPoint> terminal(String name) {
        return parts.stream()
                .flatMap(part -> part.terminals().stream())
                .filter(point -> point.ref().toString().equals(name))
                .findFirst();
    }

    /**
     * Places of all notes whose part or link is on the bench. Those that somebody laid come first,
     * so that the others keep out of their way.
     *
     * @param drawing in a schematic nothing lies where it was laid
     */
    List<NoteBox> notes(Drawing drawing) {
        Map<Integer, NoteBox> boxes = new TreeMap<>();
        for (boolean laid : new boolean[] {true, false}) {
            for (int index = 0; index < scenario.notes().size(); index++) {
                Note note = scenario.notes().get(index);
                if (laid == (note.isLaid() && drawing == Drawing.BENCH)) {
                    int place = index;
                    target(note).ifPresent(target -> boxes.put(place, place(place, note, target, laid)));
                }
            }
        }
        return List.copyOf(boxes.values());
    }

    private Optional<GridPoint> target(Note note) {
        for (PartBox part : parts) {
            if (part.id().equals(note.on())) {
                return Optional.of(new GridPoint(part.x(), part.y()));
            }
        }
        for (LinkRoute route : routing.routes()) {
            if (scenario.links().get(route.link()).id().equals(Optional.of(note.on()))) {
                return Optional.of(route.middle());
            }
        }
        return Optional.empty();
    }

    private NoteBox place(int index, Note note, GridPoint target, boolean laid) {
        List<String> lines = Lines.wrap(note.text(), characters(note.text().length()));
        int longest = lines.stream().mapToInt(String::length).max().orElse(1);
        int width = (int) (textScale * longest * CHARACTER_WIDTH) + 2 * PADDING;
        int height = (int) (textScale * lines.size() * LINE_HEIGHT) + 2 * PADDING;
        GridBox box =
                laid ? room.takeNear(wished(note, target, width, height)) : room.take(List.of(target), width, height);
        return new NoteBox(index, note, lines, box, target, edge(note, box, target));
    }

    /** Long notes have long lines, so that they do not become a tower. */
    private static int characters(int length) {
        return (int) Math.max(CHARACTERS, Math.min(MOST_CHARACTERS, Math.sqrt(SQUARE * length)));
    }

    private static GridBox wished(Note note, GridPoint target, int width, int height) {
        double x = target.x() + note.dx() * PartShape.GRID - width / 2.0;
        double y = target.y() + note.dy() * PartShape.GRID - height / 2.0;
        return new GridBox(GridPoint.whole(x), GridPoint.whole(y), width, height);
    }

    /** Where a line from a note ends: just inside the part that it speaks of. */
    private GridPoint edge(Note note, GridBox box, GridPoint anchor) {
        for (PartBox part : parts) {
            if (part.id().equals(note.on())) {
                GridBox body = part.body().grown(-INSIDE);
                return new GridPoint((int) Math.max(body.x(), Math.min(body.right(), box.middleX())), (int)
                        Math.max(body.y(), Math.min(body.bottom(), box.middleY())));
            }
        }
        return anchor;
    }
}
