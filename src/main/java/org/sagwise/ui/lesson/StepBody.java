package org.sagwise.ui.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.sagwise.hazard.CautionTexts;
import org.sagwise.hazard.Notices;
import org.sagwise.lesson.Answers;
import org.sagwise.lesson.LessonPlayer;
import org.sagwise.lesson.ReadingRef;
import org.sagwise.lesson.Step;
import org.sagwise.lesson.Verdict;
import org.sagwise.lesson.When;
import org.sagwise.text.Glossary;
import org.sagwise.ui.kit.SafetyMessage;
import org.sagwise.ui.kit.WordLinks;
import org.sagwise.ui.kit.WrappedLabel;
import org.sagwise.ui.text.Wording;

/** One step of a lesson: what it says, what it asks, and what came of it. */
final class StepBody extends VBox {

    private final LessonSession room;
    private final Wording wording;
    private final List<LiveText> live = new ArrayList<>();
    private Optional<Node> first = Optional.empty();
    private Optional<Label> status = Optional.empty();

    StepBody(LessonPlayer now, LessonSession room, Wording wording) {
        this.room = room;
        this.wording = wording;
        setId("lesson-step");
        getStyleClass().add("lesson-step");
        Label kind = new Label(wording.say("lesson.kind." + now.step().kind()));
        kind.setId("lesson-kind");
        kind.getStyleClass().addAll("lesson-kind", "lesson-kind-" + now.step().kind());
        getChildren().add(kind);
        if (now.step() instanceof Step.Caution caution) {
            getChildren().add(safety(caution, now));
        } else {
            verdicts(now);
            text(now);
            ask(now);
            hints(now);
        }
        if (!room.isInClass()) {
            getChildren().add(new WordLinks(firstUsed(now), wording));
        }
    }

    /** Words of the trade that this lesson uses here for the first time. */
    private List<Glossary.Entry> firstUsed(LessonPlayer now) {
        List<String> before = now.lesson().steps().subList(0, now.at()).stream()
                .map(step -> step.head().text().in(wording.locale()))
                .toList();
        return Glossary.in(wording.locale())
                .firstUsedIn(now.step().head().text().in(wording.locale()), before);
    }

    /** Where the keyboard goes when the step begins; empty for a step that only tells. */
    Optional<Node> first() {
        return first;
    }

    /** Tells what the bench says now. */
    void refresh(LessonPlayer now) {
        live.forEach(text -> text.refresh(now));
        status.ifPresent(label -> label.setText(progress(now)));
    }

    /** What became of earlier predictions stands before anything new, also before a question. */
    private void verdicts(LessonPlayer now) {
        now.verdicts().stream()
                .filter(it -> it.step() != now.at())
                .forEach(it -> getChildren().add(VerdictCard.answering(it, because(it, now), wording)));
    }

    private Optional<String> because(Verdict verdict, LessonPlayer now) {
        String own = room.ownWords()
                .getOrDefault(now.lesson().steps().get(verdict.step()).id(), "");
        return Optional.of(own).filter(words -> !words.isBlank());
    }

