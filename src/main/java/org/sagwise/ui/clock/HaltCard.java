package org.sagwise.ui.clock;

import java.util.Optional;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.sagwise.hazard.CautionTexts;
import org.sagwise.hazard.Notices;
import org.sagwise.hazard.Signal;
import org.sagwise.report.course.ClockTexts;
import org.sagwise.report.course.HaltWords;
import org.sagwise.run.RunTexts;
import org.sagwise.run.playback.Halt;
import org.sagwise.ui.kit.SafetyMessage;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.kit.WrappedLabel;

/** Says why the clock stopped, in numbers, and what a person would do in front of the thing. */
public final class HaltCard extends HBox {

    private final ClockModel clock;
    private final ClockTexts texts;

    public HaltCard(ClockModel clock, ClockTexts texts, Subscriptions subscriptions) {
        this.clock = clock;
        this.texts = texts;
        setId("halt");
        getStyleClass().add("halt-card");
        setAccessibleRole(AccessibleRole.TEXT);
        subscriptions.watch(clock.haltProperty(), this::show);
    }

    private void show(Optional<Halt> halt) {
        getChildren().clear();
        halt.ifPresent(this::fill);
        setVisible(halt.isPresent());
        setManaged(halt.isPresent());
    }

    private void fill(Halt halt) {
        HaltWords words = HaltWords.of(halt, texts);
        Label title = WrappedLabel.of(words.title(), "halt-title");
        title.setId("halt-title");
        HBox.setHgrow(title, Priority.ALWAYS);
        title.setMaxWidth(Double.MAX_VALUE);
        title.setMinWidth(0);
        VBox says = new VBox(new HBox(title, buttons(halt)));
        words.sentences().forEach(sentence -> says.getChildren().add(WrappedLabel.of(sentence, "halt-text")));
        words.advice().ifPresent(advice -> says.getChildren().add(WrappedLabel.of(advice, "halt-advice")));
        says.setMinWidth(0);
        HBox.setHgrow(says, Priority.ALWAYS);
        getChildren().add(says);
        if (words.isGrave()) {
            says.getChildren().add(WrappedLabel.of(texts.word("halt.estimate"), "quiet"));
            SafetyMessage leave = standBack(halt);
            HBox.setHgrow(leave, Priority.ALWAYS);
            getChildren().add(leave);
        }
        setAccessibleText(words.spoken());
    }

    private HBox buttons(Halt halt) {
        HBox buttons = new HBox();
        buttons.getStyleClass().add("halt-buttons");
        buttons.setMinWidth(USE_PREF_SIZE);
        if (!halt.state().isOver() && halt.end().isEmpty()) {
            buttons.getChildren().add(button("halt.go-on", clock::go));
        }
        buttons.getChildren().add(button("halt.close", clock::dismiss));
        return buttons;
    }

    private Button button(String key, Runnable action) {
        Button button = new Button(texts.word(key));
        button.setId(key.replace('.', '-'));
        button.setMinWidth(USE_PREF_SIZE);
        button.setOnAction(event -> action.run());
        return button;
    }

    /** About the real world, hence in the form and colours kept for it. */
    private SafetyMessage standBack(Halt halt) {
        RunTexts about = texts.about(halt.bench());
        return new SafetyMessage(
                new Notices.Message(
                        "stand-back",
                        CautionTexts.signal(Signal.DANGER, texts.locale()),
                        texts.word("halt.stand-back"),
                        about.standBack()),
                texts.locale());
    }
}
