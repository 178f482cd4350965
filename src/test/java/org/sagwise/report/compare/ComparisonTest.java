package org.sagwise.report.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.sagwise.assessment.Assessment;
import org.sagwise.assessment.fix.Cure;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.DemoScenarios;
import org.sagwise.file.ScenarioReader;
import org.sagwise.part.Catalogue;
import org.sagwise.part.PartKind;
import org.sagwise.part.key.Keys;
import org.sagwise.report.compare.Outcome.Quantity;
import org.sagwise.report.post.Block;
import org.sagwise.report.post.PostFormat;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;
import org.sagwise.scenario.edit.FlipParts;
import org.sagwise.text.Signs;

/** What differs between two scenarios, whatever their parts are called. */
class ComparisonTest {

    private static final Catalogue CATALOGUE = CatalogueLoader.builtIn();

    private static Scenario demo(String name) {
        return new ScenarioReader(CATALOGUE)
                .read(DemoScenarios.bytes(name))
                .scenario()
                .orElseThrow();
    }

    private static Comparison compare(Scenario first, Scenario second) {
        return Comparison.of(Assessment.of(first, CATALOGUE), Assessment.of(second, CATALOGUE));
    }

    private static String told(Comparison comparison) {
        return PostFormat.TEXT
                .write(ComparisonPost.of(comparison, Locale.ENGLISH, Signs.PRINT), Locale.ENGLISH, Signs.PRINT)
                .replaceAll("\\s+", " ");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "en | Cell B is turned round | No longer warned of: | as it came | now",
                "de | Zelle B ist umgedreht | Davor wird nicht mehr gewarnt: | wie sie kam | jetzt"
            })
    void changes_ofATurnedCell_speakOfBeforeAndNow(String language, String turned, String gone, String was, String is) {
        Scenario reversed = demo("side-by-side-one-reversed");
        Scenario sound = new FlipParts(Set.of("B")).apply(reversed);
        Comparison comparison = Comparison.atOnce(Assessment.of(reversed, CATALOGUE), Assessment.of(sound, CATALOGUE));
        Locale locale = Locale.forLanguageTag(language);

        List<Block> blocks = ComparisonPost.changes(comparison, locale, Signs.PRINT);

        assertEquals(new Block.Bullets(List.of(turned)), blocks.get(1));
        assertEquals(new Block.Paragraph(gone), blocks.get(3));
        Block.Table table = (Block.Table) blocks.get(blocks.size() - 1);
        assertEquals(List.of("", was, is), table.heads());
        // Without the run time, for which nobody has waited, it is the table of a whole comparison.
        List<List<String>> whole = ComparisonPost.of(compare(reversed, sound), locale, Signs.PRINT).stream()
                .filter(Block.Table.class::isInstance)
                .map(it -> ((Block.Table) it).rows())
                .findFirst()
                .orElseThrow();
        assertEquals(whole.subList(0, whole.size() - 1), table.rows());
    }

    static List<String> demos() {
        return DemoScenarios.names();
    }

    /** The same circuit with other ids, in another order, joints written the other way round. */
    private static Scenario disguised(Scenario scenario, long seed) {
        Random random = new Random(seed);
        Map<String, String> names = new HashMap<>();
        List<Part> parts = new ArrayList<>();
        List<Part> order = new ArrayList<>(scenario.parts());
        Collections.shuffle(order, random);
        for (Part part : order) {
            String name = "p" + names.size();
            names.put(part.id(), name);
            parts.add(part.with("id", name));
        }
        List<Link> links = new ArrayList<>();
        for (Link link : scenario.links()) {
            TerminalRef from = renamed(link.from(), names);
            TerminalRef to = renamed(link.to(), names);
            boolean back = random.nextBoolean();
            links.add(Link.of(
                    link.keys().with("from", (back ? to : from).toString()).with("to", (back ? from : to).toString())));
        }
        Collections.shuffle(links, random);
        return scenario.withParts(parts)
                .withLinks(links)
                .withNotes(List.of())
                .withProbes(Optional.empty())
                .withPlacement(Map.of());
    }

    private static TerminalRef renamed(TerminalRef terminal, Map<String, String> names) {
        return new TerminalRef(names.get(terminal.part()), terminal.terminal());
    }

    @ParameterizedTest
    @MethodSource("demos")
    void of_sameCircuitUnderOtherNames_differsInNothing(String name) {
        for (long seed = 1; seed <= 6; seed++) {
            Comparison comparison = compare(demo(name), disguised(demo(name), seed));
            assertEquals(List.of(), comparison.build(), "seed " + seed);
            assertFalse(comparison.outcome().differs(), "seed " + seed);
        }
    }

    @Test
    void of_reversedPairAndItsCure_differsInOneTurnedCell() {
        Scenario faulty = demo("side-by-side-one-reversed");
        Scenario cured =
                Cure.of(Assessment.of(faulty, CATALOGUE)).orElseThrow().after().scenario();
        for (Scenario second : List.of(cured, disguised(cured, 7))) {
            Comparison comparison = compare(faulty, second);
            assertEquals(1, comparison.build().size(), comparison.build().toString());
            assertTrue(comparison.build().get(0) instanceof BuildDifference.Turned);
            assertEquals(
                    "reversed-in-parallel", comparison.outcome().gone().get(0).id());
            assertTrue(comparison.differs());
        }
        assertTrue(told(compare(faulty, cured)).contains("is turned round in the second"));
    }

    @Test
    void of_otherWireAndCoil_namesBoth() {
        Scenario first = demo("thin-wire");
        Scenario second = Cure.of(Assessment.of(first, CATALOGUE))
                .orElseThrow()
                .after()
                .scenario()
                .withPart("coil", coil -> coil.with("ohm", 0.5));
        String told = told(compare(first, second));
        assertTrue(told.contains("The coil: resistance 0.4 Ω in the first, 0.5 Ω in the second"), told);
        assertTrue(told.contains("AWG 26") && told.contains("AWG 18"), told);
    }

    private static List<BuildDifference> fuses(Part first, Part second) {
        return compare(Scenario.of("A", List.of(first), List.of()), Scenario.of("B", List.of(second), List.of()))
                .build();
    }

    /** What the label claims is a difference, though no volt changes by it. */
    @Test
    void of_claimOfTheModel_differsFromTheSameCellWithoutIt() {
        Keys honest = CATALOGUE
                .models(PartKind.CELL)
                .find("icr18650-1200-4A-rewrapped")
                .orElseThrow()
                .keys();
        Part plain = Part.of("A", PartKind.CELL, "charge", 1);
        for (var entry : honest.without("claimed_A", "claimed_mAh").values().entrySet()) {
            plain = plain.with(entry.getKey(), entry.getValue());
        }
        List<BuildDifference> found =
                fuses(Part.of("A", PartKind.CELL, "charge", 1, "model", "icr18650-1200-4A-rewrapped"), plain);

        assertEquals(
                List.of("claimed_A", "claimed_mAh"),
                found.stream()
                        .map(it -> ((BuildDifference.KeyChanged) it).key())
                        .toList());
    }

    /** 115 A²s is what the catalogue says of the fuse of 10 A; unsaid it would be 1.3 s · (10 A)². */
    @Test
    void of_meltingIntegral_isThatOfTheModelOrTheUsualOne() {
        Part model = Part.of("f", PartKind.FUSE, "model", "fuse-10A");
        Part written = Part.of("f", PartKind.FUSE, "rating_A", 10, "mohm", 7.5, "i2t_A2s", 115);
        Part unsaid = written.without("i2t_A2s");

        assertEquals(List.of(), fuses(model, written));
        assertEquals(
                List.of("i2t_A2s"),
                fuses(model, unsaid).stream()
                        .map(it -> ((BuildDifference.KeyChanged) it).key())
                        .toList());
        assertEquals(List.of(), fuses(unsaid, unsaid.with("i2t_A2s", 130)));
    }

    /** A model and its numbers, a default said and left unsaid, are the same cell and switch. */
    @Test
    void of_sameValuesWrittenOtherwise_differsInNothing() {
        Scenario first = demo("side-by-side-one-reversed");
        Scenario second = first.withPart(
                        "A",
                        cell -> cell.with("internal_mohm", 22)
                                .with("limit_A", 20)
                                .with("health", 1))
                .withPart("B", cell -> cell.without("charge").with("rest_V", 4.2))
                .withPart("fire", button -> button.without("closed_mohm", "label"));
        assertEquals(List.of(), compare(first, second).build());
    }

    @Test
    void of_missingPartAndJoint_namesThem() {
        Scenario first = demo("paper-clip-across-the-coil");
        Scenario second = first.withLinks(first.links().subList(0, 3)).withNotes(List.of());
        String told = told(compare(first, second));
        assertTrue(told.contains("In the first alone: The coil's first end touches the coil's second end"), told);
        assertEquals(1, compare(first, second).build().size());
        Scenario two = demo("two-cells-side-by-side");
        String other = told(compare(two, demo("one-cell-on-half-an-ohm")));
        assertTrue(other.contains("Cell B is in the first alone"), other);
    }

    /** Equal watts side by side and in a row: the equality that every build must show. */
    @Test
    void of_equalWatts_isAlikeInWattsAndAmpsPerCell() {
        Comparison comparison = compare(demo("two-side-by-side-ideal"), demo("two-in-a-row-ideal"));
        assertTrue(comparison.differs());
        for (Outcome.Row row : comparison.outcome().rows()) {
            if (row.quantity() == Quantity.COIL_POWER || row.quantity() == Quantity.CURRENT) {
                assertTrue(row.isAlike(), row.toString());
            }
        }
    }

    @Test
    void of_itself_isAlikeInBothLanguages() {
        Scenario demo = demo("two-by-two");
        Comparison comparison = compare(demo, demo);
        assertFalse(comparison.differs());
        assertTrue(told(comparison).contains("it is the same circuit"));
        String german = PostFormat.TEXT.write(
                ComparisonPost.of(comparison, Locale.GERMAN, Signs.PRINT), Locale.GERMAN, Signs.PRINT);
        assertTrue(german.contains("dieselbe Schaltung"), german);
    }
}
