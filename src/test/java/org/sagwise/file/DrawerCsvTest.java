package org.sagwise.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.sagwise.part.Catalogue;
import org.sagwise.part.key.Keys;
import org.sagwise.plan.drawer.Drawer;
import org.sagwise.plan.drawer.OwnCell;

class DrawerCsvTest {

    private static final Catalogue CATALOGUE = CatalogueLoader.builtIn();

    private static DrawerCsv.Read reading(String table, Drawer into, DrawerCsv.Precedence precedence) {
        return DrawerCsv.read(table.getBytes(StandardCharsets.UTF_8), into, CATALOGUE, precedence);
    }

    private static DrawerCsv.Read.Ok read(String table, Drawer into) {
        return assertInstanceOf(
                DrawerCsv.Read.Ok.class,
                reading(table, into, DrawerCsv.Precedence.NEITHER),
                () -> String.valueOf(reading(table, into, DrawerCsv.Precedence.NEITHER)));
    }

    private static List<String> problems(String table, Drawer into) {
        return assertInstanceOf(DrawerCsv.Read.Refused.class, reading(table, into, DrawerCsv.Precedence.NEITHER))
                .findings()
                .stream()
                .map(it ->
                        it.problem().name() + it.position().map(at -> " " + at).orElse(""))
                .toList();
    }

    @ParameterizedTest
    @EnumSource(DrawerCsv.Style.class)
    void demo_writtenAndReadBack_isTheSame(DrawerCsv.Style style) {
        Drawer demo = DemoDrawer.of(CATALOGUE, Locale.ENGLISH);
        DrawerCsv.Read.Ok back = read(DrawerCsv.write(demo, style), Drawer.EMPTY);
        assertEquals(demo, back.drawer());
        assertEquals(demo.cells().size(), back.cells());
        assertEquals(0, read(DrawerCsv.write(demo, style), demo).measurements(), "what is there is not added again");
    }

    /** OWASP on CSV injection: a cell that begins with one of = + - @, tab or line break may run as a formula. */
    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+1", "-7", "@SUM(A1)", "'=x", "''-x", "'plain", "a;b,c\"d", "two\nlines"})
    void texts_thatASpreadsheetWouldRun_areHeldDownAndComeBack(String note) {
        Drawer drawer = Drawer.EMPTY.with(OwnCell.of(
                Keys.of("mark", "A", "model", "inr18650-2500-20A", "note", note, "retired", Keys.NONE), List.of()));
        for (DrawerCsv.Style style : DrawerCsv.Style.values()) {
            String table = DrawerCsv.write(drawer, style);
            assertTrue(table.lines().noneMatch(line -> line.matches(".*(^|[,;\"])[=+@-].*")), table);
            assertEquals(drawer, read(table, Drawer.EMPTY).drawer());
        }
    }

    @Test
    void table_ofAGermanSpreadsheet_isUnderstood() {
        Drawer drawer = read("""
                \ufeffMark;Model;measured_on;capacity_mAh;internal_mohm;REST_V
                A1;inr18650-2500-20A;2026-03-02;2480,5;21,3;4,190
                A1;;2026-09-02;2391;;
                """.replace("\n", "\r\n"), Drawer.EMPTY).drawer();
        OwnCell cell = drawer.find("A1").orElseThrow();
        assertEquals(2, cell.measurements().size());
        assertEquals(2.4805, cell.measurements().get(0).capacityAh().orElseThrow(), 1e-12);
        assertEquals(4.19, cell.restV().orElseThrow());
    }

    @Test
    void table_addedToADrawer_keepsWhatWasThere() {
        Drawer demo = DemoDrawer.of(CATALOGUE, Locale.ENGLISH);
        DrawerCsv.Read.Ok more = read(
                "mark,measured_on,capacity_mAh,bought\nL3,2026-11-20,2350,2025-09-05\nnew,2026-11-20,2500,\n", demo);
        assertEquals(1, more.cells());
        assertEquals(2, more.measurements());
        assertEquals(4, more.drawer().find("L3").orElseThrow().measurements().size());
        assertEquals(demo.find("L4"), more.drawer().find("L4"));
    }

    @Test
    void table_thatContradicts_isToldOrGoesFirst() {
        Drawer demo = DemoDrawer.of(CATALOGUE, Locale.ENGLISH);
        String table = "mark,bought,name\nL3,2024-01-01,green\n";
        assertEquals(List.of("CONFLICT 2:4"), problems(table, demo));
        DrawerCsv.Read.Ok first =
                assertInstanceOf(DrawerCsv.Read.Ok.class, reading(table, demo, DrawerCsv.Precedence.TABLE));
        assertEquals(
                "2024-01-01",
                first.drawer().find("L3").orElseThrow().bought().orElseThrow().toString());
    }

    @Test
    void faults_areToldByLineAndColumn_andNothingIsTaken() {
        assertEquals(List.of("NO_TABLE"), problems("", Drawer.EMPTY));
        assertEquals(List.of("MISSING_COLUMN 1:1"), problems("name,note\nx,y\n", Drawer.EMPTY));
        assertEquals(List.of("UNKNOWN_COLUMN 1:6", "COLUMN_TWICE 1:12"), problems("mark,maker,mark\n", Drawer.EMPTY));
        assertEquals(List.of("OPEN_QUOTE 2:3"), problems("mark,note\nA,\"lost\n", Drawer.EMPTY));
        assertEquals(List.of("STRAY_QUOTE 2:5"), problems("mark,note\nA,5 \"\n", Drawer.EMPTY));
        assertEquals(
                List.of(
                        "NOT_A_NUMBER 2:14",
                        "OUT_OF_RANGE 3:14",
                        "BAD_DATE 4:3",
                        "NEEDS_DATE 5:1",
                        "NOTHING_MEASURED 6:1",
                        "TOO_MANY_FIELDS 7:18",
                        "NOT_A_NUMBER 8:14",
                        "MISSING_KEY 9:1"),
                problems("""
                        mark,measured_on,rest_V
                        A,2026-03-02,4.2 V
                        B,2026-03-02,42
                        C,02.03.2026,4.2
                        D,,4.2
                        E,2026-03-02,
                        F,2026-03-02,4.2,9
                        G,2026-03-02,"4,190"
                        ,2026-03-02,4.2
                        """, Drawer.EMPTY));
    }
}
