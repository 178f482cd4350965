package org.sagwise.ui.frame;

import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

import org.sagwise.lesson.LessonPlayer;
import org.sagwise.picture.layout.Drawing;
import org.sagwise.ui.bench.BenchPane;
import org.sagwise.ui.bench.BesidePane;
import org.sagwise.ui.bench.MeterStrip;
import org.sagwise.ui.bench.PotentialLegend;
import org.sagwise.ui.bench.StatusLine;
import org.sagwise.ui.command.Controls;
import org.sagwise.ui.command.Crowding;
import org.sagwise.ui.model.Subscriptions;
import org.sagwise.ui.staircase.StaircaseView;
import org.sagwise.ui.text.Wording;
import org.sagwise.ui.work.EditCommands;
import org.sagwise.ui.work.HandBar;

import java.util.List;

/** The middle of the window: hands, bench, what its colours mean, and the staircase beneath. */
final class BenchArea {

    /** Least height of a bench that still can be worked at, in pixels at the usual size of text. */
    private static final double LEAST_BENCH = 150;

    /** Width that words about a part need, in pixels at the usual size of text. */
    private static final double LEAST_STATUS = 560;

    private final Models models;
    private final Wording wording;
    private final Subscriptions subscriptions;
    private final BenchPane pane;
    private final BenchSplit split;

    /**
     * @param showCard brings up the card of what is chosen
     */
    BenchArea(
            Models models,
            EditCommands edits,
            Runnable showCard,
            Controls controls,
            Wording wording,
            Subscriptions subscriptions) {
        this.models = models;
        this.wording = wording;
        this.subscriptions = subscriptions;
        pane =
                new BenchPane(
                        models.work(),
                        edits,
                        models.assess(),
                        showCard,
                        models.looks(),
                        models.view(),
                        models.painter(),
                        wording,
                        subscriptions);
        HBox benches = benches();
        VBox.setVgrow(benches, Priority.ALWAYS);
        HandBar hands = new HandBar(models.work(), edits, controls, wording, subscriptions);
        MeterStrip meter =
                new MeterStrip(models.bench(), edits.meter(), controls, wording, subscriptions);
        HBox foot = foot();
        VBox upper = new VBox(hands, benches, meter, foot);
        Runnable makeRoom = () -> show(hands, isRoomFor(hands, foot, upper));
        subscriptions.onChange(upper.heightProperty(), makeRoom);
        subscriptions.onChange(upper.widthProperty(), makeRoom);
        subscriptions.onChange(models.looks().property(), makeRoom);
        subscriptions.onChange(models.looks().projectorProperty(), makeRoom);
        StaircaseView staircase =
                new StaircaseView(
                        models.bench(), models.looks(), models.painter(), wording, subscriptions);
        split = new BenchSplit(upper, staircase, models.preferences());
    }

    BenchSplit node() {
        return split;
    }

    /** The bench that a person works on. */
    BenchPane pane() {
        return pane;
    }

    /** The bench, and the one that a lesson compares it with, each half of the room. */
    private HBox benches() {
        BesidePane beside =
                new BesidePane(
                        models.lessons()
                                .room()
                                .playerProperty()
                                .map(player -> player.flatMap(LessonPlayer::beside)),
                        models.bench(),
                        models.assess(),
                        models.looks(),
                        wording,
                        subscriptions);
        HBox benches = new HBox(pane, beside);
        pane.setMinWidth(0);
        for (Region half : List.of(pane, beside)) {
            half.setPrefWidth(1);
            HBox.setHgrow(half, Priority.ALWAYS);
        }
        return benches;
    }

    private HBox foot() {
        StatusLine status = new StatusLine(models.work(), wording, subscriptions);
        HBox.setHgrow(status, Priority.ALWAYS);
        PotentialLegend legend = new PotentialLegend(models.bench(), wording, subscriptions);
        subscriptions.watch(
                models.looks().property(),
                now -> legend.setVisible(now.drawing() == Drawing.BENCH));
        HBox foot = new HBox(status, legend);
        foot.getStyleClass().add("bench-foot");
        Runnable makeRoom =
                () -> {
                    status.setMinWidth(LEAST_STATUS * models.looks().get().textScale());
                    Crowding.relieve(foot, List.of(List.of(legend.title())));
                    status.setMinWidth(0);
                };
        subscriptions.onChange(foot.widthProperty(), makeRoom);
        subscriptions.onChange(models.looks().property(), makeRoom);
        return foot;
    }

    /** A class that looks on needs no hands; and the bench comes before them. */
    private boolean isRoomFor(Region hands, Region foot, Region upper) {
        double taken = hands.prefHeight(upper.getWidth()) + foot.prefHeight(upper.getWidth());
        boolean room = upper.getHeight() - taken >= LEAST_BENCH * models.looks().get().textScale();
        return room && !models.looks().projectorProperty().get();
    }

    private static void show(Region piece, boolean shown) {
        piece.setVisible(shown);
        piece.setManaged(shown);
    }
}
