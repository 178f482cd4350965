package org.sagwise.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.sagwise.part.BoardSpec;
import org.sagwise.part.Catalogue;
import org.sagwise.part.CellFormat;
import org.sagwise.part.CellSpec;
import org.sagwise.part.ChargerSpec;
import org.sagwise.part.Chemistry;
import org.sagwise.part.FuseSpec;
import org.sagwise.part.PartKind;

class CatalogueCellsTest {

    private static final Pattern ID = Pattern.compile("(i[cmnf]r|ncr)(\\d{5})-(\\d+)-(\\d+)A(-[a-z]+)?");

    /** Ids with what they stand for. */
    private static Stream<Arguments> specs(PartKind kind) {
        Catalogue catalogue = CatalogueLoader.builtIn();
        return catalogue.models(kind).all().stream()
                .map(model -> Arguments.of(
                        model.id(), kind.descriptor().spec().orElseThrow().make(model.values(), catalogue)));
    }

    static Stream<Arguments> cells() {
        return specs(PartKind.CELL);
    }

    private static CellSpec cell(String id) {
        return cells().filter(cell -> cell.get()[0].equals(id))
                .map(cell -> (CellSpec) cell.get()[1])
                .findFirst()
                .orElseThrow();
    }

    private static Stream<CellSpec> allCells() {
        return cells().map(cell -> (CellSpec) cell.get()[1]);
    }

    @Test
    void cells_all_coverEveryKindAndFormat() {
        Set<Chemistry> kinds = allCells().map(CellSpec::chemistry).collect(Collectors.toSet());
        Set<CellFormat> formats = allCells().map(CellSpec::format).collect(Collectors.toSet());

        assertEquals(EnumSet.allOf(Chemistry.class), kinds);
        assertEquals(EnumSet.allOf(CellFormat.class), formats);
        assertEquals(
                EnumSet.allOf(Chemistry.class).size(),
                CatalogueLoader.builtIn().chemistries().size());
        assertTrue(cells().count() >= 14);
    }

    /** The id says kind, format, capacity and limit; a worn cell's is that of its label. */
    @ParameterizedTest
    @MethodSource("cells")
    void id_everyCell_saysWhatItIs(String name, CellSpec cell) {
        Matcher id = ID.matcher(name);
        assertTrue(id.matches(), name);
        double capacityAh =
                name.endsWith("-worn") ? cell.claim().orElseThrow().capacityAh().getAsDouble() : cell.capacityAh();
        double limitA =
                name.endsWith("-worn") ? cell.claim().orElseThrow().limitA().getAsDouble() : cell.limitA();

        assertEquals(cell.chemistry().name().toLowerCase(Locale.ROOT), id.group(1));
        assertEquals(cell.format().trade(), id.group(2));
        assertEquals(Integer.parseInt(id.group(3)), Math.round(capacityAh * 1000));
        assertEquals(Integer.parseInt(id.group(4)), limitA);
    }

    /** A limit that would sag a full cell below 3 V at once is none that a maker would give. */
    @ParameterizedTest
    @MethodSource("cells")
    void limit_everyCell_leavesAUsableVoltageWhenFull(String name, CellSpec cell) {
        double loadedV = cell.fullV() - cell.limitA() * (cell.internalOhm() + cell.guardOhm());

        assertTrue(loadedV > 3.0, name + " " + loadedV);
    }

    /**
     * New high-drain 18650 cells have 15–40 mΩ to direct current at 25 °C (open data, see card).
     */
    @ParameterizedTest
    @CsvSource({"inr18650-2500-20A", "inr18650-2000-30A", "inr18650-3000-15A"})
    void internalOhm_highDrainCell_liesInThePublishedBand(String id) {
        double ohm = cell(id).internalOhm();

        assertTrue(ohm >= 0.015 && ohm <= 0.040, id + " " + ohm);
    }

