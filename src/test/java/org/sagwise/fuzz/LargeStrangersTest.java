package org.sagwise.fuzz;

import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.HashSet;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.sagwise.file.Loaded;

/**
 * Files as large as they may be, and as tangled, where any terminal may be joined to any: nobody
 * waits for these either.
 */
class LargeStrangersTest {

    private static final ObjectMapper MAPPER = new ObjectMapper();

    @ParameterizedTest
    @CsvSource({
        "200, 300",
        "200, 700",
        "250, 800",
        "450, 800",
        "600, 900",
        "600, 4000",
        "1000, 4000",
        "1500, 2500",
        "2000, 2000",
        "2000, 4000"
    })
    void scenario_largeAndTangled_isAnsweredInGoodTime(int parts, int links) throws IOException {
        byte[] file = MAPPER.writeValueAsBytes(tangle(parts, links, new Random(parts + links)));
        Loaded loaded = Effort.bounded(() -> Answers.READER.read(file));

        assertTrue(loaded.scenario().isPresent(), () -> loaded.findings().toString());
        Answers.of(loaded);
    }

    private static ObjectNode tangle(int parts, int links, Random random) {
        ObjectNode file = MAPPER.createObjectNode().put("sagwise", 1);
        ArrayNode list = file.putArray("parts");
        for (int i = 0; i < parts; i++) {
            ObjectNode part = list.addObject().put("id", "p" + i);
            if (i % 3 == 0) {
                part.put("kind", "cell").put("charge", random.nextInt(11) / 10.0);
                part.put("internal_mohm", 10 + random.nextInt(90)).put("capacity_mAh", 2500);
                part.put("limit_A", 20);
            } else {
                part.put("kind", i % 3 == 1 ? "coil" : "resistor").put("ohm", 0.5);
            }
        }
        ArrayNode joints = file.putArray("links");
        Set<String> joined = new HashSet<>();
        while (joints.size() < links) {
            String from = terminal(random.nextInt(parts), random);
            String to = terminal(random.nextInt(parts), random);
            if (!from.equals(to) && joined.add(from + to) && joined.add(to + from)) {
                ObjectNode link = joints.addObject().put("from", from).put("to", to);
                if (random.nextBoolean()) {
                    link.put("contact_mohm", 5);
                } else {
                    link.putObject("jumper").put("awg", 18).put("length_mm", 50);
                }
            }
        }
        return file;
    }

    private static String terminal(int part, Random random) {
        return "p" + part + "." + (part % 3 == 0 ? "+-" : "12").charAt(random.nextInt(2));
    }
}
