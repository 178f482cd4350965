package org.sagwise.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.sagwise.part.PartKind;
import org.sagwise.part.key.KeySpec;
import org.sagwise.part.key.Keys;

/** The page about scenario files tells of every kind, terminal and key that the tables have. */
class ScenarioFileDocTest {

    @ParameterizedTest
    @EnumSource(PartKind.class)
    void table_rowOfEachKind_namesItsTerminalsAndKeys(PartKind kind) throws IOException {
        List<String> rows = Files.readAllLines(Path.of("docs", "scenario-file.md")).stream()
                .filter(line -> line.startsWith("| `" + kind.word() + "` |"))
                .toList();
        assertEquals(1, rows.size(), kind.word());
        kind.terminals().forEach(terminal -> assertNames(rows.get(0), terminal));
        assertKeys(rows.get(0), kind.keys());
    }

    private static void assertKeys(String row, List<KeySpec> specs) {
        for (KeySpec spec : specs) {
            if (!spec.name().equals(Keys.FOREIGN)) {
                assertNames(row, spec.name());
            }
            if (spec.type() instanceof KeySpec.GroupType group) {
                assertKeys(row, group.keys());
            }
        }
    }

    private static void assertNames(String row, String name) {
        assertTrue(row.contains("`" + name + "`"), name + " is not told of in: " + row);
    }
}
