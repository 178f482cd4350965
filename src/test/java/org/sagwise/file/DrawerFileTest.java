package org.sagwise.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.sagwise.part.Catalogue;
import org.sagwise.part.key.KeySpec;
import org.sagwise.plan.drawer.CellMeasurement;
import org.sagwise.plan.drawer.Drawer;
import org.sagwise.plan.drawer.DrawerBench;
import org.sagwise.plan.drawer.DrawerKeys;
import org.sagwise.plan.drawer.DrawerProblem;
import org.sagwise.plan.drawer.OwnCell;
import org.sagwise.scenario.Draft;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Problem;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.ScenarioRules;

class DrawerFileTest {

    private static final Catalogue CATALOGUE = CatalogueLoader.builtIn();

    /** Every key of the format once. */
    private static final String FULL = """
            {
              "sagwise_drawer": 1,
              "cells": [
                {
                  "mark": "A1",
                  "name": "green wrap",
                  "model": "inr18650-2500-20A",
                  "bought": "2026-03-01",
                  "married": {"set": "P1", "since": "2026-03-02"},
                  "note": "lay in the torch",
                  "x": {"colour": "green"},
                  "measured": [
                    {
                      "on": "2026-03-02",
                      "capacity_mAh": 2480,
                      "internal_mohm": 21.3,
                      "rest_V": 4.19,
                      "week_V": 4.17,
                      "how": "1 kHz, 22 °C"
                    },
                    {"on": "2026-09-02", "capacity_mAh": 2391.7}
                  ]
                },
                {
                  "mark": "7",
                  "chemistry": "IMR",
                  "format": "26650",
                  "capacity_mAh": 4000,
                  "internal_mohm": 18,
                  "limit_A": 15,
                  "married": {"set": "P1"},
                  "retired": {"on": "2026-10-01", "why": "dented"}
                }
              ],
              "x": {"tool": [1, 2]}
            }
            """;

    @TempDir
    private Path folder;

    private DrawerFile file() {
        return new DrawerFile(folder.resolve("new").resolve("drawer.json"), CATALOGUE);
    }

    private static Drawer read(String text) {
        return assertInstanceOf(DrawerReader.Read.Ok.class, reading(text)).drawer();
    }

    private static DrawerReader.Read reading(String text) {
        return DrawerReader.read(text.getBytes(StandardCharsets.UTF_8), CATALOGUE);
    }

    private static List<String> problems(String text) {
        return assertInstanceOf(DrawerReader.Read.Refused.class, reading(text)).findings().stream()
                .map(it ->
                        it.problem().name() + it.position().map(at -> " " + at).orElse(""))
                .toList();
    }

    @Test
    void full_readAndWritten_saysTheSame() {
        Drawer drawer = read(FULL);
        OwnCell cell = drawer.find("A1").orElseThrow();
        assertEquals(2.3917, cell.capacityAh().getAsDouble(), 1e-12);
        assertEquals(0.0213, cell.resistanceOhm().getAsDouble(), 1e-12);
        assertEquals(0.02, cell.lostV().getAsDouble(), 1e-12);
        assertEquals(2.5, cell.ratedAh(CATALOGUE).getAsDouble(), 1e-12);
        assertEquals(Map.of("P1", List.of("A1", "7")), drawer.sets());
        assertEquals(List.of("A1"), drawer.inUse().stream().map(OwnCell::mark).toList());

        String written = DrawerWriter.write(drawer);
        assertEquals(drawer, read(written));
        assertEquals(FULL.replaceAll("\\s+", ""), written.replaceAll("\\s+", ""));
    }

    /** The schema knows the same keys as the tables, and takes what the program writes. */
    @Test
    void schema_ofTheFile_agreesWithTheTables() throws IOException {
        JsonNode schema = new ObjectMapper().readTree(Files.readString(Path.of("assets", "drawer-1.schema.json")));
        JsonNode cell = schema.at("/properties/cells/items/properties");
        Set<String> keys = new TreeSet<>(List.of("measured"));
        DrawerKeys.CELL.forEach(spec -> keys.add(spec.name()));
        assertEquals(keys, names(cell));
        assertEquals(
                DrawerKeys.MEASURED.stream().map(KeySpec::name).collect(Collectors.toCollection(TreeSet::new)),
                names(cell.at("/measured/items/properties")));
        String written = DrawerWriter.write(read(FULL));
        assertEquals(
                List.of(),
                SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                        .getSchema(schema)
                        .validate(new ObjectMapper().readTree(written)));
    }

    private static Set<String> names(JsonNode object) {
        Set<String> names = new TreeSet<>();
        object.fieldNames().forEachRemaining(names::add);
        return names;
    }

    @Test
    void spoilt_inManyPlaces_isToldWithLineAndColumn() {
        assertEquals(List.of("NO_FORMAT"), problems("{\"cells\": []}"));
        assertEquals(List.of("NEWER_FORMAT 1:20"), problems("{\"sagwise_drawer\": 2}"));
        assertEquals(
                List.of(
                        "UNKNOWN_MODEL 3:27",
                        "UNKNOWN_KEY 4:18",
                        "BAD_DATE 5:28",
                        "MISSING_KEY 6:4",
                        "OUT_OF_RANGE 7:62",
                        "NOTHING_MEASURED 8:31",
                        "DUPLICATE_MARK 10:13",
                        "WRONG_TYPE 11:30"),
                problems("""
                        {"sagwise_drawer": 1,
                         "cells": [
                           {"mark": "a", "model": "inr18650-2500-2A"},
                           {"mark": "b", "modle": "inr18650-2500-20A"},
                           {"mark": "c", "bought": "1.3.2026"},
                           {"name": "d"},
                           {"mark": "e", "measured": [{"on": "2026-03-02", "rest_V": 42}]},
                           {"mark": "f", "measured": [{"on": "2026-03-02"}]},
                           {"mark": "g"},
                           {"mark": "g"},
                           {"mark": "h", "measured": 3}
                        ]}"""));
    }

