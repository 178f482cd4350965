package org.sagwise.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.sagwise.part.PartKind;
import org.sagwise.part.key.KeySpec;
import org.sagwise.part.key.KeySpec.Bound;
import org.sagwise.part.key.KeySpec.ChoiceType;
import org.sagwise.part.key.KeySpec.FlagType;
import org.sagwise.part.key.KeySpec.Grain;
import org.sagwise.part.key.KeySpec.GroupType;
import org.sagwise.part.key.KeySpec.NumberType;
import org.sagwise.part.key.KeySpec.TextType;
import org.sagwise.scenario.ScenarioKeys;

/** The schema says what the tables of the format say: names, types, ranges, defaults, needs. */
class SchemaTablesTest {

    private static final Set<String> COMMON = Set.of("id", "kind", "label", "x");

    private final JsonNode schema;

    SchemaTablesTest() throws IOException {
        schema = new ObjectMapper().readTree(ScenarioSchema.FILE.toFile());
    }

    @Test
    void schema_ofKinds_isWhatTheirTablesMake() throws IOException {
        if (Boolean.getBoolean("sagwise.write")) {
            Files.writeString(ScenarioSchema.FILE, ScenarioSchema.made());
        }
        assertEquals(ScenarioSchema.made(), Files.readString(ScenarioSchema.FILE), "see ScenarioSchema");
    }

    @ParameterizedTest
    @EnumSource(PartKind.class)
    void part_ofEachKind_isDescribedInWords(PartKind kind) {
        JsonNode part = schema.at("/$defs/" + kind.word());
        assertTrue(part.get("title").asText().length() > 2, kind.word());
        assertTrue(part.findValuesAsText("description").stream().allMatch(words -> words.length() > 5), kind.word());
    }

    @Test
    void otherObjects_haveTheKeysOfTheirTables() {
        assertObject(ScenarioKeys.LINK, schema.at("/$defs/link"), "link");
        assertObject(ScenarioKeys.JUMPER.keys(), schema.at("/$defs/jumper"), "jumper");
        assertObject(ScenarioKeys.PROBES, schema.at("/$defs/probes"), "probes");
        assertObject(ScenarioKeys.NOTE, schema.at("/$defs/note"), "note");
        assertObject(ScenarioKeys.PLACEMENT, schema.at("/$defs/place"), "place");
    }

    @Test
    void top_keysAndLimits_areThoseOfTheTables() {
        JsonNode top = schema.at("/properties");
        assertEquals(ScenarioKeys.TOP_ORDER, names(top));
        assertEquals(ScenarioKeys.FORMAT, top.at("/sagwise/const").asInt());
        assertEquals(ScenarioKeys.MOST_PARTS, top.at("/parts/maxItems").asInt());
        assertEquals(ScenarioKeys.MOST_LINKS, top.at("/links/maxItems").asInt());
        assertEquals(ScenarioKeys.MOST_NOTES, top.at("/notes/maxItems").asInt());
        assertEquals(ScenarioKeys.TITLE.longest(), top.at("/title/maxLength").asInt());
        assertEquals(ScenarioKeys.ABOUT.longest(), top.at("/about/maxLength").asInt());
        assertNumber(ScenarioKeys.AMBIENT, top.at("/ambient_C"), "ambient_C");
        assertEquals(
                "^" + ScenarioKeys.ID_PATTERN + "$",
                schema.at("/$defs/id/pattern").asText());
    }

    private void assertObject(List<KeySpec> specs, JsonNode object, String place) {
        JsonNode properties = object.get("properties");
        assertEquals(
                new TreeSet<>(specs.stream().map(KeySpec::name).toList()), new TreeSet<>(names(properties)), place);
        assertFalse(object.get("additionalProperties").asBoolean(true), place);
        assertEquals(
                new TreeSet<>(specs.stream()
                        .filter(spec -> spec.need() == KeySpec.Need.REQUIRED)
                        .map(KeySpec::name)
                        .toList()),
                new TreeSet<>(texts(object.path("required"))),
                place);
        for (KeySpec spec : specs) {
            if (!COMMON.contains(spec.name()) || spec.type() instanceof NumberType) {
                assertValue(spec, resolved(properties.get(spec.name())), place);
            }
        }
    }

    private void assertValue(KeySpec spec, JsonNode value, String outer) {
        String place = outer + "." + spec.name();
        if (!spec.name().equals("id")) {
            assertTrue(value.get("description").asText().length() > 5, place);
        }
        if (spec.type() instanceof NumberType number) {
            assertNumber(number, value, place);
        } else if (spec.type() instanceof GroupType group) {
            assertObject(group.keys(), value, place);
        } else if (spec.type() instanceof ChoiceType choice) {
            assertEquals(choice.choices(), texts(value.get("enum")), place);
            assertEquals(choice.defaultValue().orElse(""), value.path("default").asText(), place);
        } else if (spec.type() instanceof FlagType flag) {
            assertTrue(
                    value.path("type").asText().equals("boolean")
                            || value.path("const").asBoolean(),
                    place);
            assertEquals(flag.defaultValue().isPresent(), value.has("default"), place);
        } else if (spec.type() instanceof TextType text && !spec.name().equals("id")) {
            assertEquals(text.longest(), value.get("maxLength").asInt(), place);
        } else {
            assertTrue(Set.of("string", "object").contains(value.get("type").asText()), place);
        }
    }

    private static void assertNumber(NumberType number, JsonNode value, String place) {
        boolean included = number.bound() == Bound.INCLUDED;
        JsonNode least = value.path(included ? "minimum" : "exclusiveMinimum");
        assertTrue(least.isNumber(), place);
        assertEquals(number.least(), least.asDouble(), place);
        assertEquals(number.most(), value.get("maximum").asDouble(), place);
        assertEquals(
                number.grain() == Grain.WHOLE ? "integer" : "number",
                value.get("type").asText(),
                place);
        assertEquals(number.defaultValue().isPresent(), value.has("default"), place);
        number.defaultValue()
                .ifPresent(
                        standard -> assertEquals(standard, value.get("default").asDouble(), place));
    }

    private JsonNode resolved(JsonNode value) {
        return value.has("$ref") ? schema.at(value.get("$ref").asText().substring(1)) : value;
    }

    private static List<String> names(JsonNode object) {
        List<String> names = new ArrayList<>();
        object.fieldNames().forEachRemaining(names::add);
        return names;
    }

    private static List<String> texts(JsonNode list) {
        List<String> texts = new ArrayList<>();
        list.forEach(item -> texts.add(item.asText()));
        return texts;
    }
}
