package org.sagwise.scenario;

import java.util.List;
import java.util.Locale;
import org.sagwise.text.Texts;

/** The one place where parts and terminals get the names that people read. */
public final class Names {

    /** Longer lists end in "and 7 more". */
    private static final int MOST = 4;

    private final Texts texts;

    private Names(Texts texts) {
        this.texts = texts;
    }

    /** Names in this language. */
    public static Names in(Locale locale) {
        return new Names(Texts.in("names", locale));
    }

    /** What texts call a part: {@code cell A}, {@code the coil}, or its label. */
    public String part(Part part) {
        return part(PartName.of(part));
    }

    public String part(PartName name) {
        String kind = name.kind().word();
        if (name.isPlain()) {
            return texts.say("name.only." + kind, name.word());
        }
        if (name.number().isPresent()) {
            return texts.say("name." + kind, name.number().get());
        }
        return name.needsKind() ? texts.say("name." + kind, name.word()) : name.word();
    }

    /**
     * What the bench, tables and curves call a part: its label, or its id. An id that only the bench
     * has given says what kind of part it is and which, in this language.
     */
    public String label(Part part) {
        return label(PartName.of(part));
    }

    private String label(PartName name) {
        return name.isGiven()
                ? texts.say("name." + name.kind().word(), name.number().orElse(""))
                        .strip()
                : name.word();
    }

    /** The same for what a scenario has of this id; the id where it has nothing. */
    public String label(Scenario scenario, String id) {
        return label(PartName.of(scenario, id));
    }

    /** Several names in one: {@code cell A and cell B}. */
    public String parts(List<Part> parts) {
        return list(parts.stream().map(this::part).toList());
    }

    /** What sentences call a terminal: {@code cell A's plus}. */
    public String terminal(TerminalName name) {
        String part = part(name.part());
        return texts.say("terminal." + key(name.ref()), part, of(name.part(), part));
    }

    public String terminal(Scenario scenario, TerminalRef ref) {
        return terminal(TerminalName.of(scenario, ref));
    }

    /** What tables and labels call a terminal: {@code A plus}. */
    public String brief(Scenario scenario, TerminalRef ref) {
        return texts.say(
                "brief." + key(ref), label(TerminalName.of(scenario, ref).part()));
    }

    /** Names in a row: {@code cell A, cell B and cell C}. */
    public String list(List<String> names) {
        if (names.size() > MOST) {
            return texts.say("list.rest", row(names.subList(0, MOST - 1)), names.size() - MOST + 1);
        }
        if (names.size() < 2) {
            return String.join("", names);
        }
        int last = names.size() - 1;
        return texts.say("list.pair", row(names.subList(0, last)), names.get(last));
    }

    /**
     * A word in this language: names of parts, terminals and joints, lists of words, and what is a
     * text already.
     */
    public String word(Object word) {
        if (word instanceof PartName part) {
            return part(part);
        }
        if (word instanceof TerminalName terminal) {
            return terminal(terminal);
        }
        if (word instanceof JointName joint) {
            return texts.say("joint", terminal(joint.from()), terminal(joint.to()));
        }
        return word instanceof List<?> words
                ? list(words.stream().map(this::word).toList())
                : word.toString();
    }

    /** A name or sentence with a capital letter in front. */
    public static String capital(String text, Locale locale) {
        if (text.isEmpty()) {
            return text;
        }
        int first = text.offsetByCodePoints(0, 1);
        return text.substring(0, first).toUpperCase(locale) + text.substring(first);
    }

    private String of(PartName name, String part) {
        String kind = name.kind().word();
        boolean saysKindAlone =
                part.equalsIgnoreCase(texts.say("name." + kind, "").strip());
        if (name.isPlain() || saysKindAlone) {
            return texts.say("of.only." + kind);
        }
        return texts.say(name.label().isPresent() ? "of.label" : "of", part);
    }

    private String row(List<String> names) {
        return names.stream().reduce((a, b) -> texts.say("list.more", a, b)).orElse("");
    }

    private static String key(TerminalRef ref) {
        return ref.terminal().replace("+", "plus").replace("-", "minus");
    }
}