    @Test
    void keep_inANewFolder_isThereWhole() {
        DrawerFile file = file();
        DrawerFile.Opened.Ok none = assertInstanceOf(DrawerFile.Opened.Ok.class, file.open());
        assertEquals(Drawer.EMPTY, none.drawer());

        assertInstanceOf(DrawerFile.Kept.Done.class, file.keep(read(FULL), none.stamp()));
        assertEquals(
                read(FULL),
                assertInstanceOf(DrawerFile.Opened.Ok.class, file.open()).drawer());
        assertFalse(Files.exists(file.copy()), "there was nothing before");
    }

    @Test
    void keep_again_leavesACopyOfWhatWasBefore() throws IOException {
        DrawerFile file = file();
        DrawerFile.Kept first = file.keep(read(FULL), ((DrawerFile.Opened.Ok) file.open()).stamp());
        String before = Files.readString(file.path());
        file.keep(
                Drawer.EMPTY,
                assertInstanceOf(DrawerFile.Kept.Done.class, first).stamp());

        assertEquals(before, Files.readString(file.copy()));
        assertEquals(Drawer.EMPTY, ((DrawerFile.Opened.Ok) file.open()).drawer());
    }

    @Test
    void keep_whenAnotherProgramWroteMeanwhile_overwritesNothing() throws IOException {
        DrawerFile mine = file();
        DrawerFile other = file();
        DrawerFile.Stamp stamp = ((DrawerFile.Opened.Ok) mine.open()).stamp();
        other.keep(read(FULL), ((DrawerFile.Opened.Ok) other.open()).stamp());
        String theirs = Files.readString(mine.path());

        DrawerFile.Kept kept = mine.keep(Drawer.EMPTY.with(OwnCell.of("B", "inr18650-2500-20A")), stamp);
        Finding problem = assertInstanceOf(DrawerFile.Kept.Failed.class, kept).problem();
        assertEquals(DrawerProblem.CHANGED_MEANWHILE, problem.problem());
        assertTrue(problem.text(Locale.ENGLISH).contains("Nothing was written over"));
        assertEquals(theirs, Files.readString(mine.path()));
    }

    @Test
    void open_brokenFile_isRefusedAndLeftAlone() throws IOException {
        DrawerFile file = file();
        Files.createDirectories(file.path().getParent());
        Files.writeString(file.path(), FULL.substring(0, FULL.length() / 2));
        DrawerFile.Opened.Refused refused = assertInstanceOf(DrawerFile.Opened.Refused.class, file.open());
        assertEquals(Problem.NOT_JSON, refused.findings().get(0).problem());
        assertEquals(FULL.substring(0, FULL.length() / 2), Files.readString(file.path()));
    }

    /** XDG Base Directory Specification 0.8: data lie under XDG_DATA_HOME, else under $HOME/.local/share. */
    @Test
    void folder_ofData_isThatOfEachSystem() {
        Properties linux = new Properties();
        linux.setProperty("os.name", "Linux");
        linux.setProperty("user.home", "home");
        assertEquals(Path.of("home", ".local", "share", "sagwise"), new UserFolders(linux, Map.of()).data());
        String absolute = folder.toAbsolutePath().toString();
        assertEquals(folder.resolve("sagwise"), new UserFolders(linux, Map.of("XDG_DATA_HOME", absolute)).data());
        linux.setProperty(UserFolders.CONFIG_OVERRIDE, "elsewhere");
        assertEquals(Path.of("elsewhere"), new UserFolders(linux, Map.of()).data());
    }

    @Test
    void bench_ofACell_hasItsFiguresAndKeepsWhoItIs() {
        Drawer drawer = read(FULL);
        Part part = DrawerBench.part(drawer.find("A1").orElseThrow(), drawer, CATALOGUE);
        assertEquals(2391.7, part.keys().number("capacity_mAh", 0));
        assertEquals(21.3, part.keys().number("internal_mohm", 0));
        assertEquals(Optional.of("A1"), part.keys().text("mark"));
        assertEquals(Optional.of("P1"), part.keys().text("married"));
        assertEquals(2, part.keys().number("married_cells", 0));
        for (OwnCell cell : drawer.cells()) {
            assertTrue(DrawerBench.canLie(cell));
            Scenario bench = Scenario.empty().plus(DrawerBench.part(cell, drawer, CATALOGUE));
            assertEquals(List.of(), new ScenarioRules(CATALOGUE).check(Draft.of(bench)));
        }
    }

    /** What a meter reads at a protected cell is both: the cell, and the board in front of it. */
    @Test
    void bench_ofAProtectedCell_booksItsBoardOnce() {
        OwnCell cell = OwnCell.of("p", "inr18650-3000-8A-protected");
        double board = cell.make(CATALOGUE).group("guard").orElseThrow().number("mohm", 0);
        OwnCell measured = cell.with(new CellMeasurement(
                LocalDate.of(2026, 1, 2),
                OptionalDouble.empty(),
                OptionalDouble.of(0.080),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                "",
                Optional.empty()));
        assertTrue(board > 0);
        assertEquals(
                80 - board, DrawerBench.keys(measured, Drawer.EMPTY, CATALOGUE).number("internal_mohm", 0), 1e-9);
    }
}
