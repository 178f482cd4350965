package org.sagwise.part;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.sagwise.part.key.Keys;
import org.sagwise.text.LocalText;

class EntriesTest {

    private static final List<String> KNOWN =
            List.of("inr18650-2500-20A", "inr18650-3000-15A", "imr18350-700-7A", "spring", "weld");

    private static PartModel entry(String id) {
        return new PartModel(
                new Card(id, LocalText.same(id), LocalText.same(id), Map.of()),
                PartKind.SWITCH,
                Keys.of("closed_mohm", 3));
    }

    @Test
    void of_twoWithOneId_isRefused() {
        assertThrows(IllegalArgumentException.class, () -> Entries.of(List.of(entry("a"), entry("a"))));
    }

    @Test
    void find_knownAndUnknown_isThereOrEmpty() {
        Entries<PartModel> entries = Entries.of(List.of(entry("b"), entry("a")));

        assertEquals("a", entries.find("a").orElseThrow().id());
        assertEquals(Optional.empty(), entries.find("A"));
        assertEquals(List.of("b", "a"), List.copyOf(entries.ids()));
    }

    @Test
    void whenAsked_askedTwice_fetchesOnce() {
        AtomicInteger fetched = new AtomicInteger();
        Entries<PartModel> entries = Entries.whenAsked(() -> {
            fetched.incrementAndGet();
            return List.of(entry("a"));
        });

        assertEquals(0, fetched.get());
        assertEquals(1, entries.size());
        assertEquals(1, entries.all().size());
        assertEquals(1, fetched.get());
    }

    @ParameterizedTest
    @CsvSource({
        "inr18650-2500-20a, inr18650-2500-20A",
        "inr18560-2500-20A, inr18650-2500-20A",
        "imr18350-700-8A, imr18350-700-7A",
        "sprnig, spring",
        "wled, weld"
    })
    void nearMiss_typingSlip_findsWhatWasMeant(String written, String meant) {
        assertEquals(meant, NearMiss.of(written, KNOWN).get(0));
    }

    @Test
    void nearMiss_partOfAName_findsAllThatHoldIt() {
        assertEquals(List.of("inr18650-2500-20A", "inr18650-3000-15A"), NearMiss.of("inr18650", KNOWN));
    }

    @Test
    void nearMiss_nothingLikeIt_isEmpty() {
        assertEquals(List.of(), NearMiss.of("transformer", KNOWN));
        assertEquals(List.of(), NearMiss.of(" ", KNOWN));
    }

    /** Worked examples of the distance with swaps: computed by hand. */
    @ParameterizedTest
    @CsvSource({"abc, abc, 0", "abc, acb, 1", "abc, abd, 1", "abc, ab, 1", "kitten, sitting, 3"})
    void distance_words_isTheLeastNumberOfChanges(String a, String b, int changes) {
        assertEquals(changes, NearMiss.distance(a, b));
    }

    @Property
    void distance_anyWords_isTheSameBothWaysAndBounded(
            @ForAll @AlphaChars @StringLength(max = 12) String a,
            @ForAll @AlphaChars @StringLength(max = 12) String b) {
        int distance = NearMiss.distance(a, b);

        assertEquals(distance, NearMiss.distance(b, a));
        assertEquals(a.equals(b), distance == 0);
        assertTrue(distance <= Math.max(a.length(), b.length()));
        assertTrue(distance >= Math.abs(a.length() - b.length()));
    }
}
