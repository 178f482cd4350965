package org.sagwise.file;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.sagwise.part.PartKind;
import org.sagwise.part.key.KeyRule;
import org.sagwise.part.key.KeySpec;
import org.sagwise.part.key.KeySpec.Bound;
import org.sagwise.part.key.KeySpec.ChoiceType;
import org.sagwise.part.key.KeySpec.FlagType;
import org.sagwise.part.key.KeySpec.Grain;
import org.sagwise.part.key.KeySpec.GroupType;
import org.sagwise.part.key.KeySpec.NumberType;

/**
 * The JSON Schema of scenarios with everything about kinds of part made from their tables: keys, types, ranges,
 * defaults, rules. Its titles and descriptions stay as they stand in the file; those that lack are empty, for somebody
 * to write. {@code mvn test -Dtest=SchemaTablesTest -Dsagwise.write=true} writes it anew.
 */
final class ScenarioSchema {

    static final Path FILE = Path.of("assets/scenario-1.schema.json");

    private static final JsonNodeFactory NEW = JsonNodeFactory.instance;

    private ScenarioSchema() {}

    /** The file as it should be. */
    static String made() throws IOException {
        ObjectNode schema = (ObjectNode) new ObjectMapper().readTree(FILE.toFile());
        ObjectNode part = (ObjectNode) schema.at("/$defs/part");
        ArrayNode kinds = NEW.arrayNode();
        ArrayNode each = NEW.arrayNode();
        ObjectNode definitions = (ObjectNode) schema.get("$defs");
        for (PartKind kind : PartKind.values()) {
            String word = kind.word();
            kinds.add(word);
            ObjectNode is = NEW.objectNode();
            is.putObject("properties").putObject("kind").put("const", word);
            is.putArray("required").add("kind");
            ObjectNode rule = each.addObject();
            rule.set("if", is);
            rule.putObject("then").put("$ref", "#/$defs/" + word);
            definitions.set(word, kind(kind, definitions.path(word)));
        }
        ((ObjectNode) part.at("/properties/kind")).set("enum", kinds);
        part.set("allOf", each);
        return SchemaLayout.print(schema, 100);
    }

    private static ObjectNode kind(PartKind kind, JsonNode old) {
        ObjectNode object = NEW.objectNode();
        object.put("title", old.path("title").asText());
        object.put("description", old.path("description").asText());
        object.put("type", "object");
        ObjectNode properties = object.putObject("properties");
        properties.putObject("id").put("$ref", "#/$defs/id");
        properties.putObject("kind").put("const", kind.word());
        properties
                .putObject("label")
                .put("type", "string")
                .put("maxLength", 60)
                .put("description", "What people call it; its id if there is none.");
        properties.putObject("x").put("$ref", "#/$defs/foreign");
        List<String> needed = new ArrayList<>(List.of("id", "kind"));
        fill(object, kind.keys(), kind.descriptor().keys().rules(), needed, old);
        return object;
    }

    private static void fill(
            ObjectNode object, List<KeySpec> specs, List<KeyRule> rules, List<String> needed, JsonNode old) {
        ObjectNode properties = (ObjectNode) object.get("properties");
        for (KeySpec spec : specs) {
            properties.set(spec.name(), value(spec, old.path("properties").path(spec.name())));
            if (spec.need() == KeySpec.Need.REQUIRED) {
                needed.add(spec.name());
            }
        }
        object.put("additionalProperties", false);
        if (!needed.isEmpty()) {
            needed.forEach(object.putArray("required")::add);
        }
        for (KeyRule rule : rules) {
            if (rule instanceof KeyRule.ExactlyOne one) {
                ArrayNode choices = object.putArray("oneOf");
                one.names()
                        .forEach(
                                name -> choices.addObject().putArray("required").add(name));
            } else if (rule instanceof KeyRule.OneOrModel one) {
                ArrayNode choices = object.putArray("anyOf");
                choices.addObject().putArray("required").add("model");
                one.names()
                        .forEach(
                                name -> choices.addObject().putArray("required").add(name));
                one.names().forEach(object.withObject("/not").withArray("/required")::add);
            } else if (rule instanceof KeyRule.ModelOr or) {
                ArrayNode choices = object.putArray("anyOf");
                choices.addObject().putArray("required").add("model");
                or.names().forEach(choices.addObject().putArray("required")::add);
            } else if (rule instanceof KeyRule.Together both) {
                ObjectNode pairs = object.withObject("/dependentRequired");
                pairs.putArray(both.one()).add(both.other());
                pairs.putArray(both.other()).add(both.one());
            }
        }
    }

    private static ObjectNode value(KeySpec spec, JsonNode old) {
        ObjectNode value = NEW.objectNode();
        if (spec.type() instanceof NumberType number) {
            value.put("type", number.grain() == Grain.WHOLE ? "integer" : "number");
            value.put(number.bound() == Bound.INCLUDED ? "minimum" : "exclusiveMinimum", plain(number.least()));
            value.put("maximum", plain(number.most()));
            number.defaultValue().ifPresent(standard -> value.put("default", plain(standard)));
        } else if (spec.type() instanceof ChoiceType choice) {
            choice.choices().forEach(value.putArray("enum")::add);
            choice.defaultValue().ifPresent(standard -> value.put("default", standard));
        } else if (spec.type() instanceof FlagType flag) {
            value.put("type", "boolean");
            flag.defaultValue().ifPresent(standard -> value.put("default", standard));
        } else if (spec.type() instanceof KeySpec.ForeignType) {
            return value.put("$ref", "#/$defs/foreign");
        } else if (spec.type() instanceof GroupType group) {
            value.put("type", "object")
                    .put("description", old.path("description").asText());
            value.putObject("properties");
            fill(value, group.keys(), group.rules(), new ArrayList<>(), old);
            return value;
        } else if (spec.type() instanceof KeySpec.TextType text) {
            value.put("type", "string").put("maxLength", text.longest());
        } else {
            value.put("type", "string").put("minLength", 1);
        }
        return value.put("description", old.path("description").asText());
    }

    private static BigDecimal plain(double number) {
        return new BigDecimal(BigDecimal.valueOf(number).stripTrailingZeros().toPlainString());
    }
}
