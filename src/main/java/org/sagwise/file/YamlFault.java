package org.sagwise.file;

import java.util.Locale;
import java.util.Optional;
import org.sagwise.lesson.LessonProblem;
import org.sagwise.scenario.Finding;
import org.sagwise.text.Position;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.reader.ReaderException;

/** Says what is broken about YAML in words of people who edit it by hand: indentation, colons, quotes. */
enum YamlFault {
    EMPTY,
    SECOND,
    KEY,
    DEEP,
    TAB,
    QUOTE,
    BRACKET,
    COLON_IN_TEXT,
    MISSING_COLON,
    INDENT,
    SIGN,
    OTHER;

    /** The finding of this kind; its sentence is {@code broken-yaml.…}. */
    Finding finding(String... shown) {
        String word = name().toLowerCase(Locale.ROOT).replace('_', '-');
        return Finding.of("", LessonProblem.BROKEN_YAML, word, shown.length == 0 ? "" : shown[0]);
    }

    static Finding explain(YAMLException broken, String text) {
        if (broken instanceof MarkedYAMLException marked && marked.getProblemMark() != null) {
            int at = marked.getProblemMark().getIndex();
            String sign = at < text.length() ? text.substring(at, text.offsetByCodePoints(at, 1)) : "";
            return kind(String.valueOf(marked.getProblem()), String.valueOf(marked.getContext()))
                    .finding(sign)
                    .at(YamlDocument.at(marked.getProblemMark()));
        } else if (broken instanceof ReaderException unprintable) {
            int end = Math.min(Math.max(unprintable.getPosition(), 0), text.length());
            int lines =
                    (int) text.substring(0, end).chars().filter(c -> c == '\n').count();
            int column = end - text.lastIndexOf('\n', end - 1);
            return SIGN.finding("?").at(Optional.of(new Position(lines + 1, column)));
        }
        return OTHER.finding();
    }

    private static YamlFault kind(String problem, String context) {
        if (problem.contains("TAB")) {
            return TAB;
        } else if (context.contains("quoted scalar")) {
            return QUOTE;
        } else if (context.contains("flow")) {
            return BRACKET;
        } else if (problem.contains("mapping values are not allowed")) {
            return COLON_IN_TEXT;
        } else if (problem.contains("expected ':'")) {
            return MISSING_COLON;
        } else if (problem.contains("<block end>") || problem.contains("not allowed here")) {
            return INDENT;
        }
        return problem.contains("cannot start any token") ? SIGN : OTHER;
    }
}
