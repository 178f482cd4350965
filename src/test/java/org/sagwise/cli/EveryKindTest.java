package org.sagwise.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.ScenarioWriter;
import org.sagwise.part.PartKind;
import org.sagwise.part.Role;
import org.sagwise.reading.Ledger;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.edit.ShelfItem;
import org.sagwise.scenario.edit.ShelfItems;

/** Every kind of part is known wherever kinds are: computed, booked, told in both languages, painted. */
class EveryKindTest {

    @TempDir
    private Path folder;

    /** The first of its kind on the shelf across a cell. */
    private Path across(PartKind kind) throws IOException {
        Part part = ShelfItems.of(CatalogueLoader.builtIn()).stream()
                .map(ShelfItem::part)
                .filter(it -> it.kind() == kind)
                .findFirst()
                .orElseThrow()
                .with("id", "p");
        Part cell = Part.of("A", PartKind.CELL, "charge", 0.5, "model", "inr18650-2500-20A");
        Scenario scenario = Scenario.of(
                "Alone",
                List.of(cell, part),
                List.of(
                        Link.touch(cell.terminal("+"), part.terminals().get(0), 1),
                        Link.touch(cell.terminal("-"), part.terminals().get(1), 1)));
        return Files.writeString(folder.resolve("alone.sagwise.json"), ScenarioWriter.write(scenario));
    }

    @ParameterizedTest
    @EnumSource(PartKind.class)
    void verbs_partAcrossACell_sayAndPaintSomething(PartKind kind) throws IOException {
        String file = across(kind).toString();
        for (String language : List.of("--lang=en", "--lang=de")) {
            for (String verb : List.of("readings", "explain", "run")) {
                Cli.Outcome outcome = Cli.call(verb, file, language);
                assertTrue(outcome.status() < 3, verb + ": " + outcome.err());
                assertFalse(outcome.out().isBlank(), verb);
            }
        }
        for (String drawing : List.of("--rest", "--schematic")) {
            Path out = folder.resolve("picture" + drawing + ".svg");
            Cli.Outcome outcome = Cli.call("picture", file, drawing, "-o", out.toString());
            assertEquals(0, outcome.status(), outcome.err());
            assertTrue(Files.size(out) > 1000, drawing);
        }
    }

    @ParameterizedTest
    @EnumSource(PartKind.class)
    void ledger_partThatTakesPower_hasARowOfItsKind(PartKind kind) {
        boolean takes = Set.of(Role.LOAD, Role.IN_LINE, Role.METER).contains(kind.role());
        long rows = List.of(Ledger.Entry.values()).stream()
                .filter(entry -> entry.kind().filter(kind::equals).isPresent())
                .count();
        assertEquals(takes ? 1 : 0, rows);
    }
}
