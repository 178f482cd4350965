package org.sagwise.report.handout;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.sagwise.assessment.Assessment;
import org.sagwise.hazard.CautionTexts;
import org.sagwise.lesson.Choice;
import org.sagwise.lesson.Filling;
import org.sagwise.lesson.Idea;
import org.sagwise.lesson.Lesson;
import org.sagwise.lesson.ReadingRef;
import org.sagwise.lesson.Situation;
import org.sagwise.lesson.Step;
import org.sagwise.lesson.Track;
import org.sagwise.part.Catalogue;
import org.sagwise.quantity.QuantityFormat;
import org.sagwise.report.handout.Handout.Blank;
import org.sagwise.report.handout.Handout.Frame;
import org.sagwise.report.handout.Handout.Item;
import org.sagwise.report.handout.Handout.Kind;
import org.sagwise.report.handout.Handout.Option;
import org.sagwise.scenario.Press;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.ScenarioRules;
import org.sagwise.text.LocalText;
import org.sagwise.text.Texts;

/** Puts a lesson on paper, every number said by the engine. */
public final class HandoutMaker {

    private static final String LETTERS = "ABCD";

    private final Lesson lesson;
    private final Kind kind;
    private final Locale locale;
    private final Texts texts;
    private final Track track;
    private final Situation situation;
    private final Catalogue catalogue;
    private final List<Item> items = new ArrayList<>();

    private HandoutMaker(Lesson lesson, Catalogue catalogue, Locale locale, Kind kind) {
        this.lesson = lesson;
        this.kind = kind;
        this.locale = locale;
        this.catalogue = catalogue;
        texts = Texts.in("handout", locale);
        Map<String, Scenario> named = lesson.scenarios(locale);
        track = Track.of(lesson, named, new ScenarioRules(catalogue));
        situation = Situation.of(named.get(lesson.first()), named, catalogue);
    }

    /** The sheet or the key of a lesson. */
    public static Handout make(Lesson lesson, Catalogue catalogue, Locale locale, Kind kind) {
        return new HandoutMaker(lesson, catalogue, locale, kind).make();
    }

    private Handout make() {
        if (kind == Kind.KEY) {
            items.add(goal());
            items.add(Item.text(texts.say("note", lesson.note().in(locale)), Frame.BOX));
        }
        items.add(picture(lesson.benches().get(lesson.first()).title(), situation.scenario()));
        boolean checking = false;
        for (int i = 0; i < lesson.steps().size(); i++) {
            Step step = lesson.steps().get(i);
            boolean check = step instanceof Step.Choose it && it.role() == Step.Role.CHECK;
            if (check && !checking) {
                items.add(Item.text("**" + texts.say("check") + "**", Frame.NONE));
            }
            checking = check;
            bench(step, i);
            items.add(item(step, i));
        }
        if (kind == Kind.SHEET) {
            // A goal tells what will come out, so who learns reads it afterwards.
            items.add(goal());
        }
        items.add(Item.text(texts.say("rules"), Frame.BOX));
        return new Handout(
                locale,
                lesson.title().in(locale),
                texts.say(kind == Kind.KEY ? "line.key" : "line.sheet", lesson.evening(), lesson.minutes()),
                items,
                Texts.in("notices", locale).say("export.line"));
    }

    private Item goal() {
        return Item.text(texts.say("goal", lesson.goal().in(locale)), Frame.NONE);
    }

    /** A new bench in the middle of a lesson is shown where it is laid out. */
    private void bench(Step step, int at) {
        boolean other = step.head().bench().filter(it -> at > 0).isPresent();
        if (other && !track.before().get(at).equals(track.after().get(at - 1))) {
            String name = step.head().bench().get();
            items.add(picture(lesson.benches().get(name).title(), track.before().get(at)));
        }
    }

    private Item picture(LocalText title, Scenario scenario) {
        Assessment bench = Assessment.of(scenario, catalogue).with(Press.RELEASED);
        return new Item(
                "", texts.say("bench", title.in(locale)), List.of(), List.of(), "", Frame.NONE, Optional.of(bench));
    }

