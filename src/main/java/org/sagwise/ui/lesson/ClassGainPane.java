package org.sagwise.ui.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Spinner;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import org.sagwise.lesson.ClassGain;
import org.sagwise.lesson.ClassRecord;
import org.sagwise.lesson.IdeasCheck.Form;
import org.sagwise.lesson.IdeasCheck.Objective;
import org.sagwise.report.handout.Handout;
import org.sagwise.report.handout.IdeasCheckPages;
import org.sagwise.ui.kit.WrappedLabel;
import org.sagwise.ui.text.Wording;

/** For who leads a class: how many were right before and after, and what was gained, idea by idea. */
final class ClassGainPane extends VBox {

    private static final int MOST_LEARNERS = 200;

    /** A field that nobody has filled in is empty, and neither is what is no number a count. */
    private static final StringConverter<Integer> COUNT = new StringConverter<>() {
        @Override
        public String toString(Integer count) {
            return count == null || count == ClassGain.UNCOUNTED ? "" : count.toString();
        }

        @Override
        public Integer fromString(String text) {
            return text.strip().matches("\\d{1,4}") ? Integer.valueOf(text.strip()) : (Integer) ClassGain.UNCOUNTED;
        }
    };

    private final Wording wording;
    private final Spinner<Integer> learnersBefore = spinner("class-before", 12);
    private final Spinner<Integer> learnersAfter = spinner("class-after", 12);
    private final List<Spinner<Integer>> before = new ArrayList<>();
    private final List<Spinner<Integer>> after = new ArrayList<>();
    private final List<Label> gains = new ArrayList<>();
    private final Label all = new Label();

    ClassGainPane(Wording wording, Consumer<Handout> save) {
        this.wording = wording;
        GridPane grid = new GridPane();
        grid.getStyleClass().add("limit-rows");
        grid.addRow(0, head("check.idea"), head("check.before"), head("check.after"), head("check.gain"));
        grid.addRow(1, head("check.learners"), learnersBefore, learnersAfter);
        for (Objective objective : Objective.values()) {
            Label name = WrappedLabel.of(objective.sentence(wording.locale()));
            GridPane.setHgrow(name, Priority.ALWAYS);
            Spinner<Integer> early = spinner("right-before-" + (objective.ordinal() + 1), ClassGain.UNCOUNTED);
            Spinner<Integer> late = spinner("right-after-" + (objective.ordinal() + 1), ClassGain.UNCOUNTED);
            Label gain = new Label("–");
            gain.setId("gain-" + (objective.ordinal() + 1));
            gain.setMinWidth(USE_PREF_SIZE);
            name.setLabelFor(early);
            before.add(early);
            after.add(late);
            gains.add(gain);
            grid.addRow(objective.ordinal() + 2, name, early, late, gain);
        }
        all.setId("gain-all");
        all.setWrapText(true);
        Button print = new Button(wording.say("check.record"));
        print.setId("check-record");
        print.setOnAction(event -> save.accept(IdeasCheckPages.record(gain(), wording.locale())));
        Label about = WrappedLabel.of(IdeasCheckPages.Say.GAIN.in(wording.locale()), "quiet");
        getChildren().addAll(grid, all, print, about);
        List<Spinner<Integer>> every = new ArrayList<>(before);
        every.addAll(after);
        every.add(learnersBefore);
        every.add(learnersAfter);
        every.forEach(each -> each.valueProperty().subscribe(value -> show()));
    }

    /** Takes over what the codes of a class have come to; a form that nobody sent stays as it is. */
    void fill(ClassRecord record) {
        fill(record, Form.A, learnersBefore, before);
        fill(record, Form.B, learnersAfter, after);
    }

    private static void fill(
            ClassRecord record, Form form, Spinner<Integer> learners, List<Spinner<Integer>> objectives) {
        if (record.learners(form) > 0) {
            learners.getValueFactory().setValue(record.learners(form));
            List<Integer> right = record.right(form);
            for (int i = 0; i < objectives.size(); i++) {
                objectives.get(i).getValueFactory().setValue(right.get(i));
            }
        }
    }

    private static Spinner<Integer> spinner(String id, int value) {
        Spinner<Integer> spinner = new Spinner<>(value, MOST_LEARNERS, value);
        spinner.getValueFactory().setConverter(COUNT);
        spinner.setId(id);
        spinner.setEditable(true);
        spinner.setPrefWidth(90);
        spinner.setMinWidth(USE_PREF_SIZE);
        return spinner;
    }

    private Label head(String key) {
        Label label = new Label(wording.say(key));
        label.getStyleClass().add("quiet");
        label.setMinWidth(USE_PREF_SIZE);
        return label;
    }

    /** More right than there are learners is taken as all of them. */
    private ClassGain gain() {
        int early = learnersBefore.getValue();
        int late = learnersAfter.getValue();
        return new ClassGain(
                early,
                late,
                before.stream().map(it -> Math.min(early, it.getValue())).toList(),
                after.stream().map(it -> Math.min(late, it.getValue())).toList());
    }

    private void show() {
        ClassGain now = gain();
        for (int i = 0; i < gains.size(); i++) {
            gains.get(i).setText(number(now.gain(i)));
        }
        all.setText(wording.say("check.all", number(now.gain())));
    }

    private String number(OptionalDouble value) {
        return value.isEmpty() ? "–" : String.format(wording.locale(), "%.2f", value.getAsDouble());
    }
}
