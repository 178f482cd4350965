package org.sagwise.ui.kit;

import java.util.Locale;
import java.util.stream.Stream;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.sagwise.hazard.CautionTexts;
import org.sagwise.hazard.Notices;
import org.sagwise.hazard.Signal;

/**
 * A safety message about the real world, in the form of ANSI Z535.6: a panel with alert symbol and
 * signal word in the safety colour that belongs to the word, under it hazard, consequence and
 * avoidance. Its colours are the same in every theme.
 */
public final class SafetyMessage extends VBox {

    public SafetyMessage(Notices.Message message, Locale locale) {
        String word = word(message, locale);
        setId("safety-" + message.id());
        getStyleClass().addAll("safety-message", "safety-" + word);
        Region symbol = new Region();
        symbol.getStyleClass().add("alert-symbol");
        Label signal = new Label(message.signal());
        signal.getStyleClass().add("safety-word");
        HBox panel = new HBox(symbol, signal);
        panel.setAlignment(Pos.CENTER_LEFT);
        panel.getStyleClass().add("safety-panel");
        Label title = WrappedLabel.of(message.title());
        title.getStyleClass().add("safety-title");
        VBox words = new VBox(title, WrappedLabel.of(message.text()));
        words.getStyleClass().add("safety-words");
        getChildren().addAll(panel, words);
        setAccessibleRole(AccessibleRole.TEXT);
        setAccessibleText(message.signal() + ". " + message.title() + ". " + message.text());
    }

    /** The texts carry the word in the reader's language; the colour belongs to what it means. */
    private static String word(Notices.Message message, Locale locale) {
        return Stream.of(Signal.values())
                .filter(each -> CautionTexts.signal(each, locale).equals(message.signal()))
                .findFirst()
                .orElse(Signal.WARNING)
                .name()
                .toLowerCase(Locale.ROOT);
    }
}
