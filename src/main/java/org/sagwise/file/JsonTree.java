package org.sagwise.file;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParseException;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonStreamContext;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.Places;
import org.sagwise.scenario.Problem;
import org.sagwise.scenario.ScenarioRules;

/**
 * A JSON object as plain data: maps in written order, lists, strings, {@link WrittenNumber}s,
 * booleans, {@code null}. Strict by RFC 8259, and limited in depth.
 *
 * @param root the object; empty if the text is broken or holds something else
 * @param findings keys that stand twice, what is broken, that it is no object
 */
record JsonTree(Optional<Map<String, Object>> root, List<FileFinding> findings) {

    /** Objects and lists that may lie within one another. */
    static final int DEEPEST = 32;

    private static final JsonFactory STRICT = JsonFactory.builder()
            .streamReadConstraints(
                    StreamReadConstraints.builder().maxNestingDepth(DEEPEST).build())
            .disable(JsonFactory.Feature.CANONICALIZE_FIELD_NAMES)
            .build();

    static JsonParser parserOf(String text) throws IOException {
        return STRICT.createParser(text);
    }

    /** Reads a whole text; what follows the first value is refused. */
    static JsonTree of(String text) {
        List<FileFinding> findings = new ArrayList<>();
        try (JsonParser parser = parserOf(text)) {
            return new JsonTree(root(parser, text, findings), findings);
        } catch (IOException e) {
            throw new UncheckedIOException("a text in memory cannot fail to be read", e);
        }
    }

    private static Optional<Map<String, Object>> root(JsonParser parser, String text, List<FileFinding> findings)
            throws IOException {
        try {
            JsonToken first = parser.nextToken();
            if (first == JsonToken.START_OBJECT) {
                Map<String, Object> object = object(parser, findings);
                return isAtEnd(parser, text, findings) ? Optional.of(object) : Optional.empty();
            }
            findings.add(
                    first == null
                            ? FileFinding.ofWhole(Problem.NOT_JSON, JsonFault.Kind.EMPTY.word(), "")
                            : noObject(parser, first, findings));
        } catch (JsonProcessingException e) {
            findings.add(JsonFault.explain(e, parser, text));
        }
        return Optional.empty();
    }

    private static FileFinding noObject(JsonParser parser, JsonToken first, List<FileFinding> findings)
            throws IOException {
        Object value = value(parser, first, findings);
        return FileFinding.ofWhole(Problem.NOT_AN_OBJECT, Places.typeOf(value));
    }

    private static boolean isAtEnd(JsonParser parser, String text, List<FileFinding> findings) throws IOException {
        try {
            if (parser.nextToken() == null) {
                return true;
            }
        } catch (JsonParseException e) {
            if (JsonFault.isBracket(text, (int) e.getLocation().getCharOffset())) {
                throw e;
            }
        }
        findings.add(found(parser, Problem.NOT_JSON, JsonFault.Kind.TRAILING.word(), ""));
        return false;
    }

    private static Object value(JsonParser parser, JsonToken token, List<FileFinding> findings) throws IOException {
        return switch (token) {
            case START_OBJECT -> object(parser, findings);
            case START_ARRAY -> list(parser, findings);
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> WrittenNumber.of(parser.getText());
            case VALUE_TRUE -> Boolean.TRUE;
            case VALUE_FALSE -> Boolean.FALSE;
            case VALUE_NULL -> null;
            default -> parser.getText();
        };
    }

    private static Map<String, Object> object(JsonParser parser, List<FileFinding> findings) throws IOException {
        Map<String, Object> object = new LinkedHashMap<>();
        while (parser.nextToken() == JsonToken.FIELD_NAME) {
            String name = parser.currentName();
            if (object.containsKey(name) && findings.size() <= ScenarioRules.MOST_FINDINGS) {
                findings.add(found(parser, Problem.DUPLICATE_KEY, name));
            }
            object.put(name, value(parser, parser.nextToken(), findings));
        }
        // A file may hold millions of empty ones.
        return object.isEmpty() ? Map.of() : object;
    }

    private static List<Object> list(JsonParser parser, List<FileFinding> findings) throws IOException {
        ArrayList<Object> list = new ArrayList<>();
        JsonToken token = parser.nextToken();
        while (token != JsonToken.END_ARRAY) {
            list.add(value(parser, token, findings));
            token = parser.nextToken();
        }
        list.trimToSize();
        return list.isEmpty() ? List.of() : list;
    }

    private static FileFinding found(JsonParser parser, Problem problem, String... details) {
        return new FileFinding(
                Finding.of(placeOf(parser.getParsingContext()), problem, details),
                Optional.of(positionOf(parser.currentTokenLocation())));
    }

    static Position positionOf(JsonLocation location) {
        return new Position(location.getLineNr(), location.getColumnNr());
    }

    /** The place where the parser stands, as in {@code parts[2].internal_mohm}. */
    static String placeOf(JsonStreamContext context) {
        if (context == null || context.inRoot()) {
            return "";
        }
        String outer = placeOf(context.getParent());
        if (context.inArray()) {
            return context.hasCurrentIndex() ? Places.item(outer, context.getCurrentIndex()) : outer;
        }
        return context.hasCurrentName() ? Places.key(outer, context.getCurrentName()) : outer;
    }
}
