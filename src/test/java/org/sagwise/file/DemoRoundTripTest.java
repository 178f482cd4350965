package org.sagwise.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Opening and saving a file that nobody changed changes no byte of it. */
class DemoRoundTripTest {

    private final ScenarioReader reader = new ScenarioReader(CatalogueLoader.builtIn());

    static List<String> demos() {
        return DemoScenarios.names();
    }

    @ParameterizedTest
    @MethodSource("demos")
    void write_openedDemo_isTheSameText(String demo) {
        String text = new String(DemoScenarios.bytes(demo), StandardCharsets.UTF_8);
        Loaded loaded = reader.read(DemoScenarios.bytes(demo));
        Loaded.Ok ok = assertInstanceOf(Loaded.Ok.class, loaded, () -> words(loaded));
        assertEquals(text, ScenarioWriter.write(ok.opened()));
    }

    static String words(Loaded loaded) {
        return String.join(
                "\n",
                loaded.findings().stream()
                        .map(found -> found.text(Locale.ENGLISH))
                        .toList());
    }
}