    private Item item(Step step, int at) {
        Situation here = situation.with(track.before().get(at));
        String text = fill(step.head().text(), here);
        if (step instanceof Step.Caution caution) {
            return caution(caution, text, here);
        }
        Item item = new Item(
                step instanceof Step.Say ? "" : String.valueOf(at + 1),
                text,
                List.of(),
                List.of(),
                "",
                Frame.NONE,
                Optional.empty());
        if (step instanceof Step.Choose choose) {
            return choose(item, choose, here, at);
        }
        if (step instanceof Step.Estimate estimate) {
            return estimate(item, estimate, here);
        }
        if (step instanceof Step.Measure measure) {
            return item.with(new Blank(texts.say("read"), value(measure.reading(), here), 1));
        }
        if (step instanceof Step.Do task) {
            LocalText last = task.hints().get(task.hints().size() - 1);
            return item.with(new Blank(texts.say("done"), key("✓"), 0)).withRemark(key(fill(last, here)));
        }
        if (step instanceof Step.Write write) {
            String points = write.points().stream()
                    .map(point -> "\n- ☐ " + fill(point, here))
                    .collect(Collectors.joining());
            return new Item(
                            item.number(),
                            text + "\n" + points,
                            List.of(),
                            kind == Kind.KEY ? List.of() : List.of(new Blank("", "", 4)),
                            "",
                            Frame.NONE,
                            Optional.empty())
                    .withRemark(key(fill(write.model(), here)));
        }
        if (step instanceof Step.Explain && kind == Kind.SHEET) {
            return new Item(
                    item.number(),
                    texts.say("explain"),
                    List.of(),
                    List.of(new Blank("", "", 2)),
                    "",
                    Frame.NONE,
                    Optional.empty());
        }
        return item;
    }

    private Item choose(Item item, Step.Choose choose, Situation here, int at) {
        boolean predicts = choose.role() == Step.Role.PREDICT;
        Situation then = predicts ? situation.with(track.after().get(Track.replyAt(lesson, at) - 1)) : here;
        List<Option> options = new ArrayList<>();
        for (int i = 0; i < choose.choices().size(); i++) {
            Choice choice = choose.choices().get(i);
            String idea = choice.idea()
                    .filter(it -> it != Idea.SLIP)
                    .map(it -> texts.say("idea", it.sentence(locale)) + " ")
                    .orElse("");
            options.add(new Option(
                    LETTERS.substring(i, i + 1),
                    fill(choice.text(), here),
                    kind == Kind.KEY && choice.isRight(),
                    key(idea + fill(choice.reply(), then))));
        }
        Item chosen = item.with(options);
        if (!predicts || kind == Kind.KEY) {
            return chosen;
        }
        Blank because = new Blank(texts.say("because"), "", choose.also().contains(Step.Also.WHY) ? 2 : 1);
        return choose.also().contains(Step.Also.HOW_SURE)
                ? chosen.with(because, new Blank(texts.say("how-sure"), "", 1))
                : chosen.with(because);
    }

    private Item estimate(Item item, Step.Estimate estimate, Situation here) {
        return item.with(new Blank(texts.say("guess"), value(estimate.expected(), here), 1))
                .withRemark(key(fill(estimate.reply(), here)));
    }

    private Item caution(Step.Caution caution, String text, Situation here) {
        String said = "**"
                + CautionTexts.signal(caution.signal(), locale)
                + ":** "
                + text
                + " "
                + fill(caution.harm(), here)
                + " "
                + fill(caution.avoid(), here);
        return Item.text(said, Frame.WARNING);
    }

    private String value(ReadingRef ref, Situation here) {
        return key(QuantityFormat.forPeople(locale).print(here.read(ref), ref.unit()));
    }

    private String key(String text) {
        return kind == Kind.KEY ? text : "";
    }

    private String fill(LocalText text, Situation here) {
        return Filling.fill(text.in(locale), here, locale);
    }
}
