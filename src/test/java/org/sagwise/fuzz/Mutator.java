package org.sagwise.fuzz;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ContainerNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/** Spoils JSON and bytes at random, the way a careless or a hostile hand would. */
final class Mutator {

    private static final ObjectMapper MAPPER = new ObjectMapper();

    private static final double[] NUMBERS = {
        0, -0.0, 1, -1, 1e-300, 1e-9, 0.001, 0.5, 3.3, 4.2, 6, 20, 1e3, 1e6, 1e9, 1e300, -1e300
    };

    private final Random random;

    Mutator(Random random) {
        this.random = random;
    }

    /** A JSON text with a few values changed, removed, doubled or exchanged. */
    byte[] json(byte[] valid) {
        try {
            JsonNode root = MAPPER.readTree(valid);
            int edits = 1 + random.nextInt(6);
            for (int i = 0; i < edits; i++) {
                edit(root);
            }
            return MAPPER.writeValueAsBytes(root);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    private void edit(JsonNode root) {
        List<ContainerNode<?>> places = new ArrayList<>();
        collect(root, places);
        ContainerNode<?> place = places.get(random.nextInt(places.size()));
        if (place instanceof ObjectNode object && !object.isEmpty()) {
            List<String> names = new ArrayList<>();
            object.fieldNames().forEachRemaining(names::add);
            String name = names.get(random.nextInt(names.size()));
            switch (random.nextInt(8)) {
                case 0 -> object.remove(name);
                case 1 -> object.set(other(names) + "x", object.get(name));
                default -> object.set(name, changed(object.get(name), root));
            }
        } else if (place instanceof ArrayNode array && !array.isEmpty()) {
            int at = random.nextInt(array.size());
            switch (random.nextInt(4)) {
                case 0 -> array.remove(at);
                case 1 -> array.add(array.get(at).deepCopy());
                case 2 -> array.set(at, array.get(random.nextInt(array.size())).deepCopy());
                default -> array.set(at, changed(array.get(at), root));
            }
        }
    }

    private static void collect(JsonNode node, List<ContainerNode<?>> places) {
        if (node instanceof ContainerNode<?> container) {
            places.add(container);
            container.forEach(child -> collect(child, places));
        }
    }

    private String other(List<String> names) {
        return names.get(random.nextInt(names.size()));
    }

    /** Mostly something of the same type, so that much of it still loads. */
    private JsonNode changed(JsonNode old, JsonNode root) {
        JsonNodeFactory make = JsonNodeFactory.instance;
        if (random.nextInt(12) == 0) {
            return random.nextBoolean() ? make.nullNode() : make.textNode("\u0000\ud800<b>");
        }
        if (old.isNumber()) {
            return make.numberNode(NUMBERS[random.nextInt(NUMBERS.length)]);
        }
        if (old.isBoolean()) {
            return make.booleanNode(!old.booleanValue());
        }
        if (old.isTextual()) {
            List<JsonNode> texts = new ArrayList<>();
            texts(root, texts);
            return texts.get(random.nextInt(texts.size())).deepCopy();
        }
        return old;
    }

    private static void texts(JsonNode node, List<JsonNode> texts) {
        if (node.isTextual()) {
            texts.add(node);
        }
        node.forEach(child -> texts(child, texts));
    }

    /** Bytes with a few of them changed, dropped, doubled or cut off. */
    byte[] bytes(byte[] valid) {
        byte[] spoilt = valid.clone();
        int edits = 1 + random.nextInt(8);
        for (int i = 0; i < edits && spoilt.length > 1; i++) {
            int at = random.nextInt(spoilt.length);
            switch (random.nextInt(4)) {
                case 0 -> spoilt = Arrays.copyOf(spoilt, at);
                case 1 -> spoilt[at] ^= (byte) (1 << random.nextInt(8));
                case 2 -> spoilt[at] = (byte) random.nextInt(256);
                default -> System.arraycopy(valid, 0, spoilt, at, Math.min(valid.length, spoilt.length - at));
            }
        }
        return spoilt;
    }
}
