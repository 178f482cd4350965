package org.sagwise.hazard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Holds what hazards say of themselves together: list, texts, examples, ranks. */
class HazardListTest {

    @BeforeAll
    static void write() throws IOException {
        if (Boolean.getBoolean("sagwise.write")) {
            Files.writeString(HazardList.FILE, HazardList.made());
        }
    }

    private static Set<String> ids() {
        return Hazards.ALL.stream().map(Hazard::id).collect(Collectors.toCollection(TreeSet::new));
    }

    private static Hazard hazard(String id) {
        return Hazards.ALL.stream()
                .filter(hazard -> hazard.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void list_inTheDocuments_isWhatTheCodeMakes() throws IOException {
        assertEquals(HazardList.made(), HazardList.committed(), "see HazardList for how to make it anew");
    }

    @Test
    void hazards_theirIds_areThoseThatHaveTexts() {
        Set<String> texts = ResourceBundle.getBundle("org.sagwise.texts.cautions", Locale.ENGLISH).keySet().stream()
                .filter(key -> key.endsWith(".title"))
                .map(key -> key.replaceAll("\\..*", ""))
                .collect(Collectors.toCollection(TreeSet::new));
        assertEquals(texts, ids());
    }

    @Test
    void hazards_theirIdsAndRanks_areTheirOwn() {
        assertEquals(Hazards.ALL.size(), ids().size());
        assertEquals(
                Hazards.ALL.size(),
                Hazards.ALL.stream().map(Hazard::rank).distinct().count());
    }

    @Test
    void hazards_whatTheyHide_areHazardsToo() {
        Set<String> hidden = Hazards.ALL.stream()
                .flatMap(hazard -> hazard.hides().stream())
                .flatMap(hides -> hides.effects().stream())
                .collect(Collectors.toCollection(TreeSet::new));
        hidden.removeAll(ids());
        assertEquals(Set.of(), hidden);
    }

    @Test
    void hazards_eachOfThem_hasAnExampleOfASignalThatIsListed() {
        Set<String> shown = new TreeSet<>();
        Examples.all().forEach((example, scenario) -> {
            String id = example.replaceAll("\\..*", "");
            shown.add(id);
            String signal = Found.one(id, scenario).signal().name();
            String listed = hazard(id).listing().signals();
            assertTrue(listed.contains(signal), example + ": " + listed);
        });
        LookAheadTest.examples().forEach((id, seen) -> {
            shown.add(id);
            String signal = LookAheadTest.one(seen.get(), id).signal().name();
            assertEquals(hazard(id).listing().signals(), signal, id);
        });
        // no bench that comes to no rest is known
        shown.add("no-steady-state");
        assertEquals(ids(), shown);
    }
}