    /** The cells that lessons are worked out with: their sums come out with these numbers. */
    @ParameterizedTest
    @CsvSource({
        "inr18650-3000-15A, 0.020, 3.0, 15",
        "inr18650-3000-15A-worn, 0.060, 2.4, 8",
        "inr18650-3000-8A-protected, 0.020, 3.0, 8",
        "icr18650-1200-4A-rewrapped, 0.090, 1.2, 4"
    })
    void lessonCell_numbers_areTheLessons(String id, double internalOhm, double capacityAh, double limitA) {
        assertEquals(internalOhm, cell(id).internalOhm(), 1e-12);
        assertEquals(capacityAh, cell(id).capacityAh(), 1e-12);
        assertEquals(limitA, cell(id).limitA());
    }

    @Test
    void rewrapped_label_claimsMoreThanItCanDo() {
        CellSpec cell = cell("icr18650-1200-4A-rewrapped");

        assertEquals(35, cell.claim().orElseThrow().limitA().getAsDouble());
        assertEquals(9.9, cell.claim().orElseThrow().capacityAh().getAsDouble(), 1e-12);
    }

    /**
     * The worn cell's limit: as much heat as a new one at its own, 15² A² · 20 mΩ, by hand 8.66 A.
     */
    @Test
    void worn_limit_makesTheHeatOfANewCellAtItsOwn() {
        CellSpec worn = cell("inr18650-3000-15A-worn");
        double newHeatW = 15 * 15 * 0.020;

        assertTrue(worn.limitA() * worn.limitA() * worn.internalOhm() <= newHeatW);
        assertTrue(9 * 9 * worn.internalOhm() > newHeatW);
    }

    /** Protected cells give about 10 A at most: common practice, no source. */
    @ParameterizedTest
    @MethodSource("cells")
    void guard_protectedCell_tripsAtTenAmpsOrLess(String name, CellSpec cell) {
        assertEquals(name.endsWith("-protected"), cell.guard().isPresent());
        cell.guard().ifPresent(guard -> assertTrue(guard.tripA() <= 10));
        cell.guard().ifPresent(guard -> assertTrue(guard.tripA() >= cell.limitA()));
    }

    static Stream<Arguments> fuses() {
        return specs(PartKind.FUSE);
    }

    /**
     * Blade fuses hold 110 % for hours and open within 0.75–600 s at 135 %, 0.15–5 s at 200 %,
     * 0.04–0.5 s at 350 % (ISO 8820-3, from memory, no source at hand; so only a band).
     */
    @ParameterizedTest
    @MethodSource("fuses")
    void meltingTime_bladeFuse_liesInTheUsualBands(String name, FuseSpec fuse) {
        double rating = fuse.ratingA();

        assertEquals(Double.POSITIVE_INFINITY, fuse.melting().meltingTimeS(1.10 * rating));
        assertBetween(0.75, 600, fuse.melting().meltingTimeS(1.35 * rating), name);
        assertBetween(0.15, 5, fuse.melting().meltingTimeS(2.00 * rating), name);
        assertBetween(0.04, 0.5, fuse.melting().meltingTimeS(3.50 * rating), name);
    }

    private static void assertBetween(double from, double to, double value, String what) {
        assertTrue(value >= from && value <= to, what + ": " + value);
    }

    static Stream<Arguments> chargers() {
        return specs(PartKind.CHARGER);
    }

    @ParameterizedTest
    @MethodSource("chargers")
    void chargers_goodOnes_stopWhereCellsAreFull(String name, ChargerSpec charger) {
        assertEquals(!name.equals("charger-overshoots"), charger.stops() && charger.limitV() <= 4.20);
    }

    static Stream<Arguments> boards() {
        return specs(PartKind.BOARD);
    }

    @ParameterizedTest
    @MethodSource("boards")
    void boards_atTheirCutOff_stayBelowTheirInputLimit(String name, BoardSpec board) {
        assertTrue(board.inputA(board.cutoffV()) <= board.maxInputA(), name);
    }
}
