package org.sagwise.network;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.sagwise.network.Element.CurrentSource;
import org.sagwise.network.Element.Resistance;
import org.sagwise.network.Element.Source;

/** Worked examples of textbooks with the answers printed there; see reference/circuits.yaml. */
class WorkedExampleTest {
    private static final int FEWEST_EXAMPLES = 40;

    private static JsonNode examples() throws IOException {
        try (InputStream in = WorkedExampleTest.class.getResourceAsStream("/reference/circuits.yaml")) {
            return new YAMLMapper().readTree(in);
        }
    }

    @Test
    void examples_file_isComplete() throws IOException {
        JsonNode examples = examples();
        assertTrue(examples.size() >= FEWEST_EXAMPLES);
        for (JsonNode example : examples) {
            assertTrue(example.hasNonNull("source"), example.path("id").asText());
            assertTrue(answers(example).size() > 0, example.path("id").asText());
        }
    }

    @TestFactory
    Stream<DynamicTest> solve_textbookCircuit_printedAnswers() throws IOException {
        return StreamSupport.stream(examples().spliterator(), false)
                .map(e -> DynamicTest.dynamicTest(e.get("id").asText(), () -> check(e)));
    }

    private static void check(JsonNode example) {
        Example circuit = new Example(example.get("circuit"));
        String source = example.get("source").asText();
        assertEquals(List.of(), circuit.point.findings());
        for (String line : answers(example)) {
            PrintedAnswer answer = PrintedAnswer.parse(line);
            double value = circuit.value(answer.quantity());
            assertEquals(answer.value(), value, answer.tolerance(), line + " in " + source);
        }
    }

    private static List<String> answers(JsonNode example) {
        List<String> lines = new ArrayList<>();
        example.path("printed").forEach(line -> lines.add(line.asText()));
        example.path("derived").forEach(line -> lines.add(line.asText()));
        return lines;
    }

    /** One circuit of the file, solved. */
    private static final class Example {
        private final Map<String, Integer> node = new HashMap<>(Map.of("0", 0));
        private final Map<String, Integer> index = new LinkedHashMap<>();
        private final List<Element> elements = new ArrayList<>();
        private final OperatingPoint point;

        Example(JsonNode circuit) {
            for (Map.Entry<String, JsonNode> line : circuit.properties()) {
                index.put(line.getKey(), elements.size());
                elements.add(element(line.getValue().asText().split(" ")));
            }
            point = NetworkSolver.solve(new Network(node.size(), elements, List.of(0)));
        }

        private Element element(String[] word) {
            int a = node(word[1]);
            int b = node(word[2]);
            double value = Double.parseDouble(word[3]);
            return switch (word[0]) {
                case "source" -> new Source(a, b, value, Double.parseDouble(word[4]));
                case "resistance" -> new Resistance(a, b, value);
                case "current" -> new CurrentSource(a, b, value);
                default -> throw new IllegalArgumentException(word[0]);
            };
        }

        private int node(String name) {
            return node.computeIfAbsent(name, n -> node.size());
        }

        private double dissipatedW() {
            double sumW = 0;
            for (int i = 0; i < elements.size(); i++) {
                if (elements.get(i) instanceof Resistance r) {
                    sumW += r.ohm() * point.currentA(i) * point.currentA(i);
                }
            }
            return sumW;
        }

        double value(String quantity) {
            String[] word = quantity.split(" ");
            if (word[0].equals("voltage")) {
                return point.voltageV(node.get(word[1]), node.get(word[2]));
            }
            if (word[0].equals("dissipated")) {
                return dissipatedW();
            }
            int i = index.get(word[1]);
            double currentA = point.currentA(i);
            List<Integer> ends = elements.get(i).nodes();
            double volt = point.voltageV(ends.get(0), ends.get(1));
            return switch (word[0]) {
                case "current" -> currentA;
                case "power" -> volt * currentA;
                case "load" -> volt / currentA;
                case "supplied" -> ((Source) elements.get(i)).emfV() * currentA;
                case "heat" -> ((Source) elements.get(i)).seriesOhm() * currentA * currentA;
                default -> throw new IllegalArgumentException(quantity);
            };
        }
    }
}
