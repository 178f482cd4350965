package org.sagwise.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.sagwise.lesson.LessonProblem;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.Places;
import org.sagwise.scenario.Problem;
import org.sagwise.text.Position;
import org.yaml.snakeyaml.DumperOptions.ScalarStyle;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.events.AliasEvent;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.MappingStartEvent;
import org.yaml.snakeyaml.events.NodeEvent;
import org.yaml.snakeyaml.events.ScalarEvent;
import org.yaml.snakeyaml.events.SequenceStartEvent;
import org.yaml.snakeyaml.parser.Parser;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.StreamReader;

/**
 * Reads YAML event by event. Takes plain data alone: an anchor or an alias is refused, so that a
 * small file cannot unfold into a large one, and tags mean nothing.
 */
final class YamlDocument {

    /** Most characters that a lesson file may have. */
    static final int MOST_CHARACTERS = 512 * 1024;

    private static final int DEEPEST = 16;

    private static final Set<String> NOTHING = Set.of("~", "null", "Null", "NULL");

    private final Parser parser;
    private final List<Finding> findings = new ArrayList<>();

    private YamlDocument(Parser parser) {
        this.parser = parser;
    }

    /** Reads a text. */
    static Document read(String text) {
        if (text.length() > MOST_CHARACTERS) {
            String most = String.valueOf(MOST_CHARACTERS / 1024);
            return new Document(Optional.empty(), List.of(Finding.of("", LessonProblem.TOO_LARGE, most)));
        }
        YamlDocument reader = new YamlDocument(new ParserImpl(new StreamReader(text), new LoaderOptions()));
        try {
            return new Document(reader.root(), reader.findings);
        } catch (Broken broken) {
            reader.findings.add(broken.finding);
        } catch (YAMLException broken) {
            reader.findings.add(YamlFault.explain(broken, text));
        }
        return new Document(Optional.empty(), reader.findings);
    }

    private Optional<Node> root() {
        parser.getEvent();
        Event begin = parser.getEvent();
        if (begin.is(Event.ID.StreamEnd)) {
            findings.add(YamlFault.EMPTY.finding());
            return Optional.empty();
        }
        Node root = node(parser.getEvent(), "", 0);
        parser.getEvent();
        Event next = parser.getEvent();
        if (!next.is(Event.ID.StreamEnd)) {
            findings.add(YamlFault.SECOND.finding().at(at(next.getStartMark())));
        }
        return Optional.of(root);
    }

    private Node node(Event event, String place, int depth) {
        Mark mark = event.getStartMark();
        boolean alias = event instanceof AliasEvent;
        if (alias || (event instanceof NodeEvent named && named.getAnchor() != null)) {
            findings.add(Finding.of(place, LessonProblem.ALIAS).at(at(mark)));
        }
        if (depth > DEEPEST) {
            throw new Broken(YamlFault.DEEP.finding().at(at(mark)));
        } else if (event instanceof MappingStartEvent) {
            return group(mark, place, depth);
        } else if (event instanceof SequenceStartEvent) {
            return items(mark, place, depth);
        }
        return new Node.Scalar(
                mark.getLine() + 1, mark.getColumn() + 1, event instanceof ScalarEvent scalar ? text(scalar) : "");
    }

    private static String text(ScalarEvent scalar) {
        boolean nothing = scalar.getScalarStyle() == ScalarStyle.PLAIN && NOTHING.contains(scalar.getValue());
        return nothing ? "" : scalar.getValue();
    }

    private Node items(Mark mark, String place, int depth) {
        List<Node> items = new ArrayList<>();
        for (Event next = parser.getEvent(); !next.is(Event.ID.SequenceEnd); next = parser.getEvent()) {
            items.add(node(next, Places.item(place, items.size()), depth + 1));
        }
        return new Node.Items(mark.getLine() + 1, mark.getColumn() + 1, items);
    }

    private Node group(Mark mark, String place, int depth) {
        Map<String, Node.Entry> entries = new LinkedHashMap<>();
        for (Event next = parser.getEvent(); !next.is(Event.ID.MappingEnd); next = parser.getEvent()) {
            Mark keyMark = next.getStartMark();
            if (!(next instanceof ScalarEvent key)) {
                throw new Broken(YamlFault.KEY.finding().at(at(keyMark)));
            }
            String name = key.getValue();
            String inner = Places.key(place, name);
            Node value = node(parser.getEvent(), inner, depth + 1);
            if (entries.containsKey(name)) {
                findings.add(Finding.of(inner, Problem.DUPLICATE_KEY, name).at(at(keyMark)));
            }
            entries.putIfAbsent(name, new Node.Entry(keyMark.getLine() + 1, keyMark.getColumn() + 1, value));
        }
        return new Node.Group(mark.getLine() + 1, mark.getColumn() + 1, entries);
    }

    static Optional<Position> at(Mark mark) {
        return Optional.ofNullable(mark).map(it -> new Position(it.getLine() + 1, it.getColumn() + 1));
    }

    /** Stops the reading of a text that is YAML, but not of the kind that a lesson is. */
    private static final class Broken extends RuntimeException {

        private static final long serialVersionUID = 1L;

        private final transient Finding finding;

        Broken(Finding finding) {
            super(finding.toString(), null, false, false);
            this.finding = finding;
        }
    }
}
