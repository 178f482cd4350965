package org.sagwise.ui.analysis;

import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import javafx.geometry.VPos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.sagwise.hazard.Caution;
import org.sagwise.hazard.CautionNumbers;
import org.sagwise.hazard.CautionTexts;
import org.sagwise.quantity.QuantityFormat;
import org.sagwise.text.Glossary;
import org.sagwise.ui.kit.Tip;
import org.sagwise.ui.kit.WordLinks;
import org.sagwise.ui.text.Wording;

/** One caution: how grave, what, the number against its limit, why, and what to do. */
final class CautionCard extends VBox {

    private final VBox cures = new VBox();

    /** The space between a number and its unit, at which no line may break. */
    private static final Pattern NUMBER_AND_UNIT = Pattern.compile("(?<=\\d) (?=[\\p{L}Ω°%])");

    CautionCard(Caution caution, Wording wording, Runnable showOnBench) {
        String signal = CautionTexts.signal(caution.signal(), wording.locale());
        setId("caution-" + caution.id());
        getStyleClass().addAll("card", "caution-card", "caution-" + word(caution));
        setFocusTraversable(false);
        getChildren().add(head(caution, signal, wording));
        addIfAny(NUMBER_AND_UNIT.matcher(numbers(caution, wording)).replaceAll("\u00a0"), "caution-numbers");
        addIfAny(CautionTexts.text(caution, wording.locale()), "caution-text");
        getChildren().add(advice(caution, wording));
        String all =
                CautionTexts.text(caution, wording.locale()) + " " + CautionTexts.advice(caution, wording.locale());
        getChildren().add(new WordLinks(Glossary.in(wording.locale()).usedIn(all), wording));
        cures.getStyleClass().add("cures");
        getChildren().add(cures);
        offer(List.of());
        getChildren().add(foot(caution, wording, showOnBench));
    }

    /** Offers cures in place of those offered before. */
    void offer(List<CureBox> boxes) {
        cures.getChildren().setAll(boxes);
        cures.setVisible(!boxes.isEmpty());
        cures.setManaged(!boxes.isEmpty());
    }

    private HBox head(Caution caution, String signal, Wording wording) {
        Label word = new Label(signal);
        word.getStyleClass().addAll("signal", "signal-" + word(caution));
        word.setMinWidth(USE_PREF_SIZE);
        Label title = text(CautionTexts.title(caution, wording.locale()), "caution-title");
        VBox words = new VBox(word, title);
        HBox.setHgrow(words, Priority.ALWAYS);
        HBox head = new HBox(new Flag(caution.signal(), signal), words);
        head.getStyleClass().add("caution-head");
        return head;
    }

    /** The number of a caution against its limit, as one line; empty for one that is about no number. */
    static String numbers(Caution caution, Wording wording) {
        return CautionNumbers.of(caution, QuantityFormat.forPeople(wording.locale()))
                .map(numbers -> numbers.limit()
                        .map(limit -> wording.say("caution.against", numbers.measured(), limit))
                        .orElse(numbers.measured()))
                .orElse("");
    }

    private Label advice(Caution caution, Wording wording) {
        return text(wording.say("caution.do", CautionTexts.advice(caution, wording.locale())), "caution-advice");
    }

    private FlowPane foot(Caution caution, Wording wording, Runnable showOnBench) {
        Button show = new Button(wording.say("caution.show"));
        show.getStyleClass().add("link-button");
        show.setOnAction(event -> showOnBench.run());
        Tip.put(show, wording.say("caution.show.tip"));
        Label when = text(wording.say("when." + caution.when().name().toLowerCase(Locale.ROOT)), "quiet");
        show.setMinWidth(USE_PREF_SIZE);
        // Beside each other where there is room, else one below the other.
        FlowPane foot = new FlowPane(show, when);
        foot.setRowValignment(VPos.CENTER);
        foot.getStyleClass().add("caution-foot");
        return foot;
    }

    private void addIfAny(String words, String style) {
        if (!words.isBlank()) {
            getChildren().add(text(words, style));
        }
    }

    private static Label text(String words, String style) {
        Label label = new Label(words);
        label.setWrapText(true);
        label.getStyleClass().add(style);
        return label;
    }

    private static String word(Caution caution) {
        return caution.signal().name().toLowerCase(Locale.ROOT);
    }
}
