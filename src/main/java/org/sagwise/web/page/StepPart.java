package org.sagwise.web.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.sagwise.hazard.CautionTexts;
import org.sagwise.lesson.Answers;
import org.sagwise.lesson.LessonPlayer;
import org.sagwise.lesson.ReadingRef;
import org.sagwise.lesson.Step;
import org.sagwise.lesson.Sureness;
import org.sagwise.lesson.Verdict;
import org.sagwise.lesson.When;
import org.sagwise.quantity.Parsed;
import org.sagwise.quantity.QuantityParser;
import org.sagwise.quantity.Unit;
import org.sagwise.text.Glossary;
import org.sagwise.web.engine.Words;
import org.sagwise.web.lesson.LessonRun;
import org.sagwise.web.lesson.OnThisPage;

/** One step of a lesson: what it says, what it asks, and what came of it. */
final class StepPart {

    private record Live(Tag tag, Function<LessonPlayer, String> says) {}

    private final Tag room;
    private final LessonRun run;
    private final Words words;
    private final Hand hand;
    private final List<Live> live = new ArrayList<>();
    private Optional<Tag> status = Optional.empty();

    StepPart(Tag room, LessonRun run, Words words, Hand hand) {
        this.room = room;
        this.run = run;
        this.words = words;
        this.hand = hand;
        LessonPlayer now = run.player();
        kind(room, words.ui().say("lesson.kind." + now.step().kind()));
        if (now.step() instanceof Step.Caution caution) {
            caution(caution, now);
        } else {
            now.verdicts().stream()
                    .filter(it -> it.step() != now.at())
                    .forEach(it -> room.appendChild(VerdictTag.answering(it, because(it, now), words)));
            text(Rich.of("lesson-text", ""), it -> it.say(it.step().head().text()));
            ask(now);
            hints(now);
            instead(now);
        }
        glossary(now);
    }

    static void kind(Tag room, String text) {
        Tag kind = Dom.tag("h2", "lesson-kind", text);
        kind.setId("lesson-kind");
        kind.setAttribute("tabindex", "-1");
        room.appendChild(kind);
    }

    /** Says what the bench says now. */
    void refresh(LessonPlayer now) {
        live.forEach(it -> {
            String text = it.says.apply(now);
            if (!text.equals(it.tag.getAttribute("data-text"))) {
                it.tag.setAttribute("data-text", text);
                Rich.fill(it.tag, text);
            }
        });
    }

    /** Brings into view what has just been answered. */
    void reveal() {
        status.ifPresent(it -> it.scrollIntoView(Dom.nearest()));
    }

    private Tag text(Tag tag, Function<LessonPlayer, String> says) {
        live.add(new Live(tag, says));
        room.appendChild(tag);
        refresh(run.player());
        return tag;
    }

    private void ask(LessonPlayer now) {
        Step step = now.step();
        if (step instanceof Step.Choose question) {
            choices(question, now);
        } else if (step instanceof Step.Estimate estimate) {
            estimate(estimate, now);
        } else if (step instanceof Step.Measure measure) {
            measure(measure, now);
        } else if (step instanceof Step.Write write) {
            room.appendChild(WriteTag.of(write, now, run, words));
        } else if (step instanceof Step.Do) {
            task(now);
        }
    }

    private void choices(Step.Choose question, LessonPlayer now) {
        List<Integer> order = now.shuffle().order(question);
        boolean check = question.role() == Step.Role.CHECK;
        int chosen = now.answers().choice().orElse(-1);
        room.appendChild(ChoicesTag.of(
                order.stream()
                        .map(place -> now.say(question.choices().get(place).text()))
                        .toList(),
                now.answers().choice().isEmpty() && now.answers().isOpen(),
                check ? order.indexOf(question.right()) : -1,
                order.indexOf(chosen),
                place -> hand.change(() -> run.choose(order.get(place)))));
        also(question, now);
        if (now.answers().isOpen()) {
            return;
        }
        if (check) {
            now.verdicts().stream().filter(it -> it.step() == now.at()).forEach(it -> {
                Tag verdict = VerdictTag.answering(it, "", words);
                verdict.setAttribute("role", "status");
                room.appendChild(verdict);
                status = Optional.of(verdict);
            });
        } else {
            note(words.ui().say("lesson.locked-in"), "note");
        }
    }

