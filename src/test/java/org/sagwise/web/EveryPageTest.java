package org.sagwise.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.sagwise.file.DemoScenarios;
import org.sagwise.file.LessonLibrary;

/** Every page of a site as it is handed out, with the real script: small enough, and sound HTML. Needs no browser. */
@Tag("browser")
class EveryPageTest {

    private static final int MOST_BYTES = 1_000_000;

    @ParameterizedTest
    @ValueSource(strings = {"en", "de"})
    void pages_ofASite_areSmallAndSound(String language) throws IOException {
        byte[] engine = Engine.compiled();
        Map<String, Integer> large = new TreeMap<>();
        Map<String, List<String>> unsound = new TreeMap<>();
        int pages = 0;
        for (Map.Entry<String, String> page : SiteWriter.pages(engine, Locale.forLanguageTag(language))) {
            int bytes = page.getValue().getBytes(StandardCharsets.UTF_8).length;
            if (bytes > MOST_BYTES) {
                large.put(page.getKey(), bytes);
            }
            List<String> findings =
                    pages++ % InBrowserTest.EVERY == 0 ? PageWriterTest.findings(page.getValue()) : List.of();
            if (!findings.isEmpty()) {
                unsound.put(page.getKey(), findings);
            }
        }

        assertEquals(Map.of(), large);
        assertEquals(Map.of(), unsound);
        assertTrue(pages > DemoScenarios.names().size() + LessonLibrary.ids().size(), pages + " pages");
    }
}
