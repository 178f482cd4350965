package org.sagwise.report.handout;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.sagwise.lesson.Choice;
import org.sagwise.lesson.ClassGain;
import org.sagwise.lesson.IdeasCheck;
import org.sagwise.lesson.IdeasCheck.Form;
import org.sagwise.lesson.IdeasCheck.Objective;
import org.sagwise.lesson.Step;
import org.sagwise.quantity.QuantityFormat;
import org.sagwise.quantity.Unit;
import org.sagwise.report.handout.Handout.Frame;
import org.sagwise.report.handout.Handout.Item;
import org.sagwise.report.handout.Handout.Kind;
import org.sagwise.report.handout.Handout.Option;
import org.sagwise.text.Texts;

/** The check of ideas on paper: its forms, what a learner keeps, and the record of a class. */
public final class IdeasCheckPages {

    private static final String LETTERS = "ABCD";

    private final Locale locale;
    private final Texts texts;
    private final List<Item> items = new ArrayList<>();

    private IdeasCheckPages(Locale locale) {
        this.locale = locale;
        this.texts = Texts.in("ideas-check", locale);
    }

    /** The questions of a form, or the key to them. */
    public static Handout form(Form form, Kind kind, Locale locale) {
        IdeasCheckPages page = new IdeasCheckPages(locale);
        page.items.add(Item.text(page.texts.say("intro"), Frame.NONE));
        int number = 1;
        for (Step.Choose question : IdeasCheck.questions(form)) {
            page.items.add(page.question(number++, question, kind));
        }
        page.items.add(Item.text(page.texts.say("about"), Frame.NONE));
        return page.handout(
                page.texts.say("title", form), page.texts.say(kind == Kind.KEY ? "line.key" : "line", form));
    }

    /** What the check is and is not, for who takes it on a screen. */
    public enum Say {
        INTRO("intro"),
        ABOUT("about"),
        NO_LICENCE("no-licence"),
        GAIN("class.about");

        private final String key;

        Say(String key) {
            this.key = key;
        }

        public String in(Locale locale) {
            return Texts.in("ideas-check", locale).say(key);
        }
    }

    private Item question(int number, Step.Choose question, Kind kind) {
        List<Option> options = new ArrayList<>();
        for (Choice choice : question.choices()) {
            String letter = LETTERS.substring(options.size(), options.size() + 1);
            boolean key = kind == Kind.KEY;
            String remark = key ? choice.idea().map(it -> it.sentence(locale)).orElse("") : "";
            options.add(new Option(letter, choice.text().in(locale), key && choice.isRight(), remark));
        }
        String text = question.head().text().in(locale);
        return Item.text(text, Frame.NONE).with(options).numbered(String.valueOf(number));
    }

    /** What a learner keeps: which ideas were shown. */
    public static Handout learner(Form form, List<Integer> answers, Locale locale) {
        IdeasCheckPages page = new IdeasCheckPages(locale);
        List<Objective> shown = IdeasCheck.shown(form, answers);
        page.list("learner.yes", Stream.of(Objective.values()).filter(shown::contains));
        page.list("learner.no", Stream.of(Objective.values()).filter(it -> !shown.contains(it)));
        page.items.add(Item.text(page.texts.say("no-licence"), Frame.BOX));
        return page.handout(page.texts.say("learner.title"), page.texts.say("learner.line", form));
    }

    private void list(String key, Stream<Objective> objectives) {
        String all = objectives.map(it -> it.sentence(locale)).collect(Collectors.joining("; "));
        if (!all.isEmpty()) {
            items.add(Item.text(texts.say(key, all), Frame.NONE));
        }
    }

    /** What a class gained, by objective. */
    public static Handout record(ClassGain gain, Locale locale) {
        IdeasCheckPages page = new IdeasCheckPages(locale);
        for (Objective objective : Objective.values()) {
            int place = objective.ordinal();
            page.items.add(Item.text(
                    page.texts.say(
                            "class.row",
                            objective.sentence(locale),
                            page.share(gain.shareBefore(place)),
                            page.share(gain.shareAfter(place)),
                            page.number(gain.gain(place))),
                    Frame.NONE));
        }
        page.items.add(Item.text(
                page.texts.say(
                        "class.all",
                        page.share(gain.shareBefore()),
                        page.share(gain.shareAfter()),
                        page.number(gain.gain())),
                Frame.BOX));
        page.items.add(Item.text(page.texts.say("class.about"), Frame.NONE));
        page.items.add(Item.text(page.texts.say("no-licence"), Frame.BOX));
        return page.handout(
                page.texts.say("class.title"),
                page.texts.say("class.line", gain.learnersBefore(), gain.learnersAfter()));
    }

    private String share(OptionalDouble value) {
        return value.isPresent()
                ? QuantityFormat.forPeople(locale).print(value, Unit.FRACTION)
                : texts.say("class.uncounted");
    }

    private String number(OptionalDouble value) {
        return value.isEmpty() ? "–" : String.format(locale, "%.2f", value.getAsDouble());
    }

    private Handout handout(String title, String line) {
        return new Handout(
                locale, title, line, items, Texts.in("notices", locale).say("export.line"));
    }
}