    private void text(LessonPlayer now) {
        LiveText text = new LiveText(player -> player.say(player.step().head().text()), now);
        text.setId("lesson-text");
        text.getStyleClass().add("lesson-text");
        live.add(text);
        getChildren().add(text);
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
            WriteBody words = new WriteBody(write, now, room, wording);
            getChildren().add(words);
            first = Optional.of(words.field());
        } else if (step instanceof Step.Do) {
            task(now);
        }
    }

    private void choices(Step.Choose question, LessonPlayer now) {
        boolean check = question.role() == Step.Role.CHECK;
        ChoiceList choices = new ChoiceList(question, now, room, live);
        getChildren().add(choices);
        also(question, now);
        if (now.isAskingHowSure()) {
            return;
        }
        if (now.answers().isOpen()) {
            first = Optional.of(choices.first());
        } else if (check) {
            now.verdicts().stream()
                    .filter(it -> it.step() == now.at())
                    .forEach(it -> getChildren().add(VerdictCard.answering(it, Optional.empty(), wording)));
        } else {
            note("lesson.locked-in", "lesson-note");
        }
    }

    /** Once an answer is chosen: the reason, and how sure one is. A class says both aloud. */
    private void also(Step.Choose question, LessonPlayer now) {
        if (now.answers().choice().isEmpty() || room.isInClass()) {
            return;
        }
        Optional<SureRow> sure =
                now.isAskingHowSure() ? Optional.of(new SureRow(now, room, wording)) : Optional.empty();
        sure.ifPresent(row -> first = Optional.of(row.first()));
        if (question.also().contains(Step.Also.WHY)) {
            WhyField why = new WhyField(
                    now,
                    room,
                    wording,
                    () -> sure.ifPresentOrElse(row -> row.first().requestFocus(), room::next));
            getChildren().add(why);
            if (sure.isPresent() || !question.also().contains(Step.Also.HOW_SURE)) {
                first = Optional.of(why.field());
            }
        }
        sure.ifPresent(getChildren()::add);
    }

    private void estimate(Step.Estimate estimate, LessonPlayer now) {
        if (now.answers().isOpen()) {
            number(estimate.expected(), "lesson.guess", now);
        } else if (now.answers().number().isPresent()) {
            String said = quantity(estimate.expected(), now.answers().number().getAsDouble());
            note("lesson.guessed", "lesson-note", said);
        }
    }

    private void measure(Step.Measure measure, LessonPlayer now) {
        Answers answers = now.answers();
        var real = now.read(measure.reading());
        String says = real.isPresent() ? quantity(measure.reading(), real.getAsDouble()) : "–";
        if (answers.isOpen()) {
            number(measure.reading(), "lesson.read", now);
            if (answers.number().isPresent()) {
                String typed = quantity(measure.reading(), answers.number().getAsDouble());
                note(now.mustHold() ? "lesson.not-so.held" : "lesson.not-so", "lesson-trouble", typed);
                if (measure.reading().when() != When.RUN && room.hasTimePassed()) {
                    note("lesson.not-so.time", "lesson-note");
                }
            }
        } else if (answers.state() == Answers.State.SHOWN) {
            note("lesson.reading.shown", "lesson-shown", says);
        } else {
            note("lesson.reading.met", "lesson-done", says);
        }
    }

    private void number(ReadingRef asked, String agree, LessonPlayer now) {
        NumberEntry entry = new NumberEntry(asked.unit(), wording.say(agree), wording, room::type);
        getChildren().add(entry);
        first = Optional.of(entry.field());
    }

    private void task(LessonPlayer now) {
        if (now.answers().isOpen()) {
            Label label = note(progress(now), List.of("lesson-note"));
            label.setFocusTraversable(true);
            status = Optional.of(label);
            first = Optional.of(label);
        } else if (now.answers().state() == Answers.State.SHOWN) {
            note("lesson.do.shown", "lesson-shown");
        } else {
            note("lesson.do.done", "lesson-done");
        }
    }

    private String progress(LessonPlayer now) {
        if (!(now.step() instanceof Step.Do task) || task.until().size() == 1) {
            return wording.say("lesson.do.open");
        }
        int all = task.until().size();
        return wording.say("lesson.do.open.some", all - now.open().size(), all);
    }

    private void hints(LessonPlayer now) {
        int number = 1;
        for (String hint : now.hints()) {
            Label label = note(wording.say("lesson.hint", number++, hint), List.of("lesson-hint"));
            label.setId("lesson-hint-" + (number - 1));
        }
    }

    private Node safety(Step.Caution caution, LessonPlayer now) {
        String signal = CautionTexts.signal(caution.signal(), wording.locale());
        return new SafetyMessage(
                new Notices.Message(
                        caution.id(),
                        signal,
                        now.say(caution.head().text()),
                        now.say(caution.harm()) + " " + now.say(caution.avoid())),
                wording.locale());
    }

    private String quantity(ReadingRef ref, double value) {
        return wording.quantity(value, ref.unit());
    }

    private void note(String key, String style, Object... words) {
        note(wording.say(key, words), List.of(style));
    }

    private Label note(String words, List<String> styles) {
        Label label = WrappedLabel.of(words);
        label.setId("lesson-status");
        label.getStyleClass().addAll(styles);
        label.setAccessibleRole(AccessibleRole.TEXT);
        getChildren().add(label);
        return label;
    }
}
