package org.sagwise.ui.lesson;

import java.util.List;
import java.util.Optional;
import javafx.application.Platform;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.sagwise.lesson.Answers;
import org.sagwise.lesson.Lesson;
import org.sagwise.lesson.LessonPlayer;
import org.sagwise.lesson.RecallRound;
import org.sagwise.lesson.Step;
import org.sagwise.ui.kit.ColumnScroll;
import org.sagwise.ui.kit.Commands;
import org.sagwise.ui.kit.Controls;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.kit.Tip;
import org.sagwise.ui.text.Wording;

/** The column of a running lesson: one step at a time, and the way through. */
public final class LessonColumn extends BorderPane {

    /** What is built anew for: anything but a change of the bench. */
    private record Shown(
            Lesson lesson,
            int at,
            List<Answers> answers,
            boolean summary,
            Optional<VoteModel.Vote> vote,
            Optional<RecallRound> recall,
            boolean inClass) {}

    /** Height below which a column is low, in letters of the title. */
    private static final double LEAST_LINES = 20;

    private final LessonSession room;
    private final LessonShelf shelf;
    private final VoteModel desk;
    private final ObservableValue<Boolean> inClass;
    private final Wording wording;
    private final Label title = new Label();
    private final HBox line = new HBox();
    private final VBox head = new VBox();
    private final Label place = new Label();
    private final Marks marks = new Marks();
    private final ColumnScroll scroll;
    private final Button next;
    private final Button leave;
    private final Button following = new Button();
    private final Button hint;
    private final Button reset;
    private final FlowPane helps;
    private Optional<Shown> shown = Optional.empty();
    private Optional<StepBody> body = Optional.empty();
    private Optional<Node> recallFirst = Optional.empty();

    /**
     * @param inClass whether a class looks on
     */
    public LessonColumn(
            LessonSession room,
            LessonShelf shelf,
            VoteModel desk,
            ObservableValue<Boolean> inClass,
            Commands commands,
            Controls controls,
            Wording wording,
            Subscriptions subscriptions) {
        this.room = room;
        this.shelf = shelf;
        this.desk = desk;
        this.inClass = inClass;
        this.wording = wording;
        this.next = controls.button(commands.get("lesson-next"));
        this.leave = controls.button(commands.get("lesson-leave"));
        this.hint = controls.button(commands.get("lesson-hint"));
        this.reset = controls.button(commands.get("lesson-reset"));
        this.helps = new FlowPane(hint, controls.button(commands.get("lesson-show")), reset);
        setId("lesson");
        getStyleClass().add("lesson");
        setTop(head());
        scroll = new ColumnScroll(subscriptions);
        scroll.setId("lesson-scroll");
        setCenter(scroll);
        setBottom(foot(controls.button(commands.get("lesson-back")), subscriptions));
        DigitKeys.choose(this, room, subscriptions);
        subscriptions.watch(room.playerProperty(), now -> update());
        subscriptions.onChange(room.atSummaryProperty(), this::update);
        subscriptions.onChange(room.recallProperty(), this::update);
        subscriptions.onChange(desk.votesProperty(), this::update);
        subscriptions.watch(inClass, now -> {
            room.setInClass(now);
            offerHelp();
            update();
        });
    }

    private VBox head() {
        title.setId("lesson-title");
        title.setWrapText(true);
        title.setMinHeight(USE_PREF_SIZE);
        title.getStyleClass().add("lesson-title");
        HBox.setHgrow(title, Priority.ALWAYS);
        title.setMaxWidth(Double.MAX_VALUE);
        leave.setMinWidth(USE_PREF_SIZE);
        line.getChildren().setAll(title, leave);
        line.setAlignment(Pos.CENTER_LEFT);
        line.getStyleClass().add("lesson-line");
        place.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(place, Priority.ALWAYS);
        place.setId("lesson-place");
        place.getStyleClass().add("quiet");
        head.getChildren().setAll(line, marks, place);
        head.getStyleClass().add("lesson-head");
        heightProperty().subscribe(height -> makeRoom());
        title.fontProperty().subscribe(font -> makeRoom());
        return head;
    }

    /** Where the column is low against its letters, the number of the step stands for the title: the step needs the room. */
    private void makeRoom() {
        boolean low =
                getHeight() > 0 && getHeight() < LEAST_LINES * title.getFont().getSize();
        if (low == line.getChildren().contains(title)) {
            head.getChildren().remove(place);
            line.getChildren().set(0, low ? place : title);
            if (!low) {
                head.getChildren().add(place);
            }
        }
    }

    private VBox foot(Button back, Subscriptions subscriptions) {
        next.getStyleClass().add("lesson-next");
        next.setDefaultButton(false);
        back.setMinWidth(USE_PREF_SIZE);
        next.setMinWidth(USE_PREF_SIZE);
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        following.setId("lesson-following");
        following.setText(wording.say("lesson.following"));
        following.getStyleClass().add("lesson-next");
        following.setMinWidth(USE_PREF_SIZE);
        HBox way = new HBox(back, gap, next, following);
        way.setAlignment(Pos.CENTER_LEFT);
        helps.getStyleClass().add("lesson-helps");
        VBox foot = new VBox(new HintOffer(room, wording, subscriptions), helps, way);
        foot.getStyleClass().add("lesson-foot");
        return foot;
    }

