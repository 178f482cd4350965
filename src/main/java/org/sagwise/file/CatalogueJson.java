package org.sagwise.file;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParseException;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads JSON into maps, lists, texts, numbers (as {@code Double}) and truth values; null is
 * refused.
 *
 * <p>Only the streaming half of the JSON library: the catalogue is read at every start of the
 * program, and binding to classes would cost more time than reading.
 */
final class CatalogueJson {

    private static final JsonFactory FACTORY = JsonFactory.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();

    private CatalogueJson() {}

    /**
     * The value in the stream.
     *
     * @throws com.fasterxml.jackson.core.JsonProcessingException when it is no JSON, with the place
     */
    static Object read(InputStream stream) throws IOException {
        try (JsonParser parser = FACTORY.createParser(stream)) {
            Object value = value(parser, parser.nextToken());
            if (parser.nextToken() != null) {
                throw new JsonParseException(parser, "something follows the end");
            }
            return value;
        }
    }

    private static Object value(JsonParser parser, JsonToken token) throws IOException {
        if (token == null) {
            throw new JsonParseException(parser, "the file ends too early");
        }
        return switch (token) {
            case START_OBJECT -> object(parser);
            case START_ARRAY -> list(parser);
            case VALUE_STRING -> parser.getText();
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> parser.getDoubleValue();
            case VALUE_TRUE -> Boolean.TRUE;
            case VALUE_FALSE -> Boolean.FALSE;
            default -> throw new JsonParseException(parser, "null is not allowed here");
        };
    }

    private static Map<String, Object> object(JsonParser parser) throws IOException {
        Map<String, Object> values = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String key = parser.currentName();
            values.put(key, value(parser, parser.nextToken()));
        }
        return values;
    }

    private static List<Object> list(JsonParser parser) throws IOException {
        List<Object> values = new ArrayList<>();
        for (JsonToken token = parser.nextToken(); token != JsonToken.END_ARRAY; token = parser.nextToken()) {
            values.add(value(parser, token));
        }
        return values;
    }
}
