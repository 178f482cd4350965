package org.sagwise.fuzz;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.function.LongConsumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.CatalogueSource;
import org.sagwise.file.DemoScenarios;
import org.sagwise.file.Loaded;
import org.sagwise.file.ShareText;
import org.sagwise.scenario.Scenario;

/**
 * Scenarios, share texts and catalogues come from strangers: thousands of spoilt ones, and each is
 * answered with something or with words, in good time. The property {@code sagwise.fuzz.tries} sets
 * how many; a failure names the seed that repeats it.
 */
@Timeout(value = 1, unit = TimeUnit.HOURS, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class StrangersTest {

    private static final int TRIES = Integer.getInteger("sagwise.fuzz.tries", 250);

    private static final List<String> DEMOS = DemoScenarios.names();

    private static byte[] demo(Random random) {
        return DemoScenarios.bytes(DEMOS.get(random.nextInt(DEMOS.size())));
    }

    private static void eachSeed(int tries, LongConsumer check) {
        for (long seed = 1; seed <= tries; seed++) {
            long now = seed;
            try {
                check.accept(now);
            } catch (RuntimeException | AssertionError fault) {
                throw new AssertionError("seed " + now, fault);
            }
        }
    }

    @Test
    void scenario_spoilt_isRefusedInWordsOrComputedAndExplained() {
        int[] opened = {0};
        eachSeed(TRIES, seed -> {
            Random random = new Random(seed);
            Loaded loaded = Answers.READER.read(new Mutator(random).json(demo(random)));
            Answers.of(loaded);
            opened[0] += loaded.scenario().isPresent() ? 1 : 0;
        });
        assertTrue(opened[0] > TRIES / 10, "enough of them load: " + opened[0]);
    }

    @Test
    void scenario_ofSpoiltBytes_isRefusedInWordsOrComputed() {
        eachSeed(TRIES, seed -> {
            Random random = new Random(seed);
            Answers.of(Answers.READER.read(new Mutator(random).bytes(demo(random))));
        });
    }

    @Test
    void shareText_spoilt_isRefusedInWords() {
        eachSeed(TRIES, seed -> {
            Random random = new Random(seed);
            Scenario scenario = Answers.READER.read(demo(random)).scenario().orElseThrow();
            byte[] text = ShareText.of(scenario).orElseThrow().getBytes(StandardCharsets.ISO_8859_1);
            String spoilt = new String(new Mutator(random).bytes(text), StandardCharsets.ISO_8859_1);
            Answers.of(ShareText.read(spoilt, Answers.READER));
        });
    }

    /** What a hostile hand would send: the checksum is right, and what it covers is not. */
    @Test
    void shareText_withTheRightChecksumOfSpoiltBytes_isRefusedInWordsOrComputed() {
        eachSeed(TRIES, seed -> {
            Random random = new Random(seed);
            Mutator mutator = new Mutator(random);
            byte[] packed = Sealed.deflated(mutator.json(demo(random)));
            byte[] sent = random.nextBoolean() ? packed : mutator.bytes(packed);
            Answers.of(ShareText.read(Sealed.sealed(sent), Answers.READER));
        });
    }

    @Test
    void catalogue_spoilt_namesItsDefects() {
        eachSeed(TRIES / 5, seed -> {
            Random random = new Random(seed);
            Answers.of(CatalogueLoader.read(spoilt(random)));
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
                    new ByteArrayInputStream(random.nextBoolean() ? mutator.json(bytes) : mutator.bytes(bytes)));
        };
    }
}