    /** The reason that the learner wrote; empty without one. */
    private String because(Verdict verdict, LessonPlayer now) {
        return run.ownWords()
                .getOrDefault(now.lesson().steps().get(verdict.step()).id(), "");
    }

    /** Once an answer is chosen: the reason, and how sure one is. */
    private void also(Step.Choose question, LessonPlayer now) {
        if (now.answers().choice().isEmpty()) {
            return;
        }
        if (question.also().contains(Step.Also.WHY)) {
            Tag own = Dom.tag("input", "", "");
            own.setId("lesson-because");
            own.setAttribute("type", "text");
            own.setAttribute("autocomplete", "off");
            own.setAttribute("placeholder", words.ui().say("lesson.because.prompt"));
            own.setValue(run.ownWords().getOrDefault(question.id(), ""));
            own.addEventListener("input", event -> run.ownWords().put(question.id(), own.getValue()));
            Tag label = Dom.tag(
                    "label", "because", Dom.tag("span", "small", words.ui().say("lesson.because")), own);
            room.appendChild(label);
            status = Optional.of(label);
        }
        if (now.isAskingHowSure()) {
            Tag row = Dom.tag("div", "sure", "");
            int number = 1;
            for (Sureness each : Sureness.values()) {
                Tag button = Dom.button(
                        "", words.ui().say("lesson.how-sure." + each.word()), () -> hand.change(() -> run.sure(each)));
                button.setId("sure-" + number++);
                row.appendChild(button);
            }
            Tag asked = Dom.tag(
                    "div", "how-sure", Dom.tag("p", "lesson-text", words.ui().say("lesson.how-sure")), row);
            room.appendChild(asked);
            status = Optional.of(asked);
        }
    }

    private void estimate(Step.Estimate estimate, LessonPlayer now) {
        if (now.answers().isOpen()) {
            number(estimate.expected(), "lesson.guess");
        } else if (now.answers().number().isPresent()) {
            String said = quantity(estimate.expected(), now.answers().number().getAsDouble());
            note(words.ui().say("lesson.guessed", said), "note");
        }
    }

    private void measure(Step.Measure measure, LessonPlayer now) {
        Answers answers = now.answers();
        var real = now.read(measure.reading());
        String says = real.isPresent() ? quantity(measure.reading(), real.getAsDouble()) : "–";
        if (answers.isOpen()) {
            number(measure.reading(), "lesson.read");
            if (answers.number().isPresent()) {
                String typed = quantity(measure.reading(), answers.number().getAsDouble());
                note(words.ui().say(now.mustHold() ? "lesson.not-so.held" : "lesson.not-so", typed), "trouble");
                if (measure.reading().when() != When.RUN && hand.hasTimePassed()) {
                    note(words.ui().say("lesson.not-so.time"), "note");
                }
            }
        } else if (answers.state() == Answers.State.SHOWN) {
            note(words.ui().say("lesson.reading.shown", says), "note");
        } else {
            note(words.ui().say("lesson.reading.met", says), "done");
        }
    }

    private String quantity(ReadingRef ref, double value) {
        return words.quantity(value, ref.unit());
    }

