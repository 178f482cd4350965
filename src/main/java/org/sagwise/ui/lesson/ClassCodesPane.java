package org.sagwise.ui.lesson;

import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextArea;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.sagwise.lesson.ClassRecord;
import org.sagwise.lesson.IdeasCheck.Form;
import org.sagwise.lesson.Lesson;
import org.sagwise.report.handout.ClassRecordPage;
import org.sagwise.report.handout.Handout;
import org.sagwise.text.Texts;
import org.sagwise.ui.kit.WrappedLabel;
import org.sagwise.ui.text.Wording;

/** For who leads a class: the codes that learners sent from lessons played as pages, and what they count. */
final class ClassCodesPane extends VBox {

    private static final int ROWS = 5;

    private final Supplier<List<Lesson>> known;
    private final Wording wording;
    private final TextArea pasted = new TextArea();
    private final VBox counted = new VBox();
    private final Label said = WrappedLabel.of("", "quiet");
    private final Button fill;
    private final Button save;
    private ClassRecord record;

    /**
     * @param known the lessons that codes may be of
     * @param save takes the record of the class, to be kept or printed
     * @param counts takes what the check of ideas has come to
     */
    ClassCodesPane(
            Supplier<List<Lesson>> known, Consumer<Handout> save, Consumer<ClassRecord> counts, Wording wording) {
        this.known = known;
        this.wording = wording;
        pasted.setId("class-codes");
        pasted.setPrefRowCount(ROWS);
        pasted.setWrapText(true);
        Label name = WrappedLabel.of(wording.say("check.codes.field"), "section-title");
        name.setLabelFor(pasted);
        counted.setId("class-counts");
        counted.getStyleClass().add("glossary-entry");
        said.setId("class-codes-said");
        this.save = new Button(wording.say("check.record"));
        this.save.setId("class-codes-save");
        this.save.setOnAction(event -> save.accept(ClassRecordPage.of(record, wording.locale())));
        fill = new Button(wording.say("check.codes.fill"));
        fill.setId("class-codes-fill");
        fill.setOnAction(event -> {
            counts.accept(record);
            said.setText(wording.say("check.codes.filled", record.learners(Form.A), record.learners(Form.B)));
        });
        getChildren()
                .addAll(
                        WrappedLabel.of(wording.say("check.codes.about"), "quiet"),
                        name,
                        pasted,
                        counted,
                        new FlowPane(8, 8, this.save, fill),
                        said);
        pasted.textProperty().subscribe(text -> count());
    }

    private void count() {
        record = ClassRecord.of(pasted.getText(), known.get());
        said.setText("");
        save.setDisable(record.codes().isEmpty());
        fill.setDisable(record.learners(Form.A) + record.learners(Form.B) == 0);
        counted.getChildren().clear();
        boolean nothing = record.codes().isEmpty() && record.troubles().isEmpty();
        add(
                nothing
                        ? wording.say("check.codes.none")
                        : wording.say("check.codes.count", record.codes().size()),
                "quiet");
        for (ClassRecord.Trouble trouble : record.troubles()) {
            add(
                    wording.say("check.codes." + trouble.why().name().toLowerCase(Locale.ROOT), trouble.text()),
                    trouble.why() == ClassRecord.Why.TWICE ? "quiet" : "lesson-trouble");
        }
        Texts texts = Texts.in("ideas-check", wording.locale());
        for (ClassRecord.OfLesson lesson : record.lessons()) {
            add(
                    texts.say("codes.lesson", lesson.lesson().title().in(wording.locale()), lesson.learners()),
                    "section-title");
            lesson.ideas().forEach(it -> add(ClassRecordPage.idea(it, texts, wording.locale()), "lesson-text"));
        }
    }

    private void add(String words, String style) {
        counted.getChildren().add(WrappedLabel.of(words, style));
    }
}
