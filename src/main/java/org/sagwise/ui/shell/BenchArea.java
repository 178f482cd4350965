package org.sagwise.ui.shell;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.sagwise.assessment.Assessment;
import org.sagwise.hazard.Caution;
import org.sagwise.lesson.LessonPlayer;
import org.sagwise.picture.layout.Drawing;
import org.sagwise.plan.NextStep;
import org.sagwise.report.course.ClockTexts;
import org.sagwise.ui.analysis.DangerStrip;
import org.sagwise.ui.bench.BenchPane;
import org.sagwise.ui.bench.BesidePane;
import org.sagwise.ui.bench.HintedFelt;
import org.sagwise.ui.bench.LargeBenchOpening;
import org.sagwise.ui.bench.MeterStrip;
import org.sagwise.ui.bench.NextStepHint;
import org.sagwise.ui.bench.PotentialLegend;
import org.sagwise.ui.bench.StatusLine;
import org.sagwise.ui.clock.Companion;
import org.sagwise.ui.clock.HaltCard;
import org.sagwise.ui.clock.TogetherLine;
import org.sagwise.ui.document.RivalStrip;
import org.sagwise.ui.kit.Commands;
import org.sagwise.ui.kit.Controls;
import org.sagwise.ui.kit.Crowding;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.kit.WaitStrip;
import org.sagwise.ui.share.PageDesk;
import org.sagwise.ui.staircase.BesideStairs;
import org.sagwise.ui.staircase.StaircaseView;
import org.sagwise.ui.text.Wording;
import org.sagwise.ui.workbench.HandBar;

/** The middle of the window: hands, bench, what its colours mean, and the staircase beneath. */
final class BenchArea {

    /** Height at which a class sees enough of the bench for a line under it, in pixels at the usual size of text. */
    private static final double ENOUGH_BENCH = 300;

    /** Width that words about a part need, in pixels at the usual size of text. */
    private static final double LEAST_STATUS = 320;

    /**
     * Where hints and messages on the felt lead.
     *
     * @param toCard brings up the card of what is chosen
     * @param toCaution picks out what a caution is about
     * @param toStep leads to what a circuit needs next
     */
    record Leads(Runnable toCard, Consumer<Caution> toCaution, Consumer<NextStep> toStep) {}

    private final Models models;
    private final Wording wording;
    private final Subscriptions subscriptions;
    private final Leads leads;
    private final BenchPane pane;
    private final ObservableValue<Optional<Assessment>> beside;
    private final DangerStrip danger;
    private final ObservableValue<Optional<LessonPlayer>> lessonPlayer;
    private boolean readings;
    private final BenchSplit split;

    BenchArea(
            Models models,
            Commands commands,
            Leads leads,
            Controls controls,
            ClockTexts clockTexts,
            Wording wording,
            Subscriptions subscriptions) {
        this.models = models;
        this.leads = leads;
        this.wording = wording;
        this.subscriptions = subscriptions;
        pane = new BenchPane(
                models.bench().work(),
                commands,
                models.bench().assess(),
                leads.toCard(),
                models.shown().looks(),
                models.shown().view(),
                models.shown().layouts(),
                models.shown().painter(),
                models.behindTheScenes(),
                wording,
                subscriptions);
        beside = besideBehindVeil(models);
        danger = new DangerStrip(
                models.bench().model(), leads.toCaution(), models.bench().cures(), wording, subscriptions);
        lessonPlayer = models.lessons().room().playerProperty();
        subscriptions.onChange(lessonPlayer, this::foldDanger);
        MeterStrip meter = new MeterStrip(models.bench().model(), commands, controls, wording, subscriptions);
        TogetherLine together =
                new TogetherLine(models.time().companion(), models.time().clock(), clockTexts, subscriptions);
        HBox foot = foot(new HandBar(models.bench().work(), commands, controls, wording, subscriptions));
        HintedFelt felt = new HintedFelt(
                benches(),
                pane,
                messages(meter, clockTexts),
                models.shown().view(),
                models.bench().model().historyProperty(),
                subscriptions);
        Runnable fitDanger = () -> danger.fitInto(felt.getWidth());
        subscriptions.onChange(felt.widthProperty(), fitDanger);
        subscriptions.onChange(models.shown().looks().property(), fitDanger);
        BorderPane upper = new BorderPane();
        // First in the order of the keys, and last to be seen: from the bench they lead to the staircase.
        upper.setBottom(new VBox(together, foot));
        upper.setCenter(felt);
        Runnable makeRoom = () -> show(foot, isRoomForFoot(foot, upper));
        subscriptions.onChange(upper.heightProperty(), makeRoom);
        subscriptions.onChange(upper.widthProperty(), makeRoom);
        subscriptions.onChange(models.shown().looks().property(), makeRoom);
        subscriptions.onChange(models.shown().looks().projectorProperty(), makeRoom);
        split = new BenchSplit(upper, stairs(), models.shown().preferences());
    }

