package org.sagwise.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.sagwise.file.LessonProgress.Place;
import org.sagwise.lesson.Lesson;
import org.sagwise.lesson.LessonFixture;
import org.sagwise.lesson.LessonPlayer;
import org.sagwise.lesson.Sureness;

class LessonProgressTest {

    @TempDir
    private Path folder;

    private final Lesson lesson = LessonFixture.builtIn("03-coil-sets-the-amps");

    private LessonPlayer somewhere() {
        return LessonPlayer.begin(lesson, LessonFixture.CATALOGUE, Locale.ENGLISH)
                .choose(1)
                .next()
                .hint()
                .skip()
                .type(99)
                .type(8.4);
    }

    @Test
    void read_whatWasWritten_isTheSame() throws IOException {
        LessonPlayer sure = LessonPlayer.begin(
                        LessonFixture.builtIn("01-close-the-ring"), LessonFixture.CATALOGUE, Locale.ENGLISH)
                .jump(3)
                .choose(0)
                .sure(Optional.of(Sureness.SURE));
        LessonProgress progress = LessonProgress.NONE.with(somewhere()).with(sure);
        Path file = folder.resolve("progress.json");

        progress.write(file);

        assertTrue(Files.readString(file).replace(" ", "").contains("\"sure\":\"sure\""));

        assertEquals(progress, LessonProgress.read(file));
        assertEquals(progress, LessonProgress.read(progress.text()));
    }

    @Test
    void resume_atPlace_goesOnWhereItWasLeft() {
        LessonPlayer player = somewhere();
        Place place = LessonProgress.NONE.with(player).place(lesson.id()).orElseThrow();

        LessonPlayer back =
                LessonPlayer.resume(lesson, LessonFixture.CATALOGUE, Locale.ENGLISH, place.reached(), place.answers());

        assertEquals(player.at(), back.at());
        assertEquals(player.allAnswers(), back.allAnswers());
        assertEquals(player.bench(), back.bench());
    }

    @Test
    void resume_withAnswersOfAnotherLesson_beginsAnew() {
        LessonPlayer back = LessonPlayer.resume(lesson, LessonFixture.CATALOGUE, Locale.ENGLISH, 3, List.of());

        assertEquals(0, back.at());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "{",
                "[]",
                "{\"sagwise_progress\": 9}",
                "{\"sagwise_progress\": 1, \"lessons\": 3}",
                "{\"sagwise_progress\": 1, \"lessons\": {\"a\": {\"answers\": [{\"choice\": -4}]}}}"
            })
    void read_spoiltFile_neverFails(String text) throws IOException {
        Path file = folder.resolve("progress.json");
        Files.writeString(file, text);

        LessonProgress progress = LessonProgress.read(file);

        assertEquals(progress, LessonProgress.read(text));
        assertTrue(progress.places().values().stream()
                .flatMap(place -> place.answers().stream())
                .allMatch(answers -> answers.choice().isEmpty()));
    }

    @Test
    void wipe_ofFile_leavesNothing() throws IOException {
        Path file = folder.resolve("progress.json");
        LessonProgress.NONE.with(somewhere()).write(file);

        LessonProgress.wipe(file);

        assertFalse(Files.exists(file));
        assertEquals(LessonProgress.NONE, LessonProgress.read(file));
    }
}
