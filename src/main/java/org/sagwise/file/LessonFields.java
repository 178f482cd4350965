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
import org.sagwise.file.LessonNode.Group;
import org.sagwise.file.LessonNode.Items;
import org.sagwise.file.LessonNode.Scalar;
import org.sagwise.lesson.LessonFinding;
import org.sagwise.lesson.LessonProblem;
import org.sagwise.scenario.TerminalRef;
import org.sagwise.text.Languages;
import org.sagwise.text.LocalText;

/**
 * Takes typed values out of one group of a lesson file. What is wrong is noted and something
 * harmless given in its place, so that one pass finds everything.
 */
final class LessonFields {

    /** Stands for a text that is not there; never shown, since such a lesson is refused. */
    private static final LocalText NO_TEXT = LocalText.same("?");

    private final Group group;
    private final List<LessonFault> faults;
    private final Set<String> asked = new HashSet<>();

    LessonFields(Group group, List<LessonFault> faults) {
        this.group = group;
        this.faults = faults;
    }

    /** The fields of any node; a node that is no group is noted and read as an empty one. */
    static LessonFields of(LessonNode node, List<LessonFault> faults) {
        if (node instanceof Group group) {
            return new LessonFields(group, faults);
        }
        faults.add(fault(node, LessonProblem.NOT_A_GROUP));
        return new LessonFields(Group.empty(node.place(), node.position()), faults);
    }

    Group group() {
        return group;
    }

    List<LessonFault> faults() {
        return faults;
    }

    boolean has(String key) {
        return group.values().containsKey(key);
    }

    /** The keys that are there, of these. */
    List<String> present(Collection<String> keys) {
        return keys.stream().filter(this::has).toList();
    }

    /** Notes every key that nobody has asked for. */
    void refuseOthers() {
        for (String key : group.values().keySet()) {
            if (!asked.contains(key)) {
                faults.add(new LessonFault(
                        LessonFinding.of(
                                group.placeOf(key),
                                LessonProblem.UNKNOWN_KEY,
                                key,
                                String.join(", ", asked.stream().sorted().toList())),
                        Optional.of(group.keys().get(key))));
            }
        }
    }

    /** Notes something about the group itself. */
    void wrong(LessonProblem problem, String... details) {
        faults.add(fault(group, problem, details));
    }

    /** Notes something about the value of a key. */
    void wrong(String key, LessonProblem problem, String... details) {
        faults.add(fault(group.values().getOrDefault(key, group), problem, details));
    }

    Optional<LessonNode> node(String key) {
        asked.add(key);
        return Optional.ofNullable(group.values().get(key));
    }

    /** The nodes of a list; none if it is absent. */
    List<LessonNode> items(String key) {
        Optional<LessonNode> node = node(key);
        if (node.isPresent() && node.get() instanceof Items items) {
            return items.items();
        }
        node.ifPresent(it -> faults.add(fault(it, LessonProblem.NOT_A_LIST)));
        return List.of();
    }

    /** Each entry of a group under a key, with the names that the file gives them. */
    Map<String, LessonNode> entries(String key) {
        Optional<LessonNode> node = node(key);
        if (node.isPresent() && node.get() instanceof Group inner) {
            return inner.values();
        }
        node.ifPresent(it -> faults.add(fault(it, LessonProblem.NOT_A_GROUP)));
        return Map.of();
    }

    Optional<String> word(String key) {
        Optional<LessonNode> node = node(key);
        if (node.isEmpty()) {
            return Optional.empty();
        }
        if (node.get() instanceof Scalar scalar && !scalar.text().isBlank()) {
            return Optional.of(scalar.text().strip());
        }
        faults.add(fault(node.get(), LessonProblem.NOT_A_WORD));
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
        for (LessonNode item : items(key)) {
            if (item instanceof Scalar scalar) {
                words.add(scalar.text().strip());
            } else {
                faults.add(fault(item, LessonProblem.NOT_A_WORD));
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
            wrong(key, LessonProblem.OUT_OF_RANGE, String.valueOf(least), String.valueOf(most));
            return otherwise;
        }
        return (int) value;
    }

    boolean flag(String key) {
        return word(key).filter("true"::equals).isPresent();
    }

    /** A text in both languages. */
    LocalText text(String key) {
        Optional<LessonNode> node = node(key);
        return node.isPresent() ? text(node.get()) : missing(key, NO_TEXT);
    }

    Optional<LocalText> textIfAny(String key) {
        return node(key).map(this::text);
    }

    List<LocalText> texts(String key) {
        return items(key).stream().map(this::text).toList();
    }

    LocalText text(LessonNode node) {
        if (!(node instanceof Group)) {
            faults.add(fault(node, LessonProblem.NOT_A_GROUP));
            return NO_TEXT;
        }
        LessonFields both = of(node, faults);
        Map<String, String> texts = new LinkedHashMap<>();
        for (String code : Languages.all()) {
            Optional<LessonNode> words = both.node(code);
            if (words.isPresent()
                    && words.get() instanceof Scalar s
                    && !s.text().isBlank()) {
                texts.put(code, s.text().strip());
            } else if (words.isPresent() || Languages.needed().contains(code)) {
                both.wrong(LessonProblem.MISSING_LANGUAGE, code);
            }
        }
        both.refuseOthers();
        return texts.containsKey(Languages.ENGLISH) ? new LocalText(texts) : NO_TEXT;
    }

    Optional<TerminalRef> terminal(String key) {
        return word(key).flatMap(word -> terminal(key, word));
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

    private static LessonFault fault(LessonNode node, LessonProblem problem, String... details) {
        return new LessonFault(LessonFinding.of(node.place(), problem, details), Optional.of(node.position()));
    }
}
