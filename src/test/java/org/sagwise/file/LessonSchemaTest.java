package org.sagwise.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.sagwise.lesson.Step;

/**
 * What the JSON Schema of lessons says of conditions is what the table of checks says, and what a prediction may ask
 * besides what steps know. Made anew by {@code mvn test
 * -Dtest=LessonSchemaTest -Dsagwise.write=true}.
 */
class LessonSchemaTest {

    private static final Path FILE = Path.of("assets/lesson-1.schema.json");

    private static final ObjectMapper MAPPER = new ObjectMapper();

    private static String made() throws IOException {
        ObjectNode schema = (ObjectNode) MAPPER.readTree(FILE.toFile());
        ArrayNode checks = JsonNodeFactory.instance.arrayNode();
        for (LessonConditions.Check check : LessonConditions.CHECKS) {
            ObjectNode object = checks.addObject().put("type", "object");
            ObjectNode properties = object.putObject("properties");
            ArrayNode required = object.putArray("required");
            for (LessonConditions.Key key : check.keys()) {
                properties.set(key.name(), MAPPER.readTree(key.schema().replace('\'', '"')));
                if (key.isNeeded()) {
                    required.add(key.name());
                }
            }
            object.put("additionalProperties", false);
        }
        ((ObjectNode) schema.at("/$defs/condition")).set("oneOf", checks);
        for (JsonNode step : schema.at("/$defs/step/oneOf")) {
            if (step.at("/properties/kind/const").asText().equals("predict")) {
                ((ObjectNode) step.at("/properties")).set("also", also());
            }
        }
        return SchemaLayout.print(schema, 116);
    }

    private static ObjectNode also() {
        ObjectNode also = JsonNodeFactory.instance.objectNode().put("type", "array");
        ArrayNode words = also.putObject("items").putArray("enum");
        Stream.of(Step.Also.values()).map(Step.Also::word).forEach(words::add);
        return also.put("uniqueItems", true).put("description", "What is asked besides the answer.");
    }

    @Test
    void schema_ofConditions_isWhatTheChecksMake() throws IOException {
        if (Boolean.getBoolean("sagwise.write")) {
            Files.writeString(FILE, made());
        }
        assertEquals(made(), Files.readString(FILE), "write it anew");
    }

    /** The page for authors has an example of every check. */
    @Test
    void page_ofEachCheck_tells() throws IOException {
        String page = Files.readString(Path.of("docs/lesson-authors.md"));
        for (LessonConditions.Check check : LessonConditions.CHECKS) {
            assertTrue(page.matches("(?s).*\\| .*[`{]" + check.head() + ": .* \\|\n.*"), check.head());
        }
    }
}