    private void number(ReadingRef asked, String agree) {
        Unit unit = asked.unit();
        Tag field = Dom.tag("input", "", "");
        field.setId("lesson-number");
        field.setAttribute("type", "text");
        field.setAttribute("inputmode", "text");
        field.setAttribute("autocomplete", "off");
        field.setAttribute(
                "aria-label", words.ui().say("lesson.number.spoken", unit.base().symbol()));
        Tag trouble = Dom.tag("p", "answer", "");
        trouble.setAttribute("role", "status");
        Runnable take = () -> {
            Parsed parsed = new QuantityParser(words.locale()).parse(field.getValue(), unit);
            if (parsed instanceof Parsed.Refused refused) {
                trouble.setTextContent(refused.text(words.locale()));
                field.focus();
            } else {
                hand.change(() -> run.type(parsed.value().orElseThrow()));
            }
        };
        field.addEventListener("keydown", event -> {
            if (event.getKey().equals("Enter")) {
                take.run();
            }
        });
        Tag button = Dom.button("cure", words.ui().say(agree), take);
        button.setId("lesson-number-do");
        room.appendChild(Dom.tag(
                "div",
                "number-entry",
                field,
                Dom.tag("span", "unit", unit.base().symbol()),
                button));
        room.appendChild(trouble);
    }

    private void task(LessonPlayer now) {
        if (now.answers().isOpen()) {
            Tag note = text(Dom.tag("div", "note", ""), this::progress);
            note.setAttribute("role", "status");
        } else if (now.answers().state() == Answers.State.SHOWN) {
            note(words.ui().say("lesson.do.shown"), "note");
        } else {
            note(words.ui().say("lesson.do.done"), "done");
        }
    }

    private String progress(LessonPlayer now) {
        if (!(now.step() instanceof Step.Do task) || task.until().size() == 1) {
            return words.ui().say("lesson.do.open");
        }
        int all = task.until().size();
        return words.ui().say("lesson.do.open.some", all - now.open().size(), all);
    }

    private void hints(LessonPlayer now) {
        int number = 1;
        for (String hint : now.hints()) {
            Tag tag = Rich.of("hint-said", words.ui().say("lesson.hint", number, hint));
            tag.setId("lesson-hint-" + number++);
            tag.setAttribute("role", "status");
            room.appendChild(tag);
            status = Optional.of(tag);
        }
    }

    private void instead(LessonPlayer now) {
        String said = now.step().head().text().in(words.locale()) + String.join(" ", now.hints());
        OnThisPage.instead(said, words).forEach(it -> room.appendChild(Rich.of("note here", it)));
    }

    private void note(String text, String className) {
        Tag note = Rich.of(className, text);
        note.setId("lesson-status");
        note.setAttribute("role", "status");
        room.appendChild(note);
        status = Optional.of(note);
    }

    private void caution(Step.Caution caution, LessonPlayer now) {
        Tag box = Dom.tag(
                "div",
                "caution " + caution.signal().name().toLowerCase(java.util.Locale.ROOT),
                Dom.tag("p", "signal", CautionTexts.signal(caution.signal(), words.locale())));
        room.appendChild(box);
        box.appendChild(Rich.of("lesson-text", now.say(caution.head().text())));
        box.appendChild(Rich.of("", now.say(caution.harm())));
        box.appendChild(Rich.of("advice", now.say(caution.avoid())));
    }

    /** Words of the trade that this lesson uses here for the first time. */
    private void glossary(LessonPlayer now) {
        List<String> before = now.lesson().steps().subList(0, now.at()).stream()
                .map(step -> step.head().text().in(words.locale()))
                .toList();
        List<Glossary.Entry> entries =
                Glossary.in(words.locale()).firstUsedIn(now.step().head().text().in(words.locale()), before);
        if (entries.isEmpty()) {
            return;
        }
        Tag row = Dom.tag("p", "words", Dom.tag("span", "small", words.ui().say("glossary.words")));
        Tag meaning = Dom.tag("p", "meaning", "");
        meaning.setId("lesson-meaning");
        meaning.setAttribute("role", "status");
        for (Glossary.Entry entry : entries) {
            Tag link = Dom.button(
                    "link",
                    entry.term(),
                    () -> meaning.setTextContent(words.say("lesson.word", entry.term(), entry.text())));
            link.setId("word-" + entry.id());
            row.appendChild(link);
        }
        room.appendChild(row);
        room.appendChild(meaning);
    }
}
