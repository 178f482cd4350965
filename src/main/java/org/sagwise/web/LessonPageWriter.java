package org.sagwise.web;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.sagwise.assessment.Assessment;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.LessonBundle;
import org.sagwise.lesson.IdeasCheck;
import org.sagwise.lesson.Lesson;
import org.sagwise.lesson.Step;
import org.sagwise.scenario.Press;
import org.sagwise.scenario.Scenario;
import org.sagwise.text.Texts;
import org.sagwise.web.engine.Words;

/**
 * Writes a lesson as a live page: one file of HTML that holds the lesson, its first bench and the engine on which it is
 * played. As safe as a page of a bench: the lesson stands in it as data, and never becomes markup.
 */
public final class LessonPageWriter {

    private final Locale locale;
    private final String engine;
    private final String packed;
    private final Words words;

    /**
     * @param engine the script that {@code LivePage} was compiled to
     */
    public LessonPageWriter(byte[] engine, Locale locale) {
        this.engine = EngineScript.of(engine, true);
        packed = PageWriter.packed(this.engine);
        this.locale = locale;
        words = Words.in(locale);
    }

    /**
     * The page of a lesson.
     *
     * @param bundle the lesson as {@link LessonBundle} packs it
     * @param following address of the page of the lesson that comes next; empty where there is none
     */
    public String write(Lesson lesson, String bundle, Optional<String> following) {
        Scenario first = lesson.scenarios(locale).get(lesson.first());
        String picture = PageWriter.firstPicture(
                Assessment.of(first, CatalogueLoader.builtIn())
                        .with(Press.RELEASED)
                        .veiled(),
                locale);
        String title = PageWriter.escaped(lesson.title().in(locale));
        String style = PageStyle.of(bundle);
        String loader = PageWriter.resource("loader.js");
        Map<String, String> blanks = new LinkedHashMap<>();
        blanks.put("language", locale.getLanguage());
        blanks.put("policy", PageWriter.policy(style, loader, engine));
        blanks.put("title", title);
        blanks.put("style", style);
        blanks.put("kind", "lesson");
        blanks.put("lesson", section(following));
        blanks.put("bench", picture);
        blanks.put("watts", "–");
        blanks.put("way", "");
        blanks.put("still", still(lesson, title, picture));
        blanks.put("scenario", "{}");
        blanks.put("lesson-data", PageWriter.inert(bundle));
        blanks.put("engine", packed);
        blanks.put("loader", loader);
        return PageWriter.filled(PageWriter.resource("page.html"), blanks, key -> PageWriter.said(key, words));
    }

    /** The page of a form of the check of ideas. */
    public String write(IdeasCheck.Form form) {
        Texts texts = Texts.in("ideas-check", locale);
        String style = PageStyle.of("");
        String loader = PageWriter.resource("loader.js");
        Map<String, String> blanks = new LinkedHashMap<>();
        blanks.put("language", locale.getLanguage());
        blanks.put("policy", PageWriter.policy(style, loader, engine));
        blanks.put("title", PageWriter.escaped(texts.say("title", form)));
        blanks.put("style", style);
        blanks.put("still", still(form, texts));
        blanks.put("form", form.name());
        blanks.put("engine", packed);
        blanks.put("loader", loader);
        return PageWriter.filled(PageWriter.resource("check.html"), blanks, key -> PageWriter.said(key, words));
    }

    /** The questions alone, to be answered on paper. */
    private String still(IdeasCheck.Form form, Texts texts) {
        StringBuilder still = new StringBuilder("<h1>")
                .append(PageWriter.escaped(texts.say("title", form)))
                .append("</h1>\n<ol>\n");
        for (Step.Choose question : IdeasCheck.questions(form)) {
            still.append("<li>")
                    .append(PageWriter.escaped(question.head().text().in(locale)))
                    .append("<ul>");
            question.choices()
                    .forEach(it -> still.append("<li>")
                            .append(PageWriter.escaped(it.text().in(locale)))
                            .append("</li>"));
            still.append("</ul></li>\n");
        }
        return still.append("</ol>\n<p class=\"notice\">")
                .append(PageWriter.escaped(words.say("notice")))
                .append("</p>")
                .toString();
    }

    private String section(Optional<String> following) {
        String link = following
                .map(address -> "<a class=\"following\" id=\"lesson-following\" hidden href=\""
                        + PageWriter.escaped(address) + "\" data-say=\"lesson.following\">"
                        + PageWriter.escaped(words.say("lesson.following")) + "</a>")
                .orElse("");
        return PageWriter.filled(
                        PageWriter.resource("lesson.html"),
                        Map.of("following", link),
                        key -> PageWriter.said(key, words))
                + "\n";
    }

    /** What a reader sees whose browser runs no scripts. */
    private String still(Lesson lesson, String title, String picture) {
        return "<h1>" + title + "</h1>\n<p>"
                + PageWriter.escaped(words.say("lesson.goal", lesson.goal().in(locale)))
                + "</p>\n<p>" + PageWriter.escaped(words.say("lesson.minutes", lesson.minutes())) + "</p>\n<p>"
                + PageWriter.escaped(words.say("lesson.no-script")) + "</p>\n<figure>" + picture
                + "</figure>\n<p class=\"notice\">"
                + PageWriter.escaped(words.say("notice")) + "</p>";
    }
}
