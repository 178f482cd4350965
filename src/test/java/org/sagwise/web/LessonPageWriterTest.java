package org.sagwise.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.sagwise.file.LessonBundle;
import org.sagwise.file.LessonLibrary;
import org.sagwise.file.LessonReader;
import org.sagwise.file.LessonSource;
import org.sagwise.lesson.IdeasCheck.Form;
import org.sagwise.lesson.Lesson;
import org.sagwise.lesson.LessonFixture;

/** What the writer puts into a lesson's page, with a stand-in for the engine. */
class LessonPageWriterTest {

    /** A built-in lesson in which every text that people read is hostile. */
    static LessonSource hostile(String id, String text) {
        LessonSource source = LessonLibrary.source(id);
        return new LessonSource() {
            @Override
            public String id() {
                return "hostile";
            }

            @Override
            public Optional<byte[]> file(String name) throws IOException {
                String words = new String(source.file(name).orElseThrow(), StandardCharsets.UTF_8);
                String inYaml =
                        Matcher.quoteReplacement(text.replace("\\", "\\\\").replace("\"", "\\\""));
                return Optional.of(
                        (name.equals(LessonReader.FILE) ? words.replaceAll("(en|de): \"", "$1: \"" + inYaml) : words)
                                .getBytes(StandardCharsets.UTF_8));
            }
        };
    }

    static String page(byte[] engine, LessonSource source, Locale locale) throws IOException {
        Lesson lesson =
                new LessonReader(LessonFixture.CATALOGUE).read(source).lesson().orElseThrow();
        return new LessonPageWriter(engine, locale).write(lesson, LessonBundle.write(source), Optional.of("next.html"));
    }

    @Test
    void write_aLesson_saysItsGoalAndShowsItsBenchWithoutScripts() throws IOException {
        String page = page(PageWriterTest.ENGINE, LessonLibrary.source("04-side-by-side"), Locale.GERMAN);

        String still = page.substring(page.indexOf("<article id=\"still\">"), page.indexOf("</article>"));
        assertTrue(still.contains("Verbindet zwei Zellen nebeneinander"), still);
        assertTrue(still.contains("<svg"));
        assertTrue(page.contains("href=\"next.html\""));
        assertEquals(List.of(), PageWriterTest.findings(page));
    }

    @Test
    void write_hostileTexts_standAsDataAlone() throws IOException {
        LessonSource source = hostile("04-side-by-side", PageWriterTest.HOSTILE);

        String page = page(PageWriterTest.ENGINE, source, Locale.ENGLISH);

        assertFalse(page.contains("<script>window"));
        assertFalse(page.contains("<img"));
        assertEquals(4, page.split("</script>", -1).length - 1);
        assertEquals(List.of(), PageWriterTest.findings(page));
        Matcher data = Pattern.compile("id=\"lesson-data\">(.*?)</script>", Pattern.DOTALL)
                .matcher(page);
        assertTrue(data.find());
        Lesson back = LessonReader.bare(LessonFixture.CATALOGUE)
                .read(LessonBundle.read(data.group(1)).orElseThrow())
                .lesson()
                .orElseThrow();
        assertTrue(back.title().english().startsWith(PageWriterTest.HOSTILE));
    }

    @Test
    void write_theCheckOfIdeas_asksItsQuestionsWithoutScripts() {
        String page = new LessonPageWriter(PageWriterTest.ENGINE, Locale.ENGLISH).write(Form.B);

        assertEquals(12, page.split("</ul></li>", -1).length - 1);
        assertEquals(List.of(), PageWriterTest.findings(page));
    }

    @Test
    void pages_ofASite_namesEveryLessonInItsIndex() {
        Map.Entry<String, String> index = SiteWriter.pages(PageWriterTest.ENGINE, Locale.GERMAN)
                .iterator()
                .next();

        for (String id : LessonLibrary.ids()) {
            assertTrue(index.getValue().contains("href=\"lesson-" + id + ".html\""), id);
        }
        assertTrue(index.getValue().contains("href=\"check-b.html\""));
    }
}
