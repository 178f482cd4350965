package org.sagwise.file;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.Problem;

/**
 * Says what is broken about JSON in words of people who edit it by hand: quotes, commas, comments.
 */
final class JsonFault {

    private static final String CURLY_QUOTES = "“”„«»‘’‚";
    /** A text that is followed by a colon. */
    private static final Pattern NAME = Pattern.compile("\"[^\"\\\\\n]{0,100}\"\\s*:");

    private static final Set<String> NOT_FINITE = Set.of("NaN", "Infinity", "-Infinity", "INF");

    /** What is broken; each has a text {@code not-json.…}. */
    enum Kind {
        EMPTY,
        CLIPPED,
        TRAILING,
        CONTROL,
        ESCAPE,
        NOT_FINITE,
        NUMBER,
        DECIMAL_COMMA,
        SINGLE_QUOTES,
        CURLY_QUOTES,
        COMMENT,
        MISSING_COMMA,
        OPEN_LIST,
        EXTRA_COMMA,
        BRACKET,
        MISSING_COLON,
        BARE_KEY,
        WORD,
        CHARACTER,
        ENDLESS;

        String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    private JsonFault() {}

    static Finding explain(JsonProcessingException e, JsonParser parser, String text) {
        if (e instanceof StreamConstraintsException) {
            return tooMuch(parser);
        }
        int offset = (int) Math.min(e.getLocation().getCharOffset(), text.length());
        Kind kind = e instanceof JsonEOFException ? Kind.CLIPPED : kind(e, text, offset);
        if (isWithinAList(parser) && isNameOfAValue(kind, text, offset)) {
            kind = Kind.OPEN_LIST;
        }
        return Finding.of("", Problem.NOT_JSON, kind.word(), shown(kind, text, offset))
                .at(Optional.of(JsonDocument.positionOf(e.getLocation())));
    }

    private static boolean isWithinAList(JsonParser parser) {
        return parser.getParsingContext().inArray();
    }

    /** Whether reading stopped at a name and its colon, which no list can hold. */
    private static boolean isNameOfAValue(Kind kind, String text, int offset) {
        if (kind != Kind.MISSING_COMMA) {
            return false;
        }
        return text.startsWith(":", offset)
                || (text.startsWith("\"", offset)
                        && NAME.matcher(text).region(offset, text.length()).lookingAt());
    }

    private static Finding tooMuch(JsonParser parser) {
        boolean deep = parser.getParsingContext().getNestingDepth() > JsonDocument.DEEPEST;
        Finding finding = deep
                ? Finding.of("", Problem.TOO_DEEP, String.valueOf(JsonDocument.DEEPEST))
                : Finding.of("", Problem.NOT_JSON, Kind.ENDLESS.word(), "");
        return finding.at(Optional.of(JsonDocument.positionOf(parser.currentLocation())));
    }

    private static Kind kind(JsonProcessingException e, String text, int offset) {
        String message = e.getOriginalMessage();
        char at = offset < text.length() ? text.charAt(offset) : ' ';
        if (message.contains("Illegal unquoted character")) {
            return Kind.CONTROL;
        } else if (message.contains("escape")) {
            return Kind.ESCAPE;
        } else if (NOT_FINITE.contains(word(text, offset))) {
            return Kind.NOT_FINITE;
        } else if (message.contains("umeric value") || at == '.' || isInNumber(text, offset)) {
            return Kind.NUMBER;
        }
        return ofCharacter(at, before(text, offset)).orElseGet(() -> expected(message, text, offset));
    }

    /** Faults that the character itself gives away. */
    private static Optional<Kind> ofCharacter(char at, char before) {
        if (at == '\'') {
            return Optional.of(Kind.SINGLE_QUOTES);
        } else if (CURLY_QUOTES.indexOf(at) >= 0) {
            return Optional.of(Kind.CURLY_QUOTES);
        } else if (at == '/' || at == '#') {
            return Optional.of(Kind.COMMENT);
        } else if (at == '}' || at == ']') {
            return Optional.of(before == ',' ? Kind.EXTRA_COMMA : Kind.BRACKET);
        }
        return Optional.empty();
    }

    /** Faults that only what would have been right gives away. */
    private static Kind expected(String message, String text, int offset) {
        if (isAtEnd(text, offset)) {
            return Kind.CLIPPED;
        } else if (message.contains("expecting comma")) {
            return Kind.MISSING_COMMA;
        } else if (message.contains("colon")) {
            return Kind.MISSING_COLON;
        } else if (message.contains("field name")) {
            boolean decimals = before(text, offset) == ',' && isDigit(text, offset) && isDigit(text, offset - 2);
            return decimals ? Kind.DECIMAL_COMMA : Kind.BARE_KEY;
        }
        return isWord(text, offset) ? Kind.WORD : Kind.CHARACTER;
    }

    /** Whether nothing but white space follows, and no word that could not be read ends here. */
    private static boolean isAtEnd(String text, int offset) {
        return text.substring(offset).isBlank() && word(text, offset).isEmpty();
    }

    /** Whether reading stopped within a number: {@code 4.14V}, {@code 0x12}. */
    private static boolean isInNumber(String text, int offset) {
        String word = word(text, offset);
        return offset > 0
                && isDigit(text, offset - 1)
                && offset < text.length()
                && isOfWord(text.charAt(offset))
                && Character.isDigit(word.replaceFirst("^[+-]", "").charAt(0));
    }

    /** Whether reading stopped at a closing bracket or brace. */
    static boolean isBracket(String text, int offset) {
        return offset < text.length() && "}]".indexOf(text.charAt(offset)) >= 0;
    }

    private static boolean isWord(String text, int offset) {
        return offset < text.length() && Character.isLetter(text.charAt(offset));
    }

    private static boolean isDigit(String text, int index) {
        return index < text.length() && Character.isDigit(text.charAt(index));
    }

    private static char before(String text, int offset) {
        int i = offset - 1;
        while (i > 0 && Character.isWhitespace(text.charAt(i))) {
            i--;
        }
        return i >= 0 ? text.charAt(i) : ' ';
    }

    /** What the sentence shows of the text. */
    private static String shown(Kind kind, String text, int offset) {
        boolean wordHere = offset < text.length() && isOfWord(text.charAt(offset));
        if (kind == Kind.ESCAPE) {
            int backslash = text.lastIndexOf('\\', offset);
            return text.substring(Math.max(backslash, 0), Math.min(offset + 1, text.length()));
        } else if (wordHere || kind == Kind.NOT_FINITE || kind == Kind.NUMBER) {
            return word(text, offset);
        } else if (kind == Kind.OPEN_LIST && text.startsWith(":", offset)) {
            int end = text.lastIndexOf('"', offset);
            return text.substring(Math.max(text.lastIndexOf('"', end - 1), 0), end + 1);
        } else if ((kind == Kind.MISSING_COMMA || kind == Kind.OPEN_LIST) && text.startsWith("\"", offset)) {
            int end = text.indexOf('"', offset + 1);
            return end < 0 ? "\"" : text.substring(offset, end + 1);
        }
        return offset < text.length() ? text.substring(offset, text.offsetByCodePoints(offset, 1)) : "";
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
