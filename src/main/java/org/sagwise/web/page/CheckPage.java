package org.sagwise.web.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.sagwise.lesson.IdeasCheck;
import org.sagwise.lesson.IdeasCheck.Form;
import org.sagwise.lesson.IdeasCheck.Objective;
import org.sagwise.lesson.LearnedCode;
import org.sagwise.lesson.Step;
import org.sagwise.text.Texts;
import org.sagwise.web.engine.Words;
import org.sagwise.web.lesson.LessonBook;

/** A form of the check of ideas as a page: twelve questions, what they showed, and a code for who teaches. */
final class CheckPage {

    private final LessonBook book = new LessonBook(new Store());
    private final Tag room = Tag.byId("check");
    private final Form form;
    private Words words;
    private List<Integer> answers;
    private boolean asks;

    private CheckPage(Form form, Locale locale) {
        this.form = form;
        words = Words.in(locale);
        answers = new ArrayList<>(book.check(form));
        asks = answers.size() != Objective.values().length;
        Tag.byId("language").addEventListener("click", event -> {
            words = Words.in(words.locale().getLanguage().equals("de") ? Locale.ENGLISH : Locale.GERMAN);
            lay();
        });
        lay();
        Dom.state("live alive");
    }

    static void begin(String form, Locale locale) {
        new CheckPage(Form.valueOf(form.strip()), locale);
    }

    private void lay() {
        Texts texts = Texts.in("ideas-check", words.locale());
        Dom.speak(words.locale().getLanguage());
        Dom.title(texts.say("title", form));
        Tag.byId("title").setTextContent(texts.say("title", form));
        Tag.byId("language").setTextContent(words.say("language"));
        Dom.eachSaid(tag -> tag.setTextContent(words.say(tag.getAttribute("data-say"))));
        Dom.clear(room);
        if (asks) {
            ask(texts);
        } else {
            tell(texts);
        }
    }

    private void ask(Texts texts) {
        while (answers.size() < Objective.values().length) {
            answers.add(-1);
        }
        room.appendChild(Rich.of("", texts.say("intro")));
        int number = 0;
        for (Step.Choose question : IdeasCheck.questions(form)) {
            room.appendChild(question(number++, question));
        }
        Tag done = Dom.button("cure", words.ui().say("check.done"), () -> {
            book.keep(form, answers);
            asks = false;
            lay();
            Dom.toTop();
            Dom.focusStill(Tag.byId("check-result"));
        });
        done.setId("check-done");
        room.appendChild(Dom.tag("div", "deeds", done));
        room.appendChild(Rich.of("small", texts.say("about")));
    }

    private Tag question(int number, Step.Choose question) {
        String name = "question-" + (number + 1);
        Tag legend = Dom.tag("legend", "", Dom.tag("strong", "", number + 1 + ". "));
        legend.appendChild(Rich.inline("", question.head().text().in(words.locale())));
        Tag box = Dom.tag("fieldset", "question", legend);
        for (int i = 0; i < question.choices().size(); i++) {
            int place = i;
            Tag radio = Dom.tag("input", "", "");
            radio.setAttribute("type", "radio");
            radio.setAttribute("name", name);
            radio.setId(name + "-" + (i + 1));
            radio.setChecked(answers.get(number) == place);
            radio.addEventListener("change", event -> answers.set(number, place));
            box.appendChild(Dom.tag(
                    "label",
                    "tick",
                    radio,
                    Rich.inline("", question.choices().get(i).text().in(words.locale()))));
        }
        return box;
    }

    private void tell(Texts texts) {
        List<Objective> right = IdeasCheck.shown(form, answers);
        Tag result = Dom.tag("h2", "", words.ui().say("check.result", right.size(), Objective.values().length));
        result.setId("check-result");
        result.setAttribute("tabindex", "-1");
        room.appendChild(result);
        for (Objective objective : Objective.values()) {
            boolean shown = right.contains(objective);
            room.appendChild(Dom.tag(
                    "p",
                    shown ? "done" : "note",
                    Dom.tag("span", "mark", shown ? "✓ " : "– "),
                    Dom.tag("span", "", objective.sentence(words.locale()))));
        }
        SummaryPart.code(room, LearnedCode.of(form, answers, seed()).text(), words);
        room.appendChild(Rich.of("small", texts.say("no-licence")));
        room.appendChild(Dom.tag("p", "small", words.say(Store.isLasting() ? "lesson.kept" : "lesson.not-kept")));
        Tag print = Dom.button("", words.say("print"), Dom::print);
        print.setId("check-print");
        Tag again = Dom.button("", words.ui().say("check.again"), () -> {
            asks = true;
            answers = new ArrayList<>();
            lay();
            Dom.toTop();
        });
        again.setId("check-again");
        room.appendChild(Dom.tag("div", "deeds", print, again));
    }

    /** The same for the same reader, so that the same answers sent twice count once. */
    private static long seed() {
        Store store = new Store();
        String kept = store.kept("sagwise.reader").orElse("");
        if (kept.isEmpty()) {
            kept = String.valueOf(1 + (long) (Dom.random() * 1e9));
            store.keep("sagwise.reader", kept);
        }
        try {
            return Long.parseLong(kept);
        } catch (NumberFormatException spoilt) {
            return 1;
        }
    }
}
