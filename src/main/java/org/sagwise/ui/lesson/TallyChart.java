package org.sagwise.ui.lesson;

import java.util.List;
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

/**
 * A vote as bars, each with the number of its answer, its count and its share. A second vote has
 * bars of its own under those of the first.
 */
public final class TallyChart extends VBox {

    private final List<Tally> rounds;
    private final Wording wording;

    /**
     * @param rounds the first vote, and the second if there was one
     * @param order places of the answers in the order in which they are shown
     */
    public TallyChart(List<Tally> rounds, List<Integer> order, Wording wording) {
        this.rounds = rounds;
        this.wording = wording;
        setId("tally-chart");
        getStyleClass().add("tally-chart");
        for (int shown = 0; shown < order.size(); shown++) {
            getChildren().add(answer(shown + 1, order.get(shown)));
        }
        if (rounds.size() > 1) {
            Label legend = new Label(wording.say("instructor.tally.rounds"));
            legend.setWrapText(true);
            legend.getStyleClass().add("quiet");
            getChildren().add(legend);
        }
    }

    private HBox answer(int number, int place) {
        Label badge = new Label(String.valueOf(number));
        badge.getStyleClass().add("tally-number");
        badge.setMinWidth(USE_PREF_SIZE);
        VBox bars = new VBox();
        bars.getStyleClass().add("tally-bars");
        HBox.setHgrow(bars, Priority.ALWAYS);
        StringBuilder spoken = new StringBuilder(badge.getText());
        for (int round = 0; round < rounds.size(); round++) {
            Label figures = figures(number, place, round);
            bars.getChildren().add(bar(number, place, round, figures));
            spoken.append(round == 0 ? ": " : ", ").append(figures.getText());
        }
        HBox row = new HBox(badge, bars);
        row.setAlignment(Pos.CENTER_LEFT);
        row.getStyleClass().add("tally-row");
        row.setAccessibleRole(AccessibleRole.TEXT);
        row.setAccessibleText(spoken.toString());
        return row;
    }

    private Label figures(int number, int place, int round) {
        Tally tally = rounds.get(round);
        long percent = Math.round(100 * tally.share(place));
        Label figures =
                new Label(wording.say("instructor.tally.figures", tally.counts().get(place), percent));
        figures.setId("tally-figures-" + number + (round == 0 ? "" : "-again"));
        figures.getStyleClass().add("tally-figures");
        figures.setMinWidth(USE_PREF_SIZE);
        return figures;
    }

    private HBox bar(int number, int place, int round, Label figures) {
        boolean earlier = round < rounds.size() - 1;
        Region fill = new Region();
        fill.getStyleClass().addAll("tally-fill", "tally-fill-" + number);
        Pane bar = new Pane(fill);
        bar.getStyleClass().add("tally-bar");
        if (earlier) {
            bar.getStyleClass().add("tally-earlier");
            figures.getStyleClass().add("quiet");
        }
        fill.prefWidthProperty()
                .bind(bar.widthProperty().multiply(rounds.get(round).share(place)));
        fill.prefHeightProperty().bind(bar.heightProperty());
        HBox.setHgrow(bar, Priority.ALWAYS);
        HBox line = new HBox(bar, figures);
        line.setAlignment(Pos.CENTER_LEFT);
        line.getStyleClass().add("tally-row");
        return line;
    }
}
