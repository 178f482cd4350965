package org.sagwise.ui.lesson.instructor;

import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.sagwise.lesson.Answers;
import org.sagwise.lesson.Lesson;
import org.sagwise.lesson.LessonPlayer;
import org.sagwise.lesson.RecallRound;
import org.sagwise.lesson.Step;
import org.sagwise.ui.kit.Command;
import org.sagwise.ui.kit.Commands;
import org.sagwise.ui.kit.Controls;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.lesson.LessonPace;
import org.sagwise.ui.lesson.LessonSession;
import org.sagwise.ui.lesson.LessonShelf;
import org.sagwise.ui.lesson.VoteModel;
import org.sagwise.ui.text.Markdown;
import org.sagwise.ui.text.Wording;

/** Everything an instructor has in view: the running order, the step with its notes, the vote. */
public final class InstructorView extends BorderPane {

    /** What the instructor's side is built anew for. */
    private record Shown(Lesson lesson, int at, List<Answers> answers, Optional<RecallRound> recall) {}

    private final LessonSession room;
    private final LessonShelf shelf;
    private final VoteModel desk;
    private final Wording wording;
    private final RunningOrder order;
    private final VBox step = new VBox();
    private Optional<Shown> shown = Optional.empty();
    private Optional<TallyForm> form = Optional.empty();

    public InstructorView(
            LessonSession room,
            LessonShelf shelf,
            VoteModel desk,
            LessonPace pace,
            Commands commands,
            Wording wording,
            Subscriptions subscriptions) {
        this.room = room;
        this.shelf = shelf;
        this.desk = desk;
        this.wording = wording;
        this.order = new RunningOrder(room, wording);
        setId("instructor");
        getStyleClass().addAll("frame", "instructor");
        step.getStyleClass().add("column");
        setTop(new VBox(
                bar(commands, new Controls(wording, subscriptions)), new PaceBar(room, pace, wording, subscriptions)));
        setLeft(scroll(order, "instructor-order"));
        setCenter(scroll(step, "instructor-step-scroll"));
        subscriptions.watch(shelf.lessonsProperty(), now -> rebuild());
        subscriptions.onChange(shelf.ownProperty(), this::rebuild);
        subscriptions.watch(room.playerProperty(), now -> update());
        subscriptions.onChange(room.recallProperty(), this::update);
        subscriptions.onChange(
                desk.votesProperty(), () -> form.ifPresent(it -> room.player().ifPresent(it::refresh)));
    }

    private FlowPane bar(Commands commands, Controls controls) {
        FlowPane bar = new FlowPane();
        bar.getStyleClass().add("instructor-bar");
        List<Command> offered = commands.row("instructing");
        offered.forEach(command -> bar.getChildren().add(button(command, controls)));
        Controls.listen(this, offered);
        return bar;
    }

    private static Button button(Command command, Controls controls) {
        Button button = controls.button(command);
        button.setId("instructor-" + command.id());
        return button;
    }

    private static ScrollPane scroll(Node content, String id) {
        ScrollPane scroll = new ScrollPane(content);
        scroll.setId(id);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.getStyleClass().add("plain-scroll");
        return scroll;
    }

    private void update() {
        Optional<Shown> wanted = room.player()
                .map(it -> new Shown(
                        it.lesson(),
                        it.at(),
                        it.allAnswers(),
                        room.recallProperty().get()));
        if (!wanted.equals(shown) || wanted.isEmpty()) {
            rebuild();
            shown = wanted;
        }
    }

    private void rebuild() {
        Optional<LessonPlayer> player = room.player();
        order.show(shelf.ownProperty().get(), shelf.lessonsProperty().get(), player);
        form = Optional.empty();
        step.getChildren().clear();
        if (player.isEmpty()) {
            Label none = new Label(wording.say("instructor.none"));
            none.setWrapText(true);
            step.getChildren().add(none);
            return;
        }
        LessonPlayer now = player.get();
        if (room.recallProperty().get().isPresent()) {
            recall(room.recallProperty().get().get());
            return;
        }
        if (now.step() instanceof Step.Choose question) {
            TallyForm tally = new TallyForm(now, question, desk, wording);
            form = Optional.of(tally);
            step.getChildren().addAll(new StepNotes(now, wording), tally);
        } else {
            step.getChildren().add(new StepNotes(now, wording));
        }
    }

    /** Questions of earlier lessons come before the first step; the class sees them, and nothing else yet. */
    private void recall(RecallRound round) {
        RecallRound.Asked asked = round.question();
        Label title = new Label(
                wording.say("lesson.recall.place", round.at() + 1, round.asked().size()));
        title.getStyleClass().add("section-title");
        Label right = new Label(wording.say(
                "instructor.right", (asked.right() + 1) + ": " + asked.options().get(asked.right())));
        right.setId("instructor-key");
        right.setWrapText(true);
        right.getStyleClass().add("lesson-done");
        step.getChildren().addAll(title, Markdown.column(asked.text()), right);
    }
}
