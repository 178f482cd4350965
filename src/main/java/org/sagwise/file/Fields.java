package org.sagwise.file;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.sagwise.file.Node.Group;
import org.sagwise.file.Node.Items;
import org.sagwise.file.Node.Scalar;
import org.sagwise.lesson.LessonProblem;
import org.sagwise.scenario.Fault;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.Places;
import org.sagwise.scenario.Problem;
import org.sagwise.scenario.TerminalRef;
import org.sagwise.text.Languages;
import org.sagwise.text.LocalText;

/**
 * Takes typed values out of one group of a document. What is wrong is noted and something harmless
 * given in its place, so that one pass finds everything.
 */
final class Fields {

    /** Stands for a text that is not there; never shown, since such a document is refused. */
    private static final LocalText NO_TEXT = LocalText.same("?");

    private final String place;
    private final Group group;
    private final List<Finding> findings;
    private final Set<String> asked = new HashSet<>();

    private Fields(String place, Group group, List<Finding> findings) {
        this.place = place;
        this.group = group;
        this.findings = findings;
    }

    /**
     * The fields of any node; a node that is no group is noted and read as an empty one.
     *
     * @param findings takes what is wrong
     */
    static Fields of(String place, Node node, List<Finding> findings) {
        if (node instanceof Group group) {
            return new Fields(place, group, findings);
        }
        findings.add(Finding.of(place, LessonProblem.NOT_A_GROUP).at(Optional.of(node.position())));
        return new Fields(place, new Group(node.line(), node.column(), Map.of()), findings);
    }

    boolean has(String key) {
        return group.has(key);
    }

    /** All keys, in the order of the file. */
    Collection<String> keys() {
        return group.entries().keySet();
    }

    /** The keys that are there, of these. */
    List<String> present(Collection<String> keys) {
        return keys.stream().filter(this::has).toList();
    }

    /** Notes every key that nobody has asked for. */
    void refuseOthers() {
        List<String> known = asked.stream().sorted().toList();
        group.entries().forEach((key, entry) -> {
            if (!asked.contains(key)) {
                findings.add(Finding.of(
                                Places.key(place, key),
                                Problem.UNKNOWN_KEY,
                                key,
                                Places.near(key, known),
                                String.join(", ", known))
                        .at(Optional.of(entry.position())));
            }
        });
    }

    /** Notes something about the group itself. */
    void wrong(Fault problem, String... details) {
        note(place, group, problem, details);
    }

    /** Notes something about the value of a key, or about the group where there is no such key. */
    void wrong(String key, Fault problem, String... details) {
        Optional<Node> value = group.get(key);
        note(value.isPresent() ? Places.key(place, key) : place, value.orElse(group), problem, details);
    }

    private void note(String where, Node node, Fault problem, String... details) {
        findings.add(Finding.of(where, problem, details).at(Optional.of(node.position())));
    }

    private Optional<Node> node(String key) {
        asked.add(key);
        return group.get(key);
    }

    /** The groups of a list; none if it is absent. What is no group is noted and left out. */
    List<Fields> items(String key) {
        List<Node> nodes = nodes(key);
        List<Fields> groups = new ArrayList<>();
        for (int i = 0; i < nodes.size(); i++) {
            Fields fields = of(Places.item(Places.key(place, key), i), nodes.get(i), findings);
            if (nodes.get(i) instanceof Group) {
                groups.add(fields);
            }
        }
        return groups;
    }

    private List<Node> nodes(String key) {
        Optional<Node> node = node(key);
        if (node.isPresent() && node.get() instanceof Items items) {
            return items.items();
        }
        node.ifPresent(it -> wrong(key, LessonProblem.NOT_A_LIST));
        return List.of();
    }

    /** The group under a key; empty if it is absent. */
    Fields inner(String key) {
        Optional<Node> node = node(key);
        return node.isPresent()
                ? of(Places.key(place, key), node.get(), findings)
                : new Fields(Places.key(place, key), new Group(group.line(), group.column(), Map.of()), findings);
    }

    /** Each group of a group under a key, by the names that the file gives them. */
    Map<String, Fields> groups(String key) {
        Fields inner = inner(key);
        Map<String, Fields> groups = new LinkedHashMap<>();
        inner.keys().forEach(name -> groups.put(name, inner.inner(name)));
        return groups;
    }

    Optional<String> word(String key) {
        Optional<Node> node = node(key);
        if (node.isPresent()
                && node.get() instanceof Scalar scalar
                && !scalar.text().isBlank()) {
            return Optional.of(scalar.text().strip());
        }
        node.ifPresent(it -> wrong(key, LessonProblem.NOT_A_WORD));
        return Optional.empty();
    }

