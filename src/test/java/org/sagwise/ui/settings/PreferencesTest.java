package org.sagwise.ui.settings;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PreferencesTest {

    private static final WindowPlace PLACE = new WindowPlace(10, 20, 1280, 720, WindowPlace.State.MAXIMIZED);

    @Test
    void save_everythingChosen_isThereAtTheNextStart(@TempDir Path folder) {
        Preferences chosen = Preferences.fresh()
                .withLooks(LooksChoice.HIGH_CONTRAST)
                .withMotion(Motion.REDUCED)
                .withTextPercent(150)
                .withLanguage("de")
                .withNoticeRead(1)
                .withExamples(Shown.HIDDEN)
                .withBenchShare(0.5)
                .withWindow(PLACE)
                .withOpened(folder.resolve("Größe Ω.sagwise.json"));
        Path deep = folder.resolve("not").resolve("there yet");
        new DiskSettings(deep).save(chosen);
        Preferences next = new DiskSettings(deep).load();

        assertEquals(LooksChoice.HIGH_CONTRAST, next.looks());
        assertEquals(Motion.REDUCED, next.motion());
        assertEquals(150, next.textPercent());
        assertEquals("de", next.language());
        assertEquals(1, next.noticeRead());
        assertEquals(Shown.HIDDEN, next.examples());
        assertEquals(0.5, next.benchShare());
        assertEquals(Optional.of(PLACE), next.window());
        assertEquals(List.of(folder.resolve("Größe Ω.sagwise.json")), next.recent());
    }

    @Test
    void load_brokenFile_startsFreshAndPutsItAside(@TempDir Path folder) throws IOException {
        Files.writeString(folder.resolve("settings.json"), "{\"looks\": ");

        assertEquals(Preferences.fresh(), new DiskSettings(folder).load());
        assertEquals("{\"looks\": ", Files.readString(folder.resolve("settings.json.broken")));
    }

    @Test
    void get_nonsense_isTheUsualValue() {
        Preferences odd = new Preferences(Map.of(
                "looks",
                "plaid",
                "text_percent",
                9000,
                "window",
                Map.of("x", "left"),
                "recent",
                "all of them",
                "bench_share",
                Double.NaN));

        assertEquals(LooksChoice.SYSTEM, odd.looks());
        assertEquals(100, odd.textPercent());
        assertEquals(Optional.empty(), odd.window());
        assertEquals(List.of(), odd.recent());
        assertEquals(Preferences.fresh().benchShare(), odd.benchShare());
    }

    @Test
    void with_aSetting_carriesUnknownOnesAlong() {
        Preferences newer = new Preferences(Map.of("from_the_future", List.of(1, 2)));

        assertEquals(List.of(1, 2), newer.withLanguage("de").values().get("from_the_future"));
    }

    @Test
    void save_settingsOfANewerProgram_survive(@TempDir Path folder) throws IOException {
        String newer = "{\"later\": {\"a\": [1.50, null, true, \"Ω\"]}, \"language\": \"de\"}";
        Files.writeString(folder.resolve("settings.json"), newer);
        DiskSettings settings = new DiskSettings(folder);
        settings.save(settings.load().withLanguage("en"));

        String kept = Files.readString(folder.resolve("settings.json"));
        assertEquals("{\"later\":{\"a\":[1.50,null,true,\"Ω\"]},\"language\":\"en\"}", kept.replaceAll("\\s+", ""));
    }

    @Test
    void withOpened_manyFiles_keepsTheLatestTenWithoutRepeating() {
        Preferences preferences = Preferences.fresh();
        for (int i : IntStream.range(0, 14).toArray()) {
            preferences = preferences.withOpened(Path.of("bench" + i));
        }
        preferences = preferences.withOpened(Path.of("bench9"));

        assertEquals(10, preferences.recent().size());
        assertEquals(Path.of("bench9"), preferences.recent().get(0));
        assertEquals(
                1,
                preferences.recent().stream().filter(Path.of("bench9")::equals).count());
    }

    @Test
    void withLessonFolder_putAway_isStillAmongTheRecent(@TempDir Path folder) {
        Path one = folder.resolve("one");
        Path two = folder.resolve("two");
        Preferences open = Preferences.fresh()
                .withLessonFolder(Optional.of(one))
                .withLessonFolder(Optional.of(two))
                .withLessonFolder(Optional.of(one));
        new DiskSettings(folder).save(open);
        Preferences next = new DiskSettings(folder).load();

        assertEquals(Optional.of(one), next.lessonFolder());
        assertEquals(List.of(one, two), next.recentLessons());
        Preferences away = next.withLessonFolder(Optional.empty());
        assertEquals(Optional.empty(), away.lessonFolder());
        assertEquals(List.of(one, two), away.recentLessons());
    }

    @Test
    void withTextPercent_beyondTheBounds_staysWithinThem() {
        assertEquals(200, Preferences.fresh().withTextPercent(225).textPercent());
        assertEquals(100, Preferences.fresh().withTextPercent(75).textPercent());
    }
}