    private void update() {
        Optional<LessonPlayer> player = room.player();
        if (player.isEmpty()) {
            shown = Optional.empty();
            body = Optional.empty();
            scroll.setContent(null);
            return;
        }
        LessonPlayer now = player.get();
        Shown wanted = new Shown(
                now.lesson(),
                now.at(),
                now.allAnswers(),
                room.atSummary(),
                desk.shown(now),
                room.recallProperty().get(),
                inClass.getValue());
        if (shown.filter(wanted::equals).isPresent()) {
            body.ifPresent(it -> it.refresh(now));
        } else {
            build(now, wanted);
        }
    }

    private void build(LessonPlayer now, Shown wanted) {
        boolean moved = shown.filter(it -> it.at == wanted.at && !wanted.summary && isSameRecall(it, wanted))
                .isEmpty();
        boolean inside = hasFocusInside();
        boolean voted = wanted.vote.isPresent() && !shown.map(Shown::vote).equals(Optional.of(wanted.vote));
        shown = Optional.of(wanted);
        title.setText(now.lesson().title().in(wording.locale()));
        int steps = now.lesson().steps().size();
        place.setText(wanted.recall
                .map(it -> wording.say(
                        "lesson.recall.place", it.at() + 1, it.asked().size()))
                .orElseGet(() -> wanted.summary
                        ? wording.say("lesson.over")
                        : wording.say("lesson.place", now.at() + 1, steps)));
        marks.show(now, place.getText());
        offer(wanted.summary ? shelf.after(now.lesson()) : Optional.empty());
        next.setVisible(!wanted.summary);
        next.setManaged(!wanted.summary);
        next.setText(wording.say(now.isLast() ? "lesson.finish" : "command.lesson-next"));
        offerHelp();
        Region content;
        if (wanted.summary) {
            content = new SummaryBody(now, wording);
            body = Optional.empty();
            recallFirst = Optional.empty();
        } else if (wanted.recall.isPresent()) {
            RecallBody asked = new RecallBody(
                    wanted.recall.get(), now, room, shelf.lessonsProperty().get(), wording);
            content = asked;
            body = Optional.empty();
            recallFirst = asked.first();
        } else {
            recallFirst = Optional.empty();
            StepBody step = new StepBody(now, room, wording);
            wanted.vote.ifPresent(vote -> step.getChildren().add(chart(now, vote)));
            content = step;
            body = Optional.of(step);
        }
        scroll.setContent(content);
        if (wanted.recall.filter(it -> it.chosen().isPresent()).isPresent()) {
            // What is said to the answer stands below all answers.
            Platform.runLater(scroll::toEnd);
        }
        if (moved) {
            scroll.setVvalue(0);
        }
        if (moved || inside || now.isAskingHowSure()) {
            focusFirst();
        }
        if (moved) {
            // Whoever comes to a step reads what it says, before the first of its answers has the focus.
            Platform.runLater(() -> scroll.setVvalue(0));
        }
        if (voted || !moved && isAnswered(now)) {
            // What is said or asked once an answer is chosen stands below all answers, and so do votes.
            Platform.runLater(scroll::toEnd);
        }
    }

    private static boolean isAnswered(LessonPlayer now) {
        return now.step() instanceof Step.Choose && now.answers().choice().isPresent();
    }

    private static boolean isSameRecall(Shown one, Shown other) {
        return one.recall.map(RecallRound::at).equals(other.recall.map(RecallRound::at));
    }

    /** In a class whoever leads helps from a window of their own, and answers get the room. */
    private void offerHelp() {
        boolean offered = !inClass.getValue() && !room.atSummary();
        helps.setVisible(offered);
        helps.setManaged(offered);
        Optional<Step> step = room.player().map(LessonPlayer::step);
        // A question has neither hints nor a bench to begin anew with, and needs the room for its answers.
        give(hint, step.filter(it -> !it.hints().isEmpty()).isPresent());
        give(reset, step.filter(it -> !it.asks()).isPresent());
    }

    private static void give(Button button, boolean offered) {
        button.setVisible(offered);
        button.setManaged(offered);
    }

    private TallyChart chart(LessonPlayer now, VoteModel.Vote vote) {
        List<Integer> order = now.shuffle().order((Step.Choose) now.step());
        return new TallyChart(vote.rounds(), order, wording);
    }

    private void offer(Optional<Lesson> after) {
        following.setVisible(after.isPresent());
        following.setManaged(after.isPresent());
        after.ifPresent(lesson -> {
            String name = lesson.title().in(wording.locale());
            Tip.put(following, wording.say("lesson.following.tip", name));
            following.setOnAction(event -> room.start(lesson));
        });
    }

    /** Whoever works on the bench is left alone there when a step ticks itself. */
    private boolean hasFocusInside() {
        Node owner = getScene() == null ? null : getScene().getFocusOwner();
        for (Node node = owner; node != null; node = node.getParent()) {
            if (node == this) {
                return true;
            }
        }
        return false;
    }

    private void focusFirst() {
        Node way = following.isVisible() ? following : next.isDisabled() ? leave : next;
        Node first = body.flatMap(StepBody::first).or(() -> recallFirst).orElse(way);
        if (first.getScene() == null) {
            // The column comes into the window only after it has been told of the lesson.
            first.sceneProperty()
                    .subscribe((before, now) -> Platform.runLater(() -> {
                        first.requestFocus();
                        scroll.setVvalue(0);
                    }));
        } else {
            first.requestFocus();
        }
    }
}
