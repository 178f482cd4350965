package org.sagwise.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.function.Function;
import java.util.stream.Collectors;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.fixture.RandomCircuits;
import org.sagwise.fixture.Renamed;
import org.sagwise.part.Catalogue;
import org.sagwise.reading.Bench;
import org.sagwise.reading.Readings;
import org.sagwise.scenario.Scenario;

/** A line makes a bench, and that bench a line of which the same circuit can be made again. */
class TradeWordsProperties {

    private static final Catalogue CATALOGUE = CatalogueLoader.builtIn();

    @Property(tries = 300)
    void line_builtSaidAndBuiltAgain_isTheSameCircuit(@ForAll long seed, @ForAll boolean german) {
        Locale locale = german ? Locale.GERMAN : Locale.ENGLISH;
        WordsBench first = TradeWords.read(RandomLines.of(seed), CATALOGUE, locale);
        Assume.that(first.scenario().isPresent());
        Scenario bench = first.scenario().orElseThrow();

        SaidBench said = TradeWords.write(bench, CATALOGUE, locale);

        String line = said.line().orElseThrow(() -> new AssertionError(RandomLines.of(seed) + " " + said));
        Scenario again = TradeWords.read(line, CATALOGUE, locale).scenario().orElseThrow();
        assertEquals(watts(bench), watts(again), line);
        assertEquals(joints(bench), joints(again), line);
        assertEquals(bench.fired(), again.fired());
        assertEquals(bench.ambientC(), again.ambientC());
    }

    /** What a bench is said in does not depend on what its parts are called. */
    @Property(tries = 100)
    void bench_withOtherNames_isStillSaid(@ForAll long seed) {
        WordsBench first = TradeWords.read(RandomLines.of(seed), CATALOGUE, Locale.ENGLISH);
        Assume.that(first.scenario().isPresent());
        Scenario bench = first.scenario().orElseThrow();
        Scenario renamed = Renamed.of(bench, new Random(seed)).scenario().withAmbientC(bench.ambientC());

        SaidBench said = TradeWords.write(renamed, CATALOGUE, Locale.ENGLISH);

        String line = said.line().orElseThrow(() -> new AssertionError(RandomLines.of(seed) + " " + said));
        Scenario again =
                TradeWords.read(line, CATALOGUE, Locale.ENGLISH).scenario().orElseThrow();
        assertEquals(watts(bench), watts(again), line);
    }

    @Property(tries = 200)
    void anyBench_isSaidOrToldWhyNot(@ForAll long seed) {
        SaidBench said = TradeWords.write(RandomCircuits.of(seed, 7), CATALOGUE, Locale.ENGLISH);

        assertTrue(
                said.line().isPresent() || !((SaidBench.Unsaid) said).reasons().isEmpty());
    }

    @Property
    void anyText_isABenchOrComplaintsWithTheirPlace(@ForAll String text) {
        WordsBench answer = TradeWords.read(text, CATALOGUE, Locale.ENGLISH);

        if (answer instanceof WordsBench.Refused refused) {
            assertTrue(!refused.complaints().isEmpty());
            refused.complaints()
                    .forEach(complaint -> assertTrue(complaint.span().end() <= text.length()));
        }
    }

    /** Watts of each kind of part, so that names and order play no part. */
    private static List<String> watts(Scenario bench) {
        Readings readings = Bench.of(bench, CATALOGUE).fired();
        return readings.parts().stream()
                .map(part -> String.format(Locale.ROOT, "%s %.5f", part.kind(), Math.abs(part.powerW())))
                .sorted()
                .toList();
    }

    private static Map<String, Long> joints(Scenario bench) {
        return bench.links().stream()
                .map(link -> link.joint().toString())
                .collect(Collectors.groupingBy(Function.identity(), Collectors.counting()));
    }
}
