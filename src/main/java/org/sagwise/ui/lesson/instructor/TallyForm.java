package org.sagwise.ui.lesson.instructor;

import java.util.List;
import java.util.Locale;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Spinner;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.sagwise.lesson.Choice;
import org.sagwise.lesson.LessonPlayer;
import org.sagwise.lesson.Step;
import org.sagwise.ui.kit.Tip;
import org.sagwise.ui.lesson.TallyChart;
import org.sagwise.ui.lesson.VoteModel;
import org.sagwise.ui.text.Markdown;
import org.sagwise.ui.text.Wording;

/** The answers of a question with the idea behind each, and a field to count hands in. */
final class TallyForm extends VBox {

    private static final int MOST_HANDS = 999;

    private final VoteModel desk;
    private final Step.Choose question;
    private final Wording wording;
    private final VBox rows = new VBox();
    private final VBox outcome = new VBox();
    private final List<Integer> order;
    private int round;

    TallyForm(LessonPlayer now, Step.Choose question, VoteModel desk, Wording wording) {
        this.desk = desk;
        this.question = question;
        this.wording = wording;
        setId("tally");
        getStyleClass().add("tally");
        Label title = new Label(wording.say("instructor.tally"));
        title.getStyleClass().add("section-title");
        order = now.shuffle().order(question);
        rows.getStyleClass().add("tally");
        outcome.getStyleClass().add("tally");
        getChildren().addAll(title, rows, outcome);
        refresh(now);
    }

    private HBox row(LessonPlayer now, int shown) {
        int place = order.get(shown);
        Choice choice = question.choices().get(place);
        Label number = new Label((shown + 1) + (choice.isRight() ? " ✓" : ""));
        number.getStyleClass().add("tally-number");
        number.setMinWidth(USE_PREF_SIZE);
        VBox words = new VBox(Markdown.column(now.say(choice.text())));
        choice.idea()
                .map(idea -> wording.say("lesson.idea", idea.sentence(wording.locale())))
                .ifPresent(idea -> words.getChildren().add(quiet(idea)));
        HBox.setHgrow(words, Priority.ALWAYS);
        words.setMinWidth(0);
        int hands = desk.vote(now).map(vote -> vote.tally().counts().get(place)).orElse(0);
        Spinner<Integer> counter = new Spinner<>(0, MOST_HANDS, hands);
        counter.setId("hands-" + (shown + 1));
        counter.setEditable(true);
        counter.getEditor().setPrefColumnCount(3);
        counter.setAccessibleText(wording.say("instructor.tally.spoken", shown + 1));
        counter.getEditor().setOnAction(event -> counter.commitValue());
        counter.getEditor().textProperty().subscribe((before, text) -> typed(now, place, text));
        HBox row = new HBox(number, words, counter);
        row.setAlignment(Pos.TOP_LEFT);
        row.getStyleClass().add("tally-row");
        return row;
    }

    /** Each vote is counted in fields of its own. */
    private void layOut(LessonPlayer now) {
        rows.getChildren().clear();
        if (round > 1) {
            rows.getChildren().add(quiet(wording.say("instructor.again.counting")));
        }
        for (int shown = 0; shown < order.size(); shown++) {
            rows.getChildren().add(row(now, shown));
        }
    }

    private void typed(LessonPlayer now, int place, String text) {
        if (text.matches("\\d{1,3}")) {
            desk.count(now, place, Integer.parseInt(text));
        }
    }

    private static Label quiet(String words) {
        Label label = new Label(words);
        label.setWrapText(true);
        label.getStyleClass().add("quiet");
        return label;
    }

    /** Chart, advice and cover follow the counts; the fields stay, for who types in them. */
    void refresh(LessonPlayer now) {
        desk.vote(now).ifPresent(vote -> {
            if (vote.rounds().size() != round) {
                round = vote.rounds().size();
                layOut(now);
            }
            outcome.getChildren().setAll(outcomeOf(now, vote));
        });
    }

    private VBox outcomeOf(LessonPlayer now, VoteModel.Vote vote) {
        String word = vote.tally().advice(question.right()).name().toLowerCase(Locale.ROOT);
        Label advice = new Label(wording.say("instructor.advice." + word));
        advice.setId("tally-advice");
        advice.setWrapText(true);
        advice.getStyleClass().add("lesson-hint");
        boolean shown = vote.seen() == VoteModel.Seen.SHOWN;
        Button turn = new Button(wording.say(shown ? "instructor.cover" : "instructor.reveal"));
        turn.setId("tally-turn");
        turn.setOnAction(event -> desk.turn(now));
        Button again = new Button(wording.say("instructor.again"));
        again.setId("tally-again");
        Tip.put(again, wording.say("instructor.again.tip"));
        again.setDisable(vote.again().isPresent() || vote.first().total() == 0);
        again.setOnAction(event -> desk.voteAgain(now));
        HBox buttons = new HBox(turn, again);
        buttons.getStyleClass().add("tally-row");
        VBox box = new VBox(new TallyChart(vote.rounds(), order, wording), advice, buttons);
        box.getStyleClass().add("tally");
        return box;
    }
}
