package org.sagwise.scenario;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.sagwise.part.PartKind;

/**
 * The document: what lies on the bench and how it is joined. Immutable; an edit makes a new one.
 *
 * <p>Holds only what was written. Catalogue values are looked up when the scenario is computed, so
 * a file keeps saying "this model" and not a copy of its numbers.
 *
 * @param title one line
 * @param about Markdown shown beside the bench
 * @param ambientC temperature around the bench, °C
 * @param parts in file order; ids are unique
 * @param links in file order
 * @param fired whether the switches are pressed
 * @param probes where the meter's probes rest, if anywhere
 * @param notes remarks on parts and links
 * @param placement where parts lie, by id; parts that are absent are laid out by the program
 * @param foreign what other tools left under {@code x} at the top of the file, as plain data
 * @param keyOrder the top-level keys that the file had, in its order
 */
public record Scenario(
        String title,
        String about,
        double ambientC,
        List<Part> parts,
        List<Link> links,
        boolean fired,
        Optional<Probes> probes,
        List<Note> notes,
        Map<String, Placement> placement,
        Optional<Object> foreign,
        List<String> keyOrder) {

    public Scenario {
        parts = List.copyOf(parts);
        links = List.copyOf(links);
        notes = List.copyOf(notes);
        placement = Collections.unmodifiableMap(new LinkedHashMap<>(placement));
        keyOrder = List.copyOf(keyOrder);
    }

    /** A scenario of parts and links with everything else at its default. */
    public static Scenario of(String title, List<Part> parts, List<Link> links) {
        return new Scenario(
                title,
                "",
                ScenarioKeys.AMBIENT_C,
                parts,
                links,
                false,
                Optional.empty(),
                List.of(),
                Map.of(),
                Optional.empty(),
                List.of("sagwise", "title", "parts", "links"));
    }

    public static Scenario empty() {
        return of("", List.of(), List.of());
    }

    /** The part of this name. A plain loop: posts and stairs of large benches ask ten thousand times. */
    public Optional<Part> part(String id) {
        for (Part part : parts) {
            if (part.id().equals(id)) {
                return Optional.of(part);
            }
        }
        return Optional.empty();
    }

    public List<Part> partsOf(PartKind kind) {
        return parts.stream().filter(part -> part.kind() == kind).toList();
    }

    public Scenario withTitle(String newTitle) {
        return copy(newTitle, about, ambientC, parts, links, fired, probes, notes, placement);
    }

    public Scenario withAbout(String newAbout) {
        return copy(title, newAbout, ambientC, parts, links, fired, probes, notes, placement);
    }

    public Scenario withAmbientC(double newAmbientC) {
        return copy(title, about, newAmbientC, parts, links, fired, probes, notes, placement);
    }

    public Scenario withParts(List<Part> newParts) {
        return copy(title, about, ambientC, newParts, links, fired, probes, notes, placement);
    }

    public Scenario withLinks(List<Link> newLinks) {
        return copy(title, about, ambientC, parts, newLinks, fired, probes, notes, placement);
    }

    public Scenario withProbes(Optional<Probes> newProbes) {
        return copy(title, about, ambientC, parts, links, fired, newProbes, notes, placement);
    }

    public Scenario withNotes(List<Note> newNotes) {
        return copy(title, about, ambientC, parts, links, fired, probes, newNotes, placement);
    }

    public Scenario withPlacement(Map<String, Placement> newPlacement) {
        return copy(title, about, ambientC, parts, links, fired, probes, notes, newPlacement);
    }

    /** What the thumb does to the button. */
    public Press press() {
        return Press.of(fired);
    }

    /** The same bench with the button held or let go. */
    public Scenario with(Press press) {
        return copy(title, about, ambientC, parts, links, press.isHeld(), probes, notes, placement);
    }

    /** The same bench with the button held. */
    public Scenario pressed() {
        return with(Press.HELD);
    }

    /** The same bench with the button let go. */
    public Scenario released() {
        return with(Press.RELEASED);
    }

    /** This scenario with one part changed; the part keeps its place in the list. */
    public Scenario withPart(String id, UnaryOperator<Part> change) {
        return withParts(parts.stream()
                .map(part -> part.id().equals(id) ? change.apply(part) : part)
                .toList());
    }

    /** This scenario with its joints and probes at other terminals: what each end moves to. */
    public Scenario withEnds(UnaryOperator<TerminalRef> moved) {
        return withLinks(links.stream()
                        .map(link -> link.between(moved.apply(link.from()), moved.apply(link.to())))
                        .toList())
                .withProbes(probes.map(both -> both.restingOn(moved.apply(both.red()), moved.apply(both.black()))));
    }

    /** This scenario with one more part. */
    public Scenario plus(Part part) {
        List<Part> more = new ArrayList<>(parts);
        more.add(part);
        return withParts(more);
    }

    /** This scenario with one more link. */
    public Scenario plus(Link link) {
        List<Link> more = new ArrayList<>(links);
        more.add(link);
        return withLinks(more);
    }

    private Scenario copy(
            String newTitle,
            String newAbout,
            double newAmbientC,
            List<Part> newParts,
            List<Link> newLinks,
            boolean newFired,
            Optional<Probes> newProbes,
            List<Note> newNotes,
            Map<String, Placement> newPlacement) {
        return new Scenario(
                newTitle,
                newAbout,
                newAmbientC,
                newParts,
                newLinks,
                newFired,
                newProbes,
                newNotes,
                newPlacement,
                foreign,
                keyOrder);
    }
}
