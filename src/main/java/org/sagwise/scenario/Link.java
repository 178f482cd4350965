package org.sagwise.scenario;

import java.util.List;
import java.util.Optional;
import org.sagwise.part.key.Keys;

/**
 * A joint between two terminals, as written: a view of its {@link Keys}.
 *
 * @param from one end; current is counted from here
 * @param to the other end
 * @param keys everything that was written about it, both ends included
 */
public record Link(TerminalRef from, TerminalRef to, Keys keys) {

    public Link {
        if (!keys.text("from").equals(Optional.of(from.toString()))
                || !keys.text("to").equals(Optional.of(to.toString()))) {
            throw new IllegalArgumentException("both ends must stand among the keys");
        }
    }

    /** A link read from keys that hold two well-formed ends. */
    public static Link of(Keys keys) {
        return new Link(
                keys.text("from").flatMap(TerminalRef::parse).orElseThrow(),
                keys.text("to").flatMap(TerminalRef::parse).orElseThrow(),
                keys);
    }

    public static Link ideal(TerminalRef from, TerminalRef to) {
        return between(from, to, "ideal", true);
    }

    /** A touch of two parts; contact resistance in mΩ. */
    public static Link touch(TerminalRef from, TerminalRef to, double mohm) {
        return between(from, to, "contact_mohm", mohm);
    }

    /** A copper jumper of a gauge and a length in mm. */
    public static Link jumper(TerminalRef from, TerminalRef to, int awg, double lengthMm) {
        return between(from, to, "jumper", Keys.of("awg", awg, "length_mm", lengthMm));
    }

    private static Link between(TerminalRef from, TerminalRef to, String how, Object value) {
        return of(Keys.of("from", from.toString(), "to", to.toString(), how, value));
    }

    public Optional<String> id() {
        return keys.text("id");
    }

    /** The contact or jumper of the catalogue that it was said to be; empty if its numbers are its own. */
    public Optional<String> model() {
        return keys.text("model");
    }

    public Joint joint() {
        return Joint.of(keys);
    }

    /** The same joint between other terminals. */
    public Link between(TerminalRef newFrom, TerminalRef newTo) {
        return of(keys.with("from", newFrom.toString()).with("to", newTo.toString()));
    }

    /** Whether it joins these two, either way round. */
    public boolean joins(TerminalRef one, TerminalRef other) {
        return from.equals(one) && to.equals(other) || from.equals(other) && to.equals(one);
    }

    public boolean touches(String partId) {
        return from.part().equals(partId) || to.part().equals(partId);
    }

    /** What a link is called where one is asked for: its id, or {@code #3} for the third of all. */
    public static String nameOf(List<Link> links, int place) {
        return links.get(place).id().orElse("#" + (place + 1));
    }

    /** The place of the link that is called so; -1 if there is none. */
    public static int placeOf(List<Link> links, String name) {
        for (int i = 0; i < links.size(); i++) {
            if (nameOf(links, i).equals(name)) {
                return i;
            }
        }
        return -1;
    }
}
