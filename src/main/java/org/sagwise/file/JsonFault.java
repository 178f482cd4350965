package org.sagwise.file;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;

import org.sagwise.scenario.Finding;
import org.sagwise.scenario.Problem;

import java.util.Optional;
import java.util.Set;

/**
 * Says what is broken about JSON in words of people who edit it by hand: quotes, commas, comments.
 */
final class JsonFault {

    private static final String CURLY_QUOTES = "“”„«»‘’‚";
    private static final Set<String> NOT_FINITE = Set.of("NaN", "Infinity", "-Infinity", "INF");

    private JsonFault() {}

    static FileFinding explain(JsonProcessingException e, JsonParser parser, String text) {
        String place = JsonTree.placeOf(parser.getParsingContext());
        if (e instanceof StreamConstraintsException) {
            return tooMuch(parser, place);
        }
        int offset = (int) Math.min(e.getLocation().getCharOffset(), text.length());
        String kind = e instanceof JsonEOFException ? "clipped" : kind(e, text, offset);
        String shown = shown(text, offset);
        return new FileFinding(
                Finding.of(place, Problem.NOT_JSON, kind, shown),
                Optional.of(JsonTree.positionOf(e.getLocation())));
    }

    private static FileFinding tooMuch(JsonParser parser, String place) {
        boolean deep = parser.getParsingContext().getNestingDepth() > JsonTree.DEEPEST;
        Finding finding =
                deep
                        ? Finding.of("", Problem.TOO_DEEP, String.valueOf(JsonTree.DEEPEST))
                        : Finding.of(place, Problem.NOT_JSON, "endless", "");
        return new FileFinding(finding, Optional.of(JsonTree.positionOf(parser.currentLocation())));
    }

    /** The kind of fault, as named by the texts {@code not-json.…}. */
    private static String kind(JsonProcessingException e, String text, int offset) {
        String message = e.getOriginalMessage();
        char at = offset < text.length() ? text.charAt(offset) : ' ';
        if (message.contains("Illegal unquoted character")) {
            return "control";
        } else if (message.contains("escape")) {
            return "escape";
        } else if (NOT_FINITE.contains(word(text, offset))) {
            return "not-finite";
        } else if (message.contains("umeric value")) {
            return "number";
        } else if (at == '\'') {
            return "single-quotes";
        } else if (CURLY_QUOTES.indexOf(at) >= 0) {
            return "curly-quotes";
        } else if (at == '/' || at == '#') {
            return "comment";
        } else if (message.contains("expecting comma")) {
            return closes(at) ? "bracket" : "missing-comma";
        } else if (closes(at)) {
            return before(text, offset) == ',' ? "extra-comma" : "bracket";
        } else if (message.contains("colon")) {
            return "missing-colon";
        } else if (message.contains("field name")) {
            return "bare-key";
        }
        return Character.isLetter(at) ? "word" : "character";
    }

    private static boolean closes(char c) {
        return c == '}' || c == ']';
    }

    private static char before(String text, int offset) {
        int i = offset - 1;
        while (i > 0 && Character.isWhitespace(text.charAt(i))) {
            i--;
        }
        return i >= 0 ? text.charAt(i) : ' ';
    }

    /** The word or the single character at which reading stopped. */
    private static String shown(String text, int offset) {
        String word = word(text, offset);
        if (!word.isEmpty()) {
            return word;
        }
        return offset < text.length()
                ? text.substring(offset, text.offsetByCodePoints(offset, 1))
                : "";
    }

    private static String word(String text, int offset) {
        int start = offset;
        while (start > 0 && isOfWord(text.charAt(start - 1))) {
            start--;
        }
        int end = offset;
        while (end < text.length() && isOfWord(text.charAt(end))) {
            end++;
        }
        return text.substring(start, end);
    }

    private static boolean isOfWord(char c) {
        return Character.isLetterOrDigit(c) || c == '_' || c == '-' || c == '+' || c == '.';
    }
}
