package org.sagwise.cli;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A call that asks for the window and nothing else: no verb but {@code open}, no option, and no file or one
 * that is there. Whatever may be meant otherwise is left to the command line proper.
 *
 * @param file what the call named
 */
record PlainOpening(Optional<String> file) {

    private static final String VERB = "open";

    /** What the arguments ask for, if it is that. */
    static Optional<PlainOpening> of(String[] args) {
        List<String> words = Arrays.asList(args);
        List<String> rest = words.indexOf(VERB) == 0 ? words.subList(1, words.size()) : words;
        if (rest.isEmpty()) {
            return Optional.of(new PlainOpening(Optional.empty()));
        }
        return rest.size() == 1 && isFile(rest.get(0))
                ? Optional.of(new PlainOpening(Optional.of(rest.get(0))))
                : Optional.empty();
    }

    /** No verb has a point or a slash in its name, and no file that is there begins like an option. */
    private static boolean isFile(String word) {
        boolean isName = word.contains(".") || word.contains("/");
        boolean isMark = word.startsWith("-") || word.startsWith("@");
        try {
            return isName && !isMark && Files.exists(Path.of(word));
        } catch (InvalidPathException none) {
            return false;
        }
    }
}
