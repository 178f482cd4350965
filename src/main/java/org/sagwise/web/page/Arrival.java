package org.sagwise.web.page;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.LessonBundle;
import org.sagwise.file.LessonReader;
import org.sagwise.file.LessonReading;
import org.sagwise.file.Loaded;
import org.sagwise.file.ScenarioReader;
import org.sagwise.file.ShareText;
import org.sagwise.lesson.Lesson;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.Scenario;
import org.sagwise.web.engine.Words;

/** What comes with the page or by its address: it is opened, or the page says why it cannot be. */
final class Arrival {

    /** Above this a deed would take longer than anybody waits. */
    private static final int MOST_PARTS = 300;

    private static final int MOST_FINDINGS = 5;

    private Arrival() {}

    /** Whether the address brings a bench. */
    static boolean isByAddress() {
        return ShareText.isIn(Dom.fragment());
    }

    /** The bench that the address brings. */
    static Optional<Scenario> byAddress(Locale locale) {
        return opened(ShareText.read(Dom.fragment(), reader()), locale);
    }

    /** The bench that the page holds. */
    static Optional<Scenario> withPage(Locale locale) {
        return opened(reader().read(Dom.textOf("scenario").getBytes(StandardCharsets.UTF_8)), locale);
    }

    /** The lesson that the page holds. */
    static Optional<Lesson> lesson(String bundle, Locale locale) {
        LessonReading reading = LessonBundle.read(bundle)
                .map(LessonReader.bare(CatalogueLoader.bare())::read)
                .orElseThrow();
        refuse(reading.lesson().isPresent() ? List.of() : sentences(reading.faults(), locale));
        return reading.lesson();
    }

    private static ScenarioReader reader() {
        return ScenarioReader.bare(CatalogueLoader.bare());
    }

    private static Optional<Scenario> opened(Loaded loaded, Locale locale) {
        List<String> against = against(loaded, locale);
        refuse(against);
        return against.isEmpty() ? loaded.scenario() : Optional.empty();
    }

    /** Why a bench cannot be shown here; empty if it can. */
    private static List<String> against(Loaded loaded, Locale locale) {
        int parts = loaded.scenario().map(it -> it.parts().size()).orElse(0);
        if (parts > MOST_PARTS) {
            return List.of(Words.in(locale).say("too-many", parts));
        }
        return loaded.scenario().isPresent() ? List.of() : sentences(loaded.findings(), locale);
    }

    private static List<String> sentences(List<Finding> findings, Locale locale) {
        return findings.stream()
                .limit(MOST_FINDINGS)
                .map(finding -> finding.text(locale))
                .toList();
    }

    private static void refuse(List<String> against) {
        Tag failed = Tag.byId("failed");
        Dom.clear(failed);
        against.forEach(sentence -> failed.appendChild(Dom.tag("p", "answer", sentence)));
        failed.setHidden(against.isEmpty());
    }
}
