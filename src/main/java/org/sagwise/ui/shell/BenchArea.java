package org.sagwise.ui.shell;

import java.util.List;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableValue;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.sagwise.assessment.Assessment;
import org.sagwise.picture.layout.Drawing;
import org.sagwise.report.course.ClockTexts;
import org.sagwise.ui.bench.BenchPane;
import org.sagwise.ui.bench.BesidePane;
import org.sagwise.ui.bench.HintedFelt;
import org.sagwise.ui.bench.MeterStrip;
import org.sagwise.ui.bench.NextStepHint;
import org.sagwise.ui.bench.PotentialLegend;
import org.sagwise.ui.bench.StatusLine;
import org.sagwise.ui.clock.Companion;
import org.sagwise.ui.clock.TogetherLine;
import org.sagwise.ui.kit.Commands;
import org.sagwise.ui.kit.Controls;
import org.sagwise.ui.kit.Crowding;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.staircase.BesideStairs;
import org.sagwise.ui.staircase.StaircaseView;
import org.sagwise.ui.text.Wording;
import org.sagwise.ui.workbench.HandBar;

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
    private final ObservableValue<Optional<Assessment>> beside;
    private final BenchSplit split;

    /**
     * @param showCard brings up the card of what is chosen
     */
    BenchArea(
            Models models,
            Commands commands,
            Runnable showCard,
            Controls controls,
            Wording wording,
            Subscriptions subscriptions) {
        this.models = models;
        this.wording = wording;
        this.subscriptions = subscriptions;
        pane = new BenchPane(
                models.bench().work(),
                commands,
                models.bench().assess(),
                showCard,
                models.shown().looks(),
                models.shown().view(),
                models.shown().layouts(),
                models.shown().painter(),
                wording,
                subscriptions);
        beside = besideBehindVeil(models);
        HBox benches = benches();
        VBox.setVgrow(benches, Priority.ALWAYS);
        HandBar hands = new HandBar(models.bench().work(), commands, controls, wording, subscriptions);
        MeterStrip meter = new MeterStrip(models.bench().model(), commands, controls, wording, subscriptions);
        TogetherLine together = new TogetherLine(
                models.time().companion(), models.time().clock(), new ClockTexts(wording.locale()), subscriptions);
        HBox foot = foot();
        VBox upper = new VBox(hands, benches, meter, together, foot);
        Runnable makeRoom = () -> {
            show(foot, isRoomForFoot(foot, upper));
            show(hands, isRoomFor(hands, foot, upper));
        };
        subscriptions.onChange(upper.heightProperty(), makeRoom);
        subscriptions.onChange(upper.widthProperty(), makeRoom);
        subscriptions.onChange(models.shown().looks().property(), makeRoom);
        subscriptions.onChange(models.shown().looks().projectorProperty(), makeRoom);
        split = new BenchSplit(upper, stairs(), models.shown().preferences());
    }

    BenchSplit node() {
        return split;
    }

    /** The bench that a person works on. */
    BenchPane pane() {
        return pane;
    }

    /** The second bench, which keeps what is asked as secret as the first. */
    private static ObservableValue<Optional<Assessment>> besideBehindVeil(Models models) {
        var seen = models.time().companion().seenProperty();
        var locked = models.bench().model().button().lockedProperty();
        return Bindings.createObjectBinding(
                () -> seen.get().map(Companion.Seen::assessment).map(it -> locked.get() ? it.veiled() : it),
                seen,
                locked);
    }

    /** The bench, and the one that a lesson compares it with, each half of the room. */
    private HBox benches() {
        BesidePane besidePane = new BesidePane(
                beside,
                models.bench().model(),
                models.shown().looks(),
                models.shown().painter(),
                wording,
                subscriptions);
        NextStepHint hint = new NextStepHint(
                models.bench().model(),
                models.lessons().room().playerProperty().map(Optional::isPresent),
                wording,
                subscriptions);
        HintedFelt felt = new HintedFelt(pane, hint, models.shown().view(), subscriptions);
        halves(felt, besidePane);
        return new HBox(felt, besidePane);
    }

    private HBox stairs() {
        StaircaseView staircase = new StaircaseView(
                models.bench().model(),
                beside,
                models.shown().looks(),
                models.shown().painter(),
                wording,
                subscriptions);
        BesideStairs other = new BesideStairs(
                beside,
                models.bench().model(),
                models.shown().looks(),
                models.shown().painter(),
                wording,
                subscriptions);
        halves(staircase, other);
        return new HBox(staircase, other);
    }

    private static void halves(Region... halves) {
        for (Region half : halves) {
            half.setPrefWidth(1);
            HBox.setHgrow(half, Priority.ALWAYS);
        }
    }

    private HBox foot() {
        StatusLine status = new StatusLine(models.bench().work(), wording, subscriptions);
        HBox.setHgrow(status, Priority.ALWAYS);
        PotentialLegend legend = new PotentialLegend(
                models.bench().model(),
                models.shown().looks().property().map(now -> now.drawing() == Drawing.BENCH),
                wording,
                subscriptions);
        HBox foot = new HBox(status, legend);
        foot.getStyleClass().add("bench-foot");
        Runnable makeRoom = () -> {
            status.setMinWidth(LEAST_STATUS * models.shown().looks().get().textScale());
            Crowding.relieve(foot, List.of(List.of(legend.title())));
            status.setMinWidth(0);
        };
        subscriptions.onChange(foot.widthProperty(), makeRoom);
        subscriptions.onChange(models.shown().looks().property(), makeRoom);
        return foot;
    }

    /** A class that looks on needs no hands; and the bench comes before them. */
    private boolean isRoomFor(Region hands, Region foot, Region upper) {
        double taken = hands.prefHeight(upper.getWidth()) + foot.prefHeight(upper.getWidth());
        boolean room = upper.getHeight() - taken
                >= LEAST_BENCH * models.shown().looks().get().textScale();
        return room && !models.shown().looks().projectorProperty().get();
    }

    /** A class points at nothing; where there is little height it sees more of the bench. */
    private boolean isRoomForFoot(Region foot, Region upper) {
        double left = upper.getHeight() - foot.prefHeight(upper.getWidth());
        return !models.shown().looks().projectorProperty().get()
                || left >= 2 * LEAST_BENCH * models.shown().looks().get().textScale();
    }

    private static void show(Region piece, boolean shown) {
        piece.setVisible(shown);
        piece.setManaged(shown);
    }
}
