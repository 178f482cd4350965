package org.sagwise.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.sagwise.part.Catalogue;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;

/** What is saved is what is opened, and no bytes whatever make opening fail but in words. */
class RoundTripProperties {

    private static final Catalogue CATALOGUE = CatalogueLoader.builtIn();

    private final ScenarioReader reader = new ScenarioReader(CATALOGUE);

    @Property(tries = 500)
    void read_savedScenario_isTheSameScenario(@ForAll Random random) {
        Scenario scenario = new RandomScenarios(random, CATALOGUE).scenario();
        Scenario opened = open(ScenarioWriter.write(scenario));
        assertEquals(scenario, opened);
        assertEquals(keyOrders(scenario), keyOrders(opened));
    }

    @Property(tries = 500)
    void write_openedScenario_isTheSameText(@ForAll Random random) {
        String text = ScenarioWriter.write(new RandomScenarios(random, CATALOGUE).scenario());
        assertEquals(text, ScenarioWriter.write(open(text)));
    }

    @Property(tries = 500)
    void read_compactText_isTheSameScenario(@ForAll Random random) {
        Scenario scenario = new RandomScenarios(random, CATALOGUE).scenario();
        assertEquals(scenario, open(ScenarioWriter.writeCompact(scenario)));
    }

    @Property(tries = 500)
    void read_spoiltBytes_answersInWords(@ForAll Random random, @ForAll @IntRange(min = 1, max = 8) int flips) {
        byte[] bytes = ScenarioWriter.write(new RandomScenarios(random, CATALOGUE).scenario())
                .getBytes(StandardCharsets.UTF_8);
        for (int i = 0; i < flips; i++) {
            bytes[random.nextInt(bytes.length)] = (byte) random.nextInt(128);
        }
        assertAnswer(reader.read(bytes));
    }

    @Property(tries = 500)
    void read_clippedBytes_isRefusedInWords(@ForAll Random random) {
        byte[] bytes = ScenarioWriter.write(new RandomScenarios(random, CATALOGUE).scenario())
                .getBytes(StandardCharsets.UTF_8);
        byte[] clipped = Arrays.copyOf(bytes, random.nextInt(bytes.length - 1));
        Loaded loaded = reader.read(clipped);
        assertInstanceOf(Loaded.Refused.class, loaded);
        assertAnswer(loaded);
    }

    @Property(tries = 500)
    void read_anyBytes_answersInWords(@ForAll byte[] bytes) {
        assertAnswer(reader.read(bytes));
    }

    private Scenario open(String text) {
        Loaded loaded = reader.read(text.getBytes(StandardCharsets.UTF_8));
        return loaded.scenario().orElseThrow(() -> new AssertionError(DemoRoundTripTest.words(loaded) + text));
    }

    private static void assertAnswer(Loaded loaded) {
        for (Finding found : loaded.findings()) {
            assertFalse(found.text(Locale.ENGLISH).isBlank());
            assertFalse(found.text(Locale.GERMAN).isBlank());
        }
    }

    private static List<List<String>> keyOrders(Scenario scenario) {
        return scenario.parts().stream()
                .map(Part::keys)
                .map(keys -> List.copyOf(keys.names()))
                .toList();
    }
}