    /** What lies on the felt when there is reason to say it, the gravest first. */
    private List<Region> messages(MeterStrip meter, ClockTexts clockTexts) {
        return List.of(
                danger,
                new HaltCard(models.time().clock(), clockTexts, subscriptions),
                new RivalStrip(models.files().documents(), wording, subscriptions),
                beingSetOut(models.files().opening()),
                beingWritten(models.files().pages()),
                meter,
                new NextStepHint(
                        models.bench().model(),
                        lessonPlayer.map(Optional::isPresent),
                        leads.toStep(),
                        wording,
                        subscriptions));
    }

    private WaitStrip beingSetOut(LargeBenchOpening opening) {
        return new WaitStrip(
                "opening",
                opening.underWayProperty()
                        .map(now -> now.map(it -> wording.say(
                                "opening.words", it.title(), it.parts().size()))),
                new WaitStrip.Stop(wording.say("opening.stop"), wording.say("opening.stop.tip"), opening::callOff),
                subscriptions);
    }

    private WaitStrip beingWritten(PageDesk pages) {
        return new WaitStrip(
                "page",
                pages.underWayProperty().map(now -> now.map(it -> wording.say("page.writing", it.getFileName()))),
                new WaitStrip.Stop(wording.say("work.stop"), wording.say("page.stop.tip"), pages::stop),
                subscriptions);
    }

    BenchSplit node() {
        return split;
    }

    /** The readings stand beside the bench, or not. */
    void tellReadings(boolean beside) {
        readings = beside;
        foldDanger();
    }

    /** A lesson says itself what to do, and asks for the parts that an unfolded strip would lie on. */
    private void foldDanger() {
        danger.setSaidBeside(readings || lessonPlayer.getValue().isPresent());
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
        halves(pane, besidePane);
        return new HBox(pane, besidePane);
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

    private HBox foot(HandBar hands) {
        StatusLine status = new StatusLine(models.bench().work(), wording, subscriptions);
        HBox.setHgrow(status, Priority.ALWAYS);
        PotentialLegend legend = new PotentialLegend(
                models.bench().model(),
                models.shown().looks().property().map(now -> now.drawing() == Drawing.BENCH),
                wording,
                subscriptions);
        // Whether colours need it is the legend's to say, whether there is room for it is the row's.
        StackPane legendPlace = new StackPane(legend);
        HBox foot = new HBox(hands, status, legendPlace);
        foot.getStyleClass().add("bench-foot");
        Runnable makeRoom = () -> {
            status.setMinWidth(LEAST_STATUS * models.shown().looks().get().textScale());
            boolean projected = models.shown().looks().projectorProperty().get();
            show(hands, !projected);
            // A class looks at colours and points at nothing.
            List<List<Node>> rest = projected ? List.of() : List.of(List.of(hands), List.of(legendPlace));
            Crowding.relieve(
                    foot,
                    Stream.concat(Stream.of(List.of(legend.title(), hands.title())), rest.stream())
                            .toList());
            status.setMinWidth(0);
        };
        subscriptions.onChange(foot.widthProperty(), makeRoom);
        subscriptions.onChange(models.shown().looks().property(), makeRoom);
        subscriptions.onChange(models.shown().looks().projectorProperty(), makeRoom);
        return foot;
    }

    /** A class points at nothing; where there is little height it sees more of the bench. */
    private boolean isRoomForFoot(Region foot, Region upper) {
        double left = upper.getHeight() - foot.prefHeight(upper.getWidth());
        return !models.shown().looks().projectorProperty().get()
                || left >= ENOUGH_BENCH * models.shown().looks().get().textScale();
    }

    private static void show(Region piece, boolean shown) {
        piece.setVisible(shown);
        piece.setManaged(shown);
    }
}
