package org.sagwise.web.page;

import java.util.Locale;
import java.util.Optional;
import org.sagwise.lesson.Lesson;
import org.sagwise.scenario.Scenario;

/** What runs in the browser: shows what the page holds, or what its address brings, to whoever opens it. */
public final class LivePage {

    private LivePage() {}

    /** Started by the page's script, when the page has been read. */
    public static void main(String[] args) {
        Locale locale = Dom.language().equals("de") ? Locale.GERMAN : Locale.ENGLISH;
        String form = Dom.textOf("check-form");
        String bundle = Dom.textOf("lesson-data");
        if (!form.isEmpty()) {
            CheckPage.begin(form, locale);
        } else if (!bundle.isEmpty()) {
            Arrival.lesson(bundle, locale).ifPresentOrElse(lesson -> begin(lesson, locale), LivePage::showStill);
        } else {
            Optional<Scenario> bench = Arrival.isByAddress() ? Arrival.byAddress(locale) : Arrival.withPage(locale);
            bench.ifPresentOrElse(
                    it -> BenchPage.begin(it, Optional.empty(), locale, Arrival.isByAddress()), LivePage::showStill);
        }
    }

    private static void begin(Lesson lesson, Locale locale) {
        BenchPage.begin(lesson.benches().get(lesson.first()).scenario(), Optional.of(lesson), locale, false);
    }

    /** What whoever has no scripts sees. */
    private static void showStill() {
        Dom.state("");
    }
}
