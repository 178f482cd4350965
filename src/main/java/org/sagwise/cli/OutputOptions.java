package org.sagwise.cli;

import java.nio.charset.CharsetEncoder;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.sagwise.text.Languages;
import org.sagwise.text.Signs;

/**
 * In which manner a call speaks. Read from the arguments ahead of everything else, so that even a
 * complaint about the arguments is in the right language.
 *
 * @param asked language and decimal mark that the call names; empty if it leaves them to the
 *     machine
 * @param signs whether more than ASCII may be printed
 * @param depth how much is told about a failure of the program itself
 * @param ink whether grave things are coloured
 */
record OutputOptions(Optional<Locale> asked, Signs signs, Depth depth, Ink ink) {

    static final String LANG = "--lang";
    static final String ASCII = "--ascii";
    static final String TRACE = "--trace";
    static final String NO_COLOR = "--no-color";

    private static final String NEEDED_SIGNS = "Ω−›°µ≈";

    /** How much is told about a failure of the program itself. */
    enum Depth {
        MESSAGE,
        TRACE
    }

    /** The manner that these arguments ask for; the machine's own where they say nothing. */
    static OutputOptions of(String[] args) {
        List<String> words = Arrays.asList(args);
        boolean ascii = words.contains(ASCII) || !terminalKnowsSigns();
        return new OutputOptions(
                asked(words),
                ascii ? Signs.ASCII : Signs.PRINT,
                words.contains(TRACE) ? Depth.TRACE : Depth.MESSAGE,
                words.contains(NO_COLOR)
                        ? Ink.PLAIN
                        : Ink.of(System.getenv("NO_COLOR"), System.getenv("TERM"), System.console() != null));
    }

    /** Language and decimal mark of what people read. */
    Locale locale() {
        return asked.orElseGet(() -> spoken(Locale.getDefault(Locale.Category.DISPLAY)));
    }

    private static Optional<Locale> asked(List<String> words) {
        for (int i = 0; i < words.size(); i++) {
            String word = words.get(i);
            if (word.startsWith(LANG + "=")) {
                return Optional.of(Locale.forLanguageTag(word.substring(LANG.length() + 1)));
            }
            if (word.equals(LANG) && i + 1 < words.size()) {
                return Optional.of(Locale.forLanguageTag(words.get(i + 1)));
            }
        }
        return Optional.empty();
    }

    /** Numbers and words go together: who is answered in English gets English numbers. */
    private static Locale spoken(Locale machine) {
        return Languages.has(machine) ? machine : Locale.ENGLISH;
    }

    /** A pipe or a file takes UTF-8; a terminal says what it takes. */
    private static boolean terminalKnowsSigns() {
        if (System.console() == null) {
            return true;
        }
        CharsetEncoder encoder = System.console().charset().newEncoder();
        return encoder.canEncode(NEEDED_SIGNS);
    }
}
