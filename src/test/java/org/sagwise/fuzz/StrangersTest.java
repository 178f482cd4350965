package org.sagwise.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.sagwise.caution.Assessment;
import org.sagwise.caution.Caution;
import org.sagwise.caution.fix.Cure;
import org.sagwise.caution.fix.Fixes;
import org.sagwise.caution.fix.Offer;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.CatalogueReading;
import org.sagwise.file.CatalogueSource;
import org.sagwise.file.DemoScenarios;
import org.sagwise.file.FileFinding;
import org.sagwise.file.Loaded;
import org.sagwise.file.ScenarioReader;
import org.sagwise.file.ShareText;
import org.sagwise.part.Catalogue;
import org.sagwise.picture.layout.BenchLayout;
import org.sagwise.quantity.QuantityFormat.Signs;
import org.sagwise.report.compare.Comparison;
import org.sagwise.report.explain.Explanation;
import org.sagwise.report.post.PostFormat;
import org.sagwise.scenario.Scenario;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.function.LongConsumer;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;

/**
 * Scenarios, share texts and catalogues come from strangers: thousands of spoilt ones, and each is
 * answered with something or with words, in good time. The property {@code sagwise.fuzz.tries} sets
 * how many; a failure names the seed that repeats it.
 */
class StrangersTest {

    private static final int TRIES = Integer.getInteger("sagwise.fuzz.tries", 250);

    /** Nobody waits longer than two seconds; the rest is room for a busy machine. */
    private static final Duration LONGEST = Duration.ofSeconds(10);

    private static final Catalogue CATALOGUE = CatalogueLoader.builtIn();

    private static final ScenarioReader READER = new ScenarioReader(CATALOGUE);

    private static final List<String> DEMOS = DemoScenarios.names();

    private static byte[] demo(Random random) {
        return DemoScenarios.bytes(DEMOS.get(random.nextInt(DEMOS.size())));
    }

    private static void eachSeed(int tries, LongConsumer check) {
        for (long seed = 1; seed <= tries; seed++) {
            long now = seed;
            assertTimeoutPreemptively(
                    LONGEST,
                    () -> {
                        try {
                            check.accept(now);
                        } catch (RuntimeException fault) {
                            throw new AssertionError("seed " + now, fault);
                        }
                    },
                    "seed " + now);
        }
    }

    @Test
    void scenario_spoilt_isRefusedInWordsOrComputedAndExplained() {
        int[] opened = {0};
        eachSeed(
                TRIES,
                seed -> {
                    Random random = new Random(seed);
                    Loaded loaded = READER.read(new Mutator(random).json(demo(random)));
                    answer(loaded);
                    opened[0] += loaded.scenario().isPresent() ? 1 : 0;
                });
        assertTrue(opened[0] > TRIES / 10, "enough of them load: " + opened[0]);
    }

    @Test
    void scenario_ofSpoiltBytes_isRefusedInWordsOrComputed() {
        eachSeed(
                TRIES,
                seed -> {
                    Random random = new Random(seed);
                    answer(READER.read(new Mutator(random).bytes(demo(random))));
                });
    }

    @Test
    void shareText_spoilt_isRefusedInWords() {
        eachSeed(
                TRIES,
                seed -> {
                    Random random = new Random(seed);
                    Scenario scenario = READER.read(demo(random)).scenario().orElseThrow();
                    byte[] text =
                            ShareText.of(scenario)
                                    .orElseThrow()
                                    .getBytes(StandardCharsets.ISO_8859_1);
                    String spoilt =
                            new String(
                                    new Mutator(random).bytes(text), StandardCharsets.ISO_8859_1);
                    answer(ShareText.read(spoilt, READER));
                });
    }

    /** What a hostile hand would send: the checksum is right, and what it covers is not. */
    @Test
    void shareText_withTheRightChecksumOfSpoiltBytes_isRefusedInWordsOrComputed() {
        eachSeed(
                TRIES,
                seed -> {
                    Random random = new Random(seed);
                    Mutator mutator = new Mutator(random);
                    byte[] packed = deflated(mutator.json(demo(random)));
                    byte[] sent = random.nextBoolean() ? packed : mutator.bytes(packed);
                    answer(ShareText.read(sealed(sent), READER));
                });
    }

    @Test
    void catalogue_spoilt_namesItsDefects() {
        eachSeed(
                TRIES / 5,
                seed -> {
                    Random random = new Random(seed);
                    CatalogueReading reading = CatalogueLoader.read(spoilt(random));
                    assertEquals(reading.catalogue().isEmpty(), !reading.defects().isEmpty());
                    reading.defects()
                            .forEach(
                                    defect ->
                                            assertFalse(defect.describe(Locale.GERMAN).isBlank()));
                });
    }

    private static CatalogueSource spoilt(Random random) {
        CatalogueSource source = CatalogueLoader.builtInSource();
        return name -> {
            Optional<InputStream> file = source.open(name);
            if (file.isEmpty() || random.nextInt(4) > 0) {
                return file;
            }
            byte[] bytes = file.get().readAllBytes();
            Mutator mutator = new Mutator(random);
            return Optional.of(
                    new ByteArrayInputStream(
                            random.nextBoolean() ? mutator.json(bytes) : mutator.bytes(bytes)));
        };
    }

    /** Whatever came of loading: words, or everything the program says about a scenario. */
    private static void answer(Loaded loaded) {
        for (FileFinding finding : loaded.findings()) {
            assertFalse(finding.text(Locale.ENGLISH).isBlank());
            assertFalse(finding.text(Locale.GERMAN).isBlank());
        }
        loaded.scenario().ifPresent(StrangersTest::everything);
    }

    private static void everything(Scenario scenario) {
        Assessment assessment = Assessment.of(scenario, CATALOGUE);
        Fixes.of(assessment).forEach(StrangersTest::harmless);
        Optional<Cure> cure = Cure.of(assessment);
        Explanation.Materials materials =
                new Explanation.Materials(
                        ShareText.of(scenario), cure, Optional.empty(), List.of());
        var post = Explanation.of(assessment, materials, Locale.ENGLISH, Signs.PRINT);
        for (PostFormat format : PostFormat.values()) {
            assertFalse(format.write(post, Locale.ENGLISH, Signs.ASCII).isBlank());
        }
        cure.ifPresent(it -> Comparison.of(assessment, it.after()));
        BenchLayout.of(scenario);
        String shared = ShareText.of(scenario).orElseThrow();
        assertEquals(scenario, ShareText.read(shared, READER).scenario().orElseThrow());
    }

    private static void harmless(Offer offer) {
        for (Caution left : offer.after().cautions()) {
            assertTrue(left.signal().compareTo(offer.caution().signal()) >= 0, left.id());
        }
    }

    private static byte[] deflated(byte[] bytes) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (DeflaterOutputStream deflater =
                new DeflaterOutputStream(out, new Deflater(Deflater.DEFAULT_COMPRESSION, true))) {
            deflater.write(bytes);
        } catch (IOException impossible) {
            throw new AssertionError(impossible);
        }
        return out.toByteArray();
    }

    private static String sealed(byte[] packed) {
        CRC32 sum = new CRC32();
        sum.update(packed);
        return ShareText.BEGINNING
                + Base64.getUrlEncoder().withoutPadding().encodeToString(packed)
                + String.format(".%08x", sum.getValue());
    }
}
