package org.sagwise.web.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.LessonReader;
import org.sagwise.lesson.Answers;
import org.sagwise.lesson.Lesson;
import org.sagwise.lesson.LessonPlayer;
import org.sagwise.lesson.RecallRound;
import org.sagwise.web.engine.LiveBench;
import org.sagwise.web.engine.Words;
import org.sagwise.web.lesson.LessonBook;
import org.sagwise.web.lesson.LessonRun;

/** The lesson beside the bench: one step at a time, and the way through. */
final class LessonPart implements PagePart {

    /** What is built anew for: anything but a change of the bench. */
    private record Shown(
            int at,
            List<Answers> answers,
            boolean over,
            Optional<RecallRound> recall,
            boolean mayHint,
            Locale locale) {}

    private final LessonRun run;
    private final Hand hand;
    private final Tag place = Tag.byId("lesson-place");
    private final Tag marks = Tag.byId("lesson-marks");
    private final Tag step = Tag.byId("lesson-step");
    private final Tag offer = Tag.byId("lesson-offer");
    private final Tag way = Tag.byId("lesson-way");
    private final BesidePart beside = new BesidePart();
    private Optional<Shown> shown = Optional.empty();
    private Optional<StepPart> body = Optional.empty();

    LessonPart(LessonRun run, Hand hand) {
        this.run = run;
        this.hand = hand;
        for (String part : List.of("joints", "meter", "clock")) {
            Tag.byId("to-" + part).addEventListener("click", event -> Dom.unfold(part + "-part"));
        }
        Dom.later(time -> watch(), 1000);
    }

    /** Begins a lesson, or goes on with it where it was left. */
    static LessonRun begin(Lesson lesson, LiveBench bench, Locale locale) {
        LessonBook book = new LessonBook(new Store());
        List<Lesson> begun = book.begun(LessonReader.bare(CatalogueLoader.bare()));
        book.keep(lesson.id(), Dom.textOf("lesson-data"));
        return new LessonRun(lesson, bench, book, begun, locale, seed(), () -> (long) (Dom.now() * 1e6));
    }

    private static long seed() {
        return 1 + (long) (Dom.random() * 1e9);
    }

    /** Once a second: time for a hint, or to say that there is one. */
    private void watch() {
        boolean may = run.pace().mayHint();
        run.pace().look();
        offer();
        if (may != run.pace().mayHint()) {
            hand.change(() -> {});
        }
        Dom.later(time -> watch(), 1000);
    }

    private void offer() {
        LessonPlayer now = run.player();
        offer.setHidden(run.isOver() || !run.pace().offers() || !now.answers().isOpen() || !now.hasMoreHints());
    }

    @Override
    public void lay(View view) {
        show(view);
        beside.lay(view);
    }

    @Override
    public void show(View view) {
        LessonPlayer now = run.player();
        Shown wanted = new Shown(
                now.at(),
                now.allAnswers(),
                run.isOver(),
                run.recall(),
                run.pace().mayHint(),
                view.locale());
        if (shown.filter(wanted::equals).isPresent()) {
            body.ifPresent(it -> it.refresh(now));
            return;
        }
        boolean moved = shown.isPresent() && !isSamePlace(shown.get(), wanted);
        boolean answered = shown.isPresent() && !moved && !shown.get().equals(wanted);
        shown = Optional.of(wanted);
        build(now, view, moved);
        if (moved) {
            Dom.toTop();
            Dom.focusStill(Tag.byId("lesson-kind"));
        } else if (answered) {
            body.ifPresent(StepPart::reveal);
        }
    }

    private static boolean isSamePlace(Shown one, Shown other) {
        return one.at == other.at
                && one.over == other.over
                && one.recall.map(RecallRound::at).equals(other.recall.map(RecallRound::at));
    }

