package org.sagwise.ui.bench;

import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;
import org.sagwise.scenario.Scenario;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.kit.Tip;
import org.sagwise.ui.text.Wording;

/** Tells that a large bench is being set out, and lets it be called off. */
public final class OpeningStrip extends HBox {

    private final Wording wording;
    private final Label words = new Label();

    public OpeningStrip(LargeBenchOpening opening, Wording wording, Subscriptions subscriptions) {
        this.wording = wording;
        setId("opening");
        getStyleClass().add("opening-strip");
        setAlignment(Pos.CENTER_LEFT);
        setAccessibleRole(AccessibleRole.TEXT);
        words.setId("opening-words");
        words.setWrapText(true);
        Button stop = new Button(wording.say("opening.stop"));
        stop.setId("opening-stop");
        stop.setMinWidth(USE_PREF_SIZE);
        Tip.put(stop, wording.say("opening.stop.tip"));
        stop.setOnAction(event -> opening.callOff());
        getChildren().addAll(new ProgressBar(), words, stop);
        subscriptions.watch(opening.underWayProperty(), this::show);
    }

    private void show(Optional<Scenario> underWay) {
        setVisible(underWay.isPresent());
        setManaged(underWay.isPresent());
        words.setText(underWay.map(it ->
                        wording.say("opening.words", it.title(), it.parts().size()))
                .orElse(""));
        setAccessibleText(words.getText());
    }
}
