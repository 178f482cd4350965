package org.sagwise.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.AbstractMap.SimpleImmutableEntry;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.DemoScenarios;
import org.sagwise.file.LessonBundle;
import org.sagwise.file.LessonLibrary;
import org.sagwise.file.LessonReader;
import org.sagwise.file.ScenarioReader;
import org.sagwise.lesson.IdeasCheck.Form;
import org.sagwise.lesson.Lesson;
import org.sagwise.scenario.Scenario;
import org.sagwise.text.Texts;

/**
 * Writes a site of live pages, files alone: a page for each demo and each lesson, the check of ideas, and an index that
 * opens any share text
 * from a paste or from behind the {@code #} of its address, which no server ever sees.
 */
public final class SiteWriter {

    private static final String LESSON = "lesson-";

    private SiteWriter() {}

    /** Each file's name with its text, made one after the other when it is asked for. */
    public static Iterable<Map.Entry<String, String>> pages(byte[] engine, Locale locale) {
        PageWriter writer = new PageWriter(engine, locale);
        LessonPageWriter lessonWriter = new LessonPageWriter(engine, locale);
        List<String> names = DemoScenarios.names();
        return () -> Stream.of(
                        Stream.of(entry("index", index(names, locale))),
                        names.stream().map(name -> entry(name, writer.write(demo(name, locale)))),
                        LessonLibrary.ids().stream().map(id -> entry(LESSON + id, lesson(id, lessonWriter))),
                        Stream.of(Form.values()).map(form -> entry(check(form), lessonWriter.write(form))))
                .flatMap(pages -> pages)
                .iterator();
    }

    private static String check(Form form) {
        return "check-" + form.name().toLowerCase(Locale.ROOT);
    }

    private static Lesson lesson(String id) {
        return new LessonReader(CatalogueLoader.builtIn())
                .read(LessonLibrary.source(id))
                .lesson()
                .orElseThrow();
    }

    private static String lesson(String id, LessonPageWriter writer) {
        List<String> ids = LessonLibrary.ids();
        Optional<String> following =
                ids.stream().skip(ids.indexOf(id) + 1L).findFirst().map(next -> LESSON + next + ".html");
        try {
            return writer.write(lesson(id), LessonBundle.write(LessonLibrary.source(id)), following);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static String link(String page, String title) {
        return "<li><a href=\"" + page + ".html\">" + PageWriter.escaped(title) + "</a></li>\n";
    }

    private static Map.Entry<String, String> entry(String name, String text) {
        return new SimpleImmutableEntry<>(name + ".html", text);
    }

    private static Scenario demo(String name, Locale locale) {
        return new ScenarioReader(CatalogueLoader.builtIn())
                .read(DemoScenarios.bytes(name, locale))
                .scenario()
                .orElseThrow();
    }

    private static String index(List<String> names, Locale locale) {
        Texts texts = Texts.in("page", locale);
        StringBuilder list = new StringBuilder();
        names.forEach(name -> list.append(link(name, demo(name, locale).title())));
        StringBuilder lessons = new StringBuilder();
        int evening = 0;
        for (String id : LessonLibrary.ids()) {
            Lesson lesson = lesson(id);
            if (lesson.evening() != evening) {
                lessons.append(evening > 0 ? "</ul>\n" : "");
                evening = lesson.evening();
                lessons.append("<h3>")
                        .append(PageWriter.escaped(Texts.in("ui", locale).say("lessons.evening", evening)))
                        .append("</h3>\n<ul>\n");
            }
            lessons.append(link(LESSON + id, lesson.title().in(locale)));
        }
        lessons.append("</ul>\n");
        StringBuilder checks = new StringBuilder();
        for (Form form : Form.values()) {
            checks.append(link(check(form), Texts.in("ideas-check", locale).say("title", form)));
        }
        String style = PageStyle.of("");
        String script = PageWriter.resource("index.js").replace("{{first}}", names.get(0));
        return PageWriter.filled(
                PageWriter.resource("index.html"),
                Map.of(
                        "language", locale.getLanguage(),
                        "policy", PageWriter.policy(style, script),
                        "style", style,
                        "list", list.toString(),
                        "lessons", lessons.toString(),
                        "checks", checks.toString(),
                        "script", script),
                key -> PageWriter.escaped(texts.say(key)));
    }
}
