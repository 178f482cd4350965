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
import org.sagwise.part.key.Keys;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.Places;
import org.sagwise.scenario.Problem;
import org.sagwise.scenario.ScenarioRules;
import org.sagwise.text.Position;

/** Reads JSON token by token: strict by RFC 8259, and limited in depth. */
final class JsonDocument {

    /** Objects and lists that may lie within one another. */
    static final int DEEPEST = 32;

    private static final JsonFactory STRICT = JsonFactory.builder()
            .streamReadConstraints(
                    StreamReadConstraints.builder().maxNestingDepth(DEEPEST).build())
            .disable(JsonFactory.Feature.CANONICALIZE_FIELD_NAMES)
            .build();

    private final JsonParser parser;
    private final String text;
    private final List<Finding> findings = new ArrayList<>();

    private JsonDocument(JsonParser parser, String text) {
        this.parser = parser;
        this.text = text;
    }

    /** Reads a whole text; what follows the first value is refused. */
    static Document read(String text) {
        try (JsonParser parser = STRICT.createParser(text)) {
            JsonDocument reader = new JsonDocument(parser, text);
            return new Document(reader.root(), reader.findings);
        } catch (IOException e) {
            throw new UncheckedIOException("a text in memory cannot fail to be read", e);
        }
    }

    private Optional<Node> root() throws IOException {
        try {
            JsonToken first = parser.nextToken();
            if (first != null) {
                Node root = node(first);
                return isAtEnd() ? Optional.of(root) : Optional.empty();
            }
            findings.add(Finding.of("", Problem.NOT_JSON, JsonFault.Kind.EMPTY.word(), ""));
        } catch (JsonProcessingException e) {
            findings.add(JsonFault.explain(e, parser, text));
        }
        return Optional.empty();
    }

    private boolean isAtEnd() throws IOException {
        try {
            if (parser.nextToken() == null) {
                return true;
            }
        } catch (JsonParseException e) {
            if (JsonFault.isBracket(text, (int) e.getLocation().getCharOffset())) {
                throw e;
            }
        }
        findings.add(found(Problem.NOT_JSON, JsonFault.Kind.TRAILING.word(), ""));
        return false;
    }

    private Node node(JsonToken token) throws IOException {
        JsonLocation here = parser.currentTokenLocation();
        int line = here.getLineNr();
        int column = here.getColumnNr();
        return switch (token) {
            case START_OBJECT -> group(line, column);
            case START_ARRAY -> items(line, column);
            default -> new Node.Scalar(line, column, single(token));
        };
    }

    private Object single(JsonToken token) throws IOException {
        return switch (token) {
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> WrittenNumber.of(parser.getText());
            case VALUE_TRUE -> Boolean.TRUE;
            case VALUE_FALSE -> Boolean.FALSE;
            case VALUE_NULL -> null;
            default -> parser.getText();
        };
    }

    private Node group(int line, int column) throws IOException {
        Map<String, Node.Entry> entries = new LinkedHashMap<>();
        while (parser.nextToken() == JsonToken.FIELD_NAME) {
            String name = parser.currentName();
            twice(name, entries);
            JsonLocation here = parser.currentTokenLocation();
            JsonToken value = parser.nextToken();
            Node node = name.equals(Keys.FOREIGN) ? foreign(value) : node(value);
            entries.put(name, new Node.Entry(here.getLineNr(), here.getColumnNr(), node));
        }
        // A file may hold millions of empty ones.
        return new Node.Group(line, column, entries.isEmpty() ? Map.of() : entries);
    }

    private Node items(int line, int column) throws IOException {
        ArrayList<Node> items = new ArrayList<>();
        for (JsonToken token = parser.nextToken(); token != JsonToken.END_ARRAY; token = parser.nextToken()) {
            items.add(node(token));
        }
        items.trimToSize();
        return new Node.Items(line, column, items.isEmpty() ? List.of() : items);
    }

    /** What another tool left here is kept and not judged: it may be large, and needs no positions. */
    private Node foreign(JsonToken token) throws IOException {
        JsonLocation here = parser.currentTokenLocation();
        return new Node.Scalar(here.getLineNr(), here.getColumnNr(), plain(token));
    }

    private Object plain(JsonToken token) throws IOException {
        return switch (token) {
            case START_OBJECT -> plainObject();
            case START_ARRAY -> plainList();
            default -> single(token);
        };
    }

    private Map<String, Object> plainObject() throws IOException {
        Map<String, Object> object = new LinkedHashMap<>();
        while (parser.nextToken() == JsonToken.FIELD_NAME) {
            String name = parser.currentName();
            twice(name, object);
            object.put(name, plain(parser.nextToken()));
        }
        return object.isEmpty() ? Map.of() : object;
    }

    private List<Object> plainList() throws IOException {
        ArrayList<Object> list = new ArrayList<>();
        for (JsonToken token = parser.nextToken(); token != JsonToken.END_ARRAY; token = parser.nextToken()) {
            list.add(plain(token));
        }
        list.trimToSize();
        return list.isEmpty() ? List.of() : list;
    }

    private void twice(String name, Map<String, ?> seen) {
        if (seen.containsKey(name) && findings.size() <= ScenarioRules.MOST_FINDINGS) {
            findings.add(found(Problem.DUPLICATE_KEY, name));
        }
    }

    private Finding found(Problem problem, String... details) {
        return Finding.of(placeOf(parser.getParsingContext()), problem, details)
                .at(Optional.of(positionOf(parser.currentTokenLocation())));
    }

    static Position positionOf(JsonLocation location) {
        return new Position(location.getLineNr(), location.getColumnNr());
    }

    /** The place where the parser stands, as in {@code parts[2].internal_mohm}. */
    private static String placeOf(JsonStreamContext context) {
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