    String neededWord(String key) {
        return word(key).orElseGet(() -> missing(key, ""));
    }

    /** The words of a list, or a single one. */
    List<String> words(String key) {
        if (node(key).filter(Scalar.class::isInstance).isPresent()) {
            return List.of(neededWord(key));
        }
        List<String> words = new ArrayList<>();
        List<Node> nodes = nodes(key);
        for (int i = 0; i < nodes.size(); i++) {
            if (nodes.get(i) instanceof Scalar scalar) {
                words.add(scalar.text().strip());
            } else {
                note(Places.item(Places.key(place, key), i), nodes.get(i), LessonProblem.NOT_A_WORD);
            }
        }
        return words;
    }

    OptionalDouble number(String key) {
        Optional<String> word = word(key);
        if (word.isEmpty()) {
            return OptionalDouble.empty();
        }
        OptionalDouble number = parse(word.get());
        if (number.isEmpty()) {
            wrong(key, LessonProblem.NOT_A_NUMBER, word.get());
        }
        return number;
    }

    double neededNumber(String key) {
        OptionalDouble number = number(key);
        if (number.isEmpty() && !has(key)) {
            missing(key, "");
        }
        return number.orElse(0);
    }

    /** A whole number in a range. */
    int whole(String key, int least, int most, int otherwise) {
        OptionalDouble number = number(key);
        if (number.isEmpty()) {
            return otherwise;
        }
        double value = number.getAsDouble();
        if (value != Math.rint(value) || value < least || value > most) {
            wrong(key, Problem.OUT_OF_RANGE, Places.plain(value), String.valueOf(least), String.valueOf(most), "from");
            return otherwise;
        }
        return (int) value;
    }

    boolean flag(String key) {
        return word(key).filter("true"::equals).isPresent();
    }

    /** A text in every language that is needed. */
    LocalText text(String key) {
        return textIfAny(key).orElseGet(() -> missing(key, NO_TEXT));
    }

    Optional<LocalText> textIfAny(String key) {
        return node(key).map(node -> text(Places.key(place, key), node));
    }

    List<LocalText> texts(String key) {
        List<Node> nodes = nodes(key);
        List<LocalText> texts = new ArrayList<>();
        for (int i = 0; i < nodes.size(); i++) {
            texts.add(text(Places.item(Places.key(place, key), i), nodes.get(i)));
        }
        return texts;
    }

    /** A text by each name of the group under a key. */
    Map<String, LocalText> namedTexts(String key) {
        Fields inner = inner(key);
        Map<String, LocalText> texts = new LinkedHashMap<>();
        inner.keys().forEach(name -> texts.put(name, inner.text(name)));
        return texts;
    }

    private LocalText text(String where, Node node) {
        if (!(node instanceof Group)) {
            note(where, node, LessonProblem.NOT_A_GROUP);
            return NO_TEXT;
        }
        Fields each = of(where, node, findings);
        Map<String, String> texts = new LinkedHashMap<>();
        for (String code : Languages.all()) {
            Optional<Node> words = each.node(code);
            if (words.isPresent()
                    && words.get() instanceof Scalar scalar
                    && !scalar.text().isBlank()) {
                texts.put(code, scalar.text().strip());
            } else if (words.isPresent() || Languages.needed().contains(code)) {
                each.wrong(LessonProblem.MISSING_LANGUAGE, code);
            }
        }
        each.refuseOthers();
        // Where somebody writes in another language alone, that stands for English as well.
        texts.values().stream().findFirst().ifPresent(only -> texts.putIfAbsent(Languages.ENGLISH, only));
        return texts.isEmpty() ? NO_TEXT : new LocalText(texts);
    }

    /** The two terminals of a list. */
    Optional<List<TerminalRef>> pair(String key) {
        List<String> words = words(key);
        if (words.size() != 2) {
            wrong(key, LessonProblem.NOT_A_PAIR);
            return Optional.empty();
        }
        List<TerminalRef> found =
                words.stream().flatMap(word -> terminal(key, word).stream()).toList();
        return found.size() == 2 ? Optional.of(found) : Optional.empty();
    }

    private Optional<TerminalRef> terminal(String key, String word) {
        Optional<TerminalRef> terminal = TerminalRef.parse(word);
        if (terminal.isEmpty()) {
            wrong(key, LessonProblem.BAD_TERMINAL, word);
        }
        return terminal;
    }

    private <T> T missing(String key, T otherwise) {
        wrong(LessonProblem.MISSING_KEY, key);
        return otherwise;
    }

    static OptionalDouble parse(String word) {
        try {
            double value = Double.parseDouble(word);
            return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
        } catch (NumberFormatException e) {
            return OptionalDouble.empty();
        }
    }
}
