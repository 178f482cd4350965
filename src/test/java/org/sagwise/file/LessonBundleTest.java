package org.sagwise.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.sagwise.lesson.Lesson;
import org.sagwise.lesson.Step;
import org.sagwise.part.Catalogue;

class LessonBundleTest {

    private static final Catalogue CATALOGUE = CatalogueLoader.builtIn();

    private static Lesson unpacked(LessonSource source) throws IOException {
        LessonReading reading = LessonReader.bare(CATALOGUE)
                .read(LessonBundle.read(LessonBundle.write(source)).orElseThrow());
        assertEquals(List.of(), reading.faults());
        return reading.lesson().orElseThrow();
    }

    /** Every value of a step but what only the instructor reads. */
    private static String withoutNote(Step step) {
        return step.toString().replaceFirst("note=Optional(?:\\.empty|\\[LocalText\\[byLanguage=.*?}]])", "note");
    }

    @Test
    void write_everyBuiltInLesson_readsBackAsTheSame() throws IOException {
        for (String id : LessonLibrary.ids()) {
            Lesson lesson = new LessonReader(CATALOGUE)
                    .read(LessonLibrary.source(id))
                    .lesson()
                    .orElseThrow();

            Lesson back = unpacked(LessonLibrary.source(id));

            assertEquals(id, back.id());
            assertEquals(lesson.title(), back.title());
            assertEquals(lesson.goal(), back.goal());
            assertEquals(lesson.names(), back.names());
            assertEquals(lesson.benches(), back.benches(), id);
            assertEquals(lesson.languages(), back.languages(), id);
            assertEquals(
                    lesson.steps().stream().map(LessonBundleTest::withoutNote).toList(),
                    back.steps().stream().map(LessonBundleTest::withoutNote).toList(),
                    id);
        }
    }

    @Test
    void write_aLesson_leavesOutWhatOnlyTheInstructorReads() throws IOException {
        LessonSource source = LessonLibrary.source("04-side-by-side");
        Lesson lesson = new LessonReader(CATALOGUE).read(source).lesson().orElseThrow();

        String bundle = LessonBundle.write(source);

        assertTrue(lesson.note().english().contains("splits most classes"));
        assertFalse(bundle.contains("splits most classes"));
        assertEquals("–", unpacked(source).note().english());
        assertTrue(unpacked(source).steps().stream()
                .allMatch(step -> step.head().note().isEmpty()));
        assertFalse(bundle.contains("\n"));
    }

    @Test
    void read_whatIsNoLesson_isRefused() {
        for (String text : List.of(
                "", "{}", "[]", "{\"id\":1,\"files\":{}}", "{\"id\":\"a\"}", "{\"id\":\"a\",\"files\":[]}", "{")) {
            assertEquals(Optional.empty(), LessonBundle.read(text), text);
        }
        LessonSource empty = LessonBundle.read("{\"id\":\"a\",\"files\":{\"lesson.yaml\":3}}")
                .orElseThrow();
        assertFalse(LessonReader.bare(CATALOGUE).read(empty).faults().isEmpty());
    }
}
