package org.sagwise.ui.lesson;

import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

import org.sagwise.lesson.Tally;
import org.sagwise.ui.text.Wording;

/** A vote as bars, each with the number of its answer, its count and its share. */
public final class TallyChart extends VBox {

    public TallyChart(Tally tally, Wording wording) {
        setId("tally-chart");
        getStyleClass().add("tally-chart");
        for (int i = 0; i < tally.counts().size(); i++) {
            getChildren().add(row(tally, i, wording));
        }
    }

    private static HBox row(Tally tally, int place, Wording wording) {
        Label number = new Label(String.valueOf(place + 1));
        number.getStyleClass().add("tally-number");
        number.setMinWidth(USE_PREF_SIZE);
        Region fill = new Region();
        fill.getStyleClass().addAll("tally-fill", "tally-fill-" + (place + 1));
        Pane bar = new Pane(fill);
        bar.getStyleClass().add("tally-bar");
        fill.prefWidthProperty().bind(bar.widthProperty().multiply(tally.share(place)));
        fill.prefHeightProperty().bind(bar.heightProperty());
        HBox.setHgrow(bar, Priority.ALWAYS);
        int count = tally.counts().get(place);
        long percent = Math.round(100 * tally.share(place));
        Label figures = new Label(wording.say("lead.tally.figures", count, percent));
        figures.setId("tally-figures-" + (place + 1));
        figures.getStyleClass().add("tally-figures");
        figures.setMinWidth(USE_PREF_SIZE);
        HBox row = new HBox(number, bar, figures);
        row.setAlignment(Pos.CENTER_LEFT);
        row.getStyleClass().add("tally-row");
        row.setAccessibleRole(AccessibleRole.TEXT);
        row.setAccessibleText(number.getText() + ": " + figures.getText());
        return row;
    }
}
