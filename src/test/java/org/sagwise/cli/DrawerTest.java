package org.sagwise.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A drawer on the command line. */
class DrawerTest {

    @TempDir
    private Path folder;

    private Cli.Outcome drawer(String... words) {
        List<String> all = new ArrayList<>(List.of("drawer"));
        all.addAll(List.of(words));
        all.add("--drawer");
        all.add(folder.resolve("drawer.json").toString());
        return Cli.call(all.toArray(String[]::new));
    }

    private static void assertDone(Cli.Outcome outcome) {
        assertEquals(0, outcome.status(), outcome.err());
    }

    @Test
    void cells_fromFirstToLast_areKept() {
        for (String mark : List.of("A", "B", "C")) {
            assertDone(drawer("add", mark, "--model=inr18650-2500-20A", "--bought=2026-03-01"));
        }
        assertDone(drawer("measure", "A", "--capacity=2480", "--resistance=21.3", "--on=2026-03-02"));
        assertDone(
                drawer("measure", "B", "--capacity=2.47 Ah", "--resistance=0.0212 ohm", "--rest=4.19", "--week=4.09"));
        assertDone(drawer("measure", "C", "--capacity=1900"));
        assertDone(drawer("marry", "P1", "A", "B"));
        assertDone(drawer("retire", "C", "--why=dented"));

        JsonNode cells = drawer("list", "--json").json().get("cells");
        assertEquals(2480, cells.get(0).get("capacity_mAh").doubleValue(), 1e-9);
        assertEquals("P1", cells.get(1).get("married").textValue());
        assertEquals(0.1, cells.get(1).get("lost_V").doubleValue(), 1e-9);
        assertTrue(cells.get(1).get("advice").textValue().contains("collection point"));
        assertEquals(false, cells.get(2).get("in_use").booleanValue());
        String list = drawer("list").out();
        assertTrue(list.contains("retired: dented"), list);

        assertDone(drawer("marry", "P1", "--apart"));
        assertDone(drawer("remove", "C"));
        assertEquals(2, drawer("list", "--json").json().get("cells").size());
    }

    @Test
    void calls_thatCannotBe_changeNothing() throws IOException {
        assertDone(drawer("add", "A", "--model=inr18650-2500-20A"));
        String before = Files.readString(folder.resolve("drawer.json"));
        for (String[] call : new String[][] {
            {"add", "A", "--model=inr18650-2500-20A"},
            {"add", "B", "--model=inr18650-2500"},
            {"add", "B", "--bought=1.3.2026"},
            {"measure", "A"},
            {"measure", "A", "--capacity=many"},
            {"measure", "Z", "--capacity=2500"},
            {"marry", "P1", "A"},
            {"marry", "P9", "--apart"},
            {"retire", "Z"},
            {"remove", "A", "Z"},
            {"pair", "--cells=1"},
            {"import", "no-such.csv"},
        }) {
            Cli.Outcome outcome = drawer(call);
            assertEquals(2, outcome.status(), String.join(" ", call));
            assertTrue(outcome.err().length() > 10, String.join(" ", call));
        }
        assertEquals(before, Files.readString(folder.resolve("drawer.json")));
        assertEquals(
                2, Cli.call("drawer", "remove", "L1", "--drawer=lantern-yard").status());
    }

    @Test
    void table_withOneMistake_isToldAsOne() throws IOException {
        Path table = Files.writeString(folder.resolve("cells.csv"), "no such column\n");
        Cli.Outcome in = drawer("import", table.toString());
        assertTrue(in.err().lines().findFirst().orElse("").endsWith("cells.csv: one problem"), in.err());
    }

    @Test
    void table_outAndIn_isTheSameDrawer() {
        Path table = folder.resolve("cells.csv");
        assertDone(Cli.call("drawer", "export", "--drawer=lantern-yard", "--decimal-comma", "-o", table.toString()));
        Cli.Outcome in = drawer("import", table.toString());
        assertDone(in);
        assertTrue(in.out().contains("19 new cells"), in.out());
        JsonNode mine = drawer("list", "--json").json().get("cells");
        assertEquals(
                Cli.call("drawer", "list", "--json", "--drawer=lantern-yard")
                        .json()
                        .get("cells"),
                mine);
    }

    @Test
    void pairs_ofTheDemo_areToldWithWhatTheyAreWorth() {
        JsonNode pairs =
                Cli.call("drawer", "pair", "--json", "--drawer=lantern-yard").json();
        assertEquals(6, pairs.get("sets").size());
        assertEquals(0, pairs.get("left").size());
        assertEquals(7, pairs.get("unfit").size());
        assertTrue(pairs.at("/life/gain").doubleValue() > 0);
        assertEquals(1, pairs.get("capacity_weight").doubleValue());
    }

    @Test
    void bench_withCellsOfTheDrawer_saysWhoTheyAre() throws IOException {
        Path bench = folder.resolve("mine.sagwise.json");
        assertDone(Cli.call(
                "drawer", "lay", "two-in-a-row", "A=L1", "B=L6", "--drawer=lantern-yard", "-o", bench.toString()));
        assertTrue(Files.readString(bench).contains("\"married\": \"pair 1\""));
        String cautions = Cli.call("check", bench.toString()).out();
        assertTrue(cautions.contains("Married cells torn apart"), cautions);
        Path other = folder.resolve("other.sagwise.json");
        assertDone(Cli.call(
                "drawer", "lay", "two-in-a-row", "A=L3", "B=L6", "--drawer=lantern-yard", "-o", other.toString()));
        assertDone(Cli.call("words", other.toString()));
        assertEquals(
                2,
                Cli.call("drawer", "lay", "two-in-a-row", "Q=L1", "--drawer=lantern-yard")
                        .status());
    }
}