    private void build(LessonPlayer now, View view, boolean moved) {
        Words words = view.words();
        int steps = now.lesson().steps().size();
        Dom.bodyClass("asking", run.isAsking());
        Dom.bodyClass("over", run.isOver());
        place.setTextContent(run.recall()
                .map(it -> words.ui()
                        .say("lesson.recall.place", it.at() + 1, it.asked().size()))
                .orElseGet(() -> run.isOver()
                        ? words.ui().say("lesson.over")
                        : words.ui().say("lesson.place", now.at() + 1, steps)));
        marks(now);
        offer.setTextContent(words.say("lesson.offer"));
        offer();
        Tag number = Tag.byId("lesson-number");
        String typed = number == null ? "" : number.getValue();
        boolean typing = Dom.focused().equals("lesson-number");
        Dom.clear(step);
        if (run.isOver()) {
            body = Optional.empty();
            SummaryPart.fill(step, run, words);
        } else if (run.recall().isPresent()) {
            body = Optional.empty();
            RecallPart.fill(step, run, words, hand);
        } else {
            body = Optional.of(new StepPart(step, run, words, hand));
        }
        if (now.at() == 0 && !run.isOver() && !Store.isLasting()) {
            Tag said = Dom.tag("p", "small", words.say("lesson.not-kept"));
            said.setId("lesson-not-kept");
            step.appendChild(said);
        }
        way(now, words);
        if (!moved) {
            keep(typed, typing);
        }
    }

    /** What is half typed stays when the button is pressed meanwhile. */
    private static void keep(String typed, boolean typing) {
        Tag number = Tag.byId("lesson-number");
        if (number != null) {
            number.setValue(typed);
            if (typing) {
                Dom.focusStill(number);
            }
        }
    }

    private void marks(LessonPlayer now) {
        Dom.clear(marks);
        for (int i = 0; i < now.lesson().steps().size(); i++) {
            boolean open = now.allAnswers().get(i).isOpen();
            String state = i == now.at() && !run.isOver() ? "here" : open ? "later" : "past";
            marks.appendChild(Dom.tag("i", state, ""));
        }
    }

    private void way(LessonPlayer now, Words words) {
        Dom.clear(way);
        List<Tag> buttons = new ArrayList<>();
        boolean recalls = run.recall().isPresent();
        if (!recalls && !run.isOver() && now.answers().isOpen()) {
            helps(buttons, now, words);
        }
        if (!recalls && !run.isOver() && now.step().isObservation()) {
            buttons.add(button(
                    "lesson-reset",
                    "quiet",
                    words.ui().say("command.lesson-reset"),
                    () -> run.reset(words.ui().say("command.lesson-reset"))));
        }
        if (!buttons.isEmpty()) {
            buttons.add(Dom.tag("span", "break", ""));
        }
        if (!recalls && (now.at() > 0 || run.isOver())) {
            buttons.add(button("lesson-back", "", words.ui().say("command.lesson-back"), run::back));
        }
        if (run.isOver()) {
            buttons.add(button("lesson-again", "", words.say("lesson.again"), () -> run.restart(seed())));
        } else {
            boolean ends = now.isLast() && !recalls;
            Tag next = button(
                    "lesson-next",
                    "cure",
                    ends ? words.ui().say("lesson.finish") : words.ui().say("command.lesson-next"),
                    run::next);
            next.setDisabled(!recalls && !now.mayGoOn());
            buttons.add(next);
        }
        buttons.forEach(way::appendChild);
        Tag following = Tag.byId("lesson-following");
        if (following != null) {
            following.setHidden(!run.isOver());
        }
    }

    private void helps(List<Tag> buttons, LessonPlayer now, Words words) {
        if (now.hasMoreHints()) {
            Tag hint = button("lesson-hint", "", words.ui().say("command.lesson-hint"), run::hint);
            hint.setDisabled(!run.pace().mayHint());
            buttons.add(hint);
        }
        if (!now.step().asksNothing()) {
            buttons.add(button(
                    "lesson-show",
                    "quiet",
                    words.ui().say("command.lesson-show"),
                    () -> run.showSolution(words.ui().say("command.lesson-show"))));
        }
    }

    private Tag button(String id, String className, String text, Runnable deed) {
        Tag button = Dom.button(className, text, () -> hand.change(deed));
        button.setId(id);
        return button;
    }
}
