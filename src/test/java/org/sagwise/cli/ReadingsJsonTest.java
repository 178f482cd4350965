package org.sagwise.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What other programs rely on: every key of {@code readings --json}, its type, its order, and
 * {@code null} for what cannot be told.
 */
class ReadingsJsonTest {

    private static final String EVERY_KIND = Path.of("src/test/resources/org/sagwise/cli/every-kind.sagwise.json")
            .toString();

    private static JsonNode everyKind(String... more) {
        List<String> args = new ArrayList<>(List.of("readings", EVERY_KIND, "--json"));
        args.addAll(List.of(more));
        Cli.Outcome outcome = Cli.call(args.toArray(String[]::new));
        assertEquals(0, outcome.status(), outcome.err());
        assertEquals("", outcome.err());
        return outcome.json();
    }

    private static List<String> keys(JsonNode object) {
        List<String> keys = new ArrayList<>();
        object.fieldNames().forEachRemaining(keys::add);
        return keys;
    }

    private static JsonNode item(JsonNode list, String id) {
        for (JsonNode item : list) {
            if (item.path("id").asText().equals(id)) {
                return item;
            }
        }
        throw new AssertionError("no " + id);
    }

    @Test
    void readings_ofEveryKind_haveAllKeysInOrder() {
        assertEquals(
                List.of(
                        "title",
                        "fired",
                        "cells",
                        "coils",
                        "parts",
                        "links",
                        "pack",
                        "probes",
                        "nodes",
                        "balance",
                        "cautions",
                        "ledger",
                        "health"),
                keys(everyKind()));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "cells | id rest_V terminal_V sag_V current_A limit_A load_fraction internal_ohm" + " heat_W",
                "coils | id ohm volts_V current_A power_W temperature_C",
                "parts | id kind current_A volts_V power_W state",
                "links | from to ohm current_A drop_V heat_W",
                "ledger | entry volts_V power_W"
            })
    void list_ofEveryKind_holdsObjectsOfTheseKeys(String name, String expected) {
        JsonNode list = everyKind().get(name);
        assertTrue(list.isArray() && !list.isEmpty());
        for (JsonNode item : list) {
            assertEquals(List.of(expected.split(" ")), keys(item));
            for (String key : keys(item)) {
                boolean measured = key.contains("_") || key.equals("ohm");
                assertEquals(measured, !item.get(key).isTextual(), key);
            }
        }
    }

    @Test
    void objects_ofEveryKind_haveTheseKeys() {
        JsonNode readings = everyKind();
        assertEquals(
                List.of(
                        "given_W",
                        "delivered_W",
                        "cell_heat_W",
                        "path_heat_W",
                        "charging_W",
                        "board_heat_W",
                        "supply_heat_W",
                        "load_current_A",
                        "drop_V",
                        "efficiency"),
                keys(readings.get("pack")));
        assertEquals(
                List.of("red", "black", "volts_V", "mode", "current_A", "ohm", "refused"),
                keys(readings.get("probes")));
        assertEquals(List.of("kcl_worst_A", "power_error_W"), keys(readings.get("balance")));
        assertEquals("Every kind of part", readings.get("title").asText());
        assertTrue(readings.get("fired").isBoolean());
    }

    @Test
    void parts_ofEveryKind_areAllButTheCellsInFileOrder() {
        List<String> ids = new ArrayList<>();
        everyKind().get("parts").forEach(part -> ids.add(part.get("id").asText()));
        assertEquals(
                List.of(
                        "fire",
                        "fuse",
                        "coil",
                        "board",
                        "boardcoil",
                        "volts",
                        "amps",
                        "charger",
                        "supply",
                        "load",
                        "bridge",
                        "loose"),
                ids);
    }

    @Test
    void nodes_ofEveryKind_nameEveryTerminal() {
        JsonNode nodes = everyKind().get("nodes");
        assertEquals(2 * 3 + 11 * 2 + 4, nodes.size());
        assertEquals(0, nodes.get("A.-").doubleValue());
        assertEquals(0, nodes.get("A.can").doubleValue());
        assertEquals(0, nodes.get("supply.-").doubleValue());
        assertTrue(nodes.get("loose.1").isNull());
    }

    @Test
    void unknowns_ofEveryKind_areNull() {
        JsonNode readings = everyKind();
        JsonNode links = readings.get("links");
        assertTrue(links.get(links.size() - 1).get("current_A").isNull(), "loop of ideal joints");
        assertTrue(item(readings.get("parts"), "bridge").get("current_A").isNull());
        assertTrue(readings.get("probes").get("volts_V").isNull(), "one probe in the air");
    }

    @Test
    void currents_ofEveryKind_haveTheSignOfTheContract() {
        JsonNode parts = everyKind().get("parts");
        assertTrue(item(parts, "coil").get("current_A").doubleValue() > 0);
        assertTrue(item(parts, "supply").get("current_A").doubleValue() > 0);
        assertEquals(0.5, item(parts, "charger").get("current_A").doubleValue(), 1e-12);
        for (JsonNode part : parts) {
            double product =
                    part.get("current_A").doubleValue() * part.get("volts_V").doubleValue();
            assertEquals(product, part.get("power_W").doubleValue(), 1e-12);
        }
    }

    @Test
    void readings_atRest_sayNullWhereNothingFlows() {
        Cli.Outcome outcome = Cli.call("readings", Cli.demo("two-cells-side-by-side"), "--json", "--rest");
        JsonNode readings = outcome.json();
        assertFalse(readings.get("fired").booleanValue());
        assertTrue(readings.get("pack").get("drop_V").isNull());
        assertTrue(readings.get("pack").get("efficiency").isNull());
        assertEquals(4.2, readings.get("nodes").get("fire.1").doubleValue(), 1e-12);
        assertFalse(outcome.out().contains("-0.0"), "zero has no sign");
    }

    @Test
    void readings_withoutProbes_sayNull() {
        JsonNode readings =
                Cli.call("readings", Cli.demo("torn-wrap"), "--json").json();
        assertTrue(readings.has("probes"));
        assertTrue(readings.get("probes").isNull());
    }

    @Test
    void readings_twice_areTheSameToTheLetter() {
        String first = Cli.call("readings", EVERY_KIND, "--json").out();
        assertEquals(first, Cli.call("readings", EVERY_KIND, "--json").out());
    }

    @Test
    void readings_inGerman_haveTheSameNumbers() {
        JsonNode english = everyKind();
        JsonNode german = everyKind("--lang=de");
        assertEquals(english.get("cells"), german.get("cells"));
        assertEquals(english.get("nodes"), german.get("nodes"));
    }

    @Test
    void readings_inAscii_escapeWhatIsBeyond() {
        String file = "{\"sagwise\":1,\"title\":\"1 Ω\",\"parts\":[],\"links\":[]}";
        Cli.Outcome outcome = Cli.callWithInput(file, "readings", "-", "--json", "--ascii");
        assertTrue(outcome.out().chars().allMatch(sign -> sign < 0x80));
        assertEquals("1 Ω", outcome.json().get("title").asText());
    }

    @Test
    void shortedIdealSupply_leavesWattsUntoldAndSaysSo() {
        String shorted = "{\"sagwise\": 1, \"parts\": [{\"id\": \"s\", \"kind\": \"supply\", \"volts\": 5,"
                + " \"internal_ohm\": 0}], \"links\": [{\"from\": \"s.+\", \"to\": \"s.-\","
                + " \"ideal\": true}]}";
        JsonNode json = Cli.callWithInput(shorted, "readings", "-", "--json").json();
        assertTrue(json.at("/pack/given_W").isNull());
        assertTrue(json.at("/parts/0/current_A").isNull());
        assertEquals("pack-shorted", json.at("/cautions/0/id").asText());
        String text = Cli.callWithInput(shorted, "readings", "-").out();
        assertFalse(text.contains("No current flows"), text);
        assertTrue(text.contains("gives no answer"), text);
    }
}
