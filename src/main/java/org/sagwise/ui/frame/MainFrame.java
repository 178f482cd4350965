package org.sagwise.ui.frame;

import javafx.scene.Node;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

import org.sagwise.caution.Assessment;
import org.sagwise.caution.Caution;
import org.sagwise.lesson.LessonPlayer;
import org.sagwise.picture.layout.Drawing;
import org.sagwise.scenario.Scenario;
import org.sagwise.ui.bench.BenchPane;
import org.sagwise.ui.bench.BesidePane;
import org.sagwise.ui.bench.PotentialLegend;
import org.sagwise.ui.bench.StatusLine;
import org.sagwise.ui.bench.ViewModel;
import org.sagwise.ui.card.CardPage;
import org.sagwise.ui.caution.CureModel;
import org.sagwise.ui.caution.DangerStrip;
import org.sagwise.ui.clock.ClockCommands;
import org.sagwise.ui.clock.ClockModel;
import org.sagwise.ui.clock.ClockStrip;
import org.sagwise.ui.clock.ClockTexts;
import org.sagwise.ui.clock.CurvesDrawer;
import org.sagwise.ui.clock.Halt;
import org.sagwise.ui.clock.HaltCard;
import org.sagwise.ui.command.Controls;
import org.sagwise.ui.demo.Example;
import org.sagwise.ui.demo.ExamplesColumn;
import org.sagwise.ui.demo.Thumbnails;
import org.sagwise.ui.file.Documents;
import org.sagwise.ui.file.DropTarget;
import org.sagwise.ui.fire.FireView;
import org.sagwise.ui.lesson.ClassDesk;
import org.sagwise.ui.lesson.LessonColumn;
import org.sagwise.ui.lesson.LessonCommands;
import org.sagwise.ui.lesson.LessonList;
import org.sagwise.ui.lesson.LessonRoom;
import org.sagwise.ui.lesson.LessonShelf;
import org.sagwise.ui.lesson.ProgressBook;
import org.sagwise.ui.model.BenchModel;
import org.sagwise.ui.model.Lit;
import org.sagwise.ui.model.Subscriptions;
import org.sagwise.ui.notice.TeachingNotice;
import org.sagwise.ui.prefs.PreferencesModel;
import org.sagwise.ui.prefs.Shown;
import org.sagwise.ui.shelf.ShelfColumn;
import org.sagwise.ui.staircase.StaircaseView;
import org.sagwise.ui.text.Wording;
import org.sagwise.ui.theme.LooksModel;
import org.sagwise.ui.work.EditCommands;
import org.sagwise.ui.work.HandBar;
import org.sagwise.ui.work.Workbench;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Function;

/** Everything inside the window, in one language. */
public final class MainFrame extends BorderPane {

    /** What the frame shows and works on. */
    public record Models(
            BenchModel bench,
            ClockModel clock,
            Workbench work,
            Function<Scenario, Assessment> assess,
            CureModel cures,
            ShelfColumn.Stock stock,
            Documents documents,
            PreferencesModel preferences,
            LooksModel looks,
            ViewModel view,
            List<Example> examples,
            Thumbnails thumbnails,
            Lessons lessons,
            Executor behindTheScenes) {}

    /** Lessons to choose from, and the one that runs. */
    public record Lessons(LessonShelf shelf, LessonRoom room, ProgressBook book, ClassDesk desk) {}

    /** Share of the width that the readings may take where text is large. */
    private static final double LARGEST_SIDE_SHARE = 0.42;

    /** Width that two benches and two columns need at the usual size of text, in pixels. */
    private static final double LEAST_FOR_TWO_BENCHES = 1500;

    /** Width that three columns need at the usual size of text, in pixels. */
    private static final double LEAST_FOR_EXAMPLES = 960;

    /** Share of the height that the drawer with curves takes. */
    private static final double CURVES_SHARE = 0.29;

    /** Height that curves and a card about a cell that vents need together, in pixels. */
    private static final double LEAST_FOR_BOTH = 820;

    /** Height from which curves lie at the foot, in pixels. */
    private static final double LEAST_FOR_CURVES = 560;

    private final VBox foot = new VBox();
    private final CurvesDrawer curves;
    private final BenchSplit middle;
    private final Models models;
    private final Wording wording;
    private final Subscriptions subscriptions;
    private final SideColumn side;
    private final LeftColumn left;
    private final Controls controls;
    private BenchPane pane;
    private CardPage card;
    private final TeachingNotice notice;

    MainFrame(Models models, Commands commands, Wording wording, Subscriptions subscriptions) {
        this.models = models;
        this.wording = wording;
        this.subscriptions = subscriptions;
        getStyleClass().add("frame");
        controls = new Controls(wording, subscriptions);
        FireView fire =
                new FireView(models.bench, commands.latch(), controls, wording, subscriptions);
        Menus menus = new Menus(commands, models, wording, subscriptions);
        Header header =
                new Header(
                        fire, menus.bar(), models.bench, models.documents, wording, subscriptions);
        ClockTexts words = new ClockTexts(wording.locale());
        setTop(
                new VBox(
                        header,
                        strip(commands.time(), words),
                        new DangerStrip(
                                models.bench, this::show, models.cures, wording, subscriptions),
                        new HaltCard(models.clock, words, subscriptions)));
        curves =
                new CurvesDrawer(
                        models.clock,
                        commands.time(),
                        models.looks,
                        controls,
                        words,
                        subscriptions);
        curves.prefHeightProperty().bind(heightProperty().multiply(CURVES_SHARE));
        setBottom(foot);
        middle = middle(commands.edits());
        side = new SideColumn(models.bench, this::show, models.cures, wording, subscriptions);
        side.maxWidthProperty().bind(widthProperty().multiply(LARGEST_SIDE_SHARE));
        setRight(side);
        left = left(commands.lessons());
        notice = new TeachingNotice(wording.locale());
        subscriptions.watch(models.preferences.property(), now -> arrange());
        subscriptions.watch(widthProperty(), now -> arrange());
        subscriptions.onChange(models.looks.property(), this::arrange);
        subscriptions.watch(
                models.lessons.room().playerProperty().map(Optional::isPresent), this::turnTo);
        subscriptions.onChange(
                models.lessons
                        .room()
                        .playerProperty()
                        .map(now -> now.flatMap(LessonPlayer::beside).isPresent()),
                this::arrange);
        subscriptions.watch(heightProperty(), now -> arrange());
        subscriptions.watch(models.clock.haltProperty(), now -> arrange());
        DropTarget.on(this, models.documents);
    }

    /**
     * Where there is little room for the size of text, the column of examples gives way to bench
     * and readings, the notice lies across the foot of the window, and the curves wait until word
     * of a cell that vents has been read. A lesson needs its column, and the readings give way to
     * it. On a projector there is only what a class can read.
     */
    private void arrange() {
        boolean taught = models.lessons.room().player().isPresent();
        boolean wanted = models.preferences.get().examples() == Shown.SHOWN;
        boolean room = getWidth() >= LEAST_FOR_EXAMPLES * models.looks.get().textScale();
        boolean projected = models.looks.projectorProperty().get();
        boolean compares = models.lessons.room().player().flatMap(LessonPlayer::beside).isPresent();
        boolean crowded =
                compares && getWidth() < LEAST_FOR_TWO_BENCHES * models.looks.get().textScale();
        setLeft(taught || wanted && room && !projected ? left : null);
        left.project(projected);
        setRight(projected || taught && !room || crowded ? null : side);
        boolean beside = room && !projected && !crowded;
        boolean atFoot = foot.getChildren().contains(notice);
        if (beside && atFoot || notice.getParent() == null) {
            foot.getChildren().remove(notice);
            notice.asCard();
            side.getChildren().add(notice);
        }
        if (!beside && !atFoot) {
            side.getChildren().remove(notice);
            notice.asFoot();
            foot.getChildren().add(notice);
        }
        placeCurves();
    }

    /**
     * The curves lie at the foot; where there is no height for that, they take the place of bench
     * and staircase for as long as they are wanted.
     */
    private void placeCurves() {
        double scale = models.looks.get().textScale();
        boolean grave = models.clock.haltProperty().get().filter(Halt::isGrave).isPresent();
        boolean drawn =
                models.preferences.get().curves() == Shown.SHOWN
                        && (!grave || getHeight() >= LEAST_FOR_BOTH * scale);
        boolean instead = drawn && getHeight() < LEAST_FOR_CURVES * scale;
        boolean atFoot = drawn && !instead;
        if (!atFoot) {
            foot.getChildren().remove(curves);
        }
        setCenter(instead ? curves : middle);
        if (atFoot && !foot.getChildren().contains(curves)) {
            foot.getChildren().add(0, curves);
        }
        curves.setVisible(drawn);
    }

    /** Leaves something out while a class looks on. */
    private void notOnProjector(Node node) {
        subscriptions.watch(
                models.looks.projectorProperty(),
                projected -> {
                    node.setVisible(!projected);
                    node.setManaged(!projected);
                });
    }

    private ClockStrip strip(ClockCommands commands, ClockTexts words) {
        ClockStrip strip =
                new ClockStrip(
                        models.clock,
                        commands,
                        models.preferences,
                        models.looks,
                        controls,
                        words,
                        subscriptions);
        subscriptions.watch(models.looks.projectorProperty(), now -> placeClock(strip));
        subscriptions.watch(models.clock.goingProperty(), now -> placeClock(strip));
        subscriptions.watch(models.clock.nowProperty(), now -> placeClock(strip));
        return strip;
    }

    /** A class that looks on sees the clock once time has begun. */
    private void placeClock(ClockStrip strip) {
        boolean begun =
                models.clock.goingProperty().get() || models.clock.nowProperty().get().endS() > 0;
        boolean shown = begun || !models.looks.projectorProperty().get();
        strip.setVisible(shown);
        strip.setManaged(shown);
    }

    private BenchSplit middle(EditCommands edits) {
        pane =
                new BenchPane(
                        models.work,
                        edits,
                        models.assess,
                        this::showCard,
                        models.looks,
                        models.view,
                        wording,
                        subscriptions);
        HBox benches = benches();
        VBox.setVgrow(benches, Priority.ALWAYS);
        HandBar hands = new HandBar(models.work, edits, controls, wording, subscriptions);
        notOnProjector(hands);
        StatusLine status = new StatusLine(models.work, wording, subscriptions);
        HBox.setHgrow(status, Priority.ALWAYS);
        PotentialLegend legend = new PotentialLegend(models.bench, wording, subscriptions);
        subscriptions.watch(
                models.looks.property(), now -> legend.setVisible(now.drawing() == Drawing.BENCH));
        HBox foot = new HBox(status, legend);
        foot.getStyleClass().add("bench-foot");
        VBox upper = new VBox(hands, benches, foot);
        StaircaseView staircase =
                new StaircaseView(models.bench, models.looks, wording, subscriptions);
        return new BenchSplit(upper, staircase, models.preferences);
    }

    /** Goes where a door of the opening page leads. */
    void enter(DoorsDialog.Door door) {
        switch (door) {
            case LEARN -> left.show(LeftColumn.Page.LESSONS);
            case BUILD -> {
                models.documents.openExample(Scenario.empty());
                left.show(LeftColumn.Page.SHELF);
            }
            case EXPLAIN -> {
                models.examples.stream()
                        .filter(example -> example.name().equals(door.example()))
                        .findFirst()
                        .ifPresent(example -> models.documents.openExample(example.scenario()));
                left.show(LeftColumn.Page.EXAMPLES);
            }
        }
    }

    /** The bench, and the one that a lesson compares it with, each half of the room. */
    private HBox benches() {
        BesidePane beside =
                new BesidePane(
                        models.lessons
                                .room()
                                .playerProperty()
                                .map(player -> player.flatMap(LessonPlayer::beside)),
                        models.bench,
                        models.assess,
                        models.looks,
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

    /** Shows the card of what is chosen, ready to be filled in. */
    void showCard() {
        left.show(LeftColumn.Page.CARD);
        card.focusFirst();
    }

    /** A lesson takes the place of everything else to choose from, but for the parts. */
    private void turnTo(boolean lesson) {
        if (lesson) {
            left.offer(
                    LeftColumn.Page.LESSON,
                    LeftColumn.Page.LESSON,
                    LeftColumn.Page.SHELF,
                    LeftColumn.Page.CARD);
        } else {
            left.offer(
                    LeftColumn.Page.EXAMPLES,
                    LeftColumn.Page.SHELF,
                    LeftColumn.Page.CARD,
                    LeftColumn.Page.EXAMPLES,
                    LeftColumn.Page.LESSONS);
        }
        arrange();
    }

    private LeftColumn left(LessonCommands lesson) {
        LeftColumn column = new LeftColumn(wording);
        card = new CardPage(models.work, wording, subscriptions);
        column.add(
                LeftColumn.Page.SHELF,
                new ShelfColumn(models.stock, models.work, pane::handTo, wording, subscriptions));
        column.add(LeftColumn.Page.CARD, card);
        column.add(LeftColumn.Page.EXAMPLES, examples());
        LessonRoom room = models.lessons.room();
        column.add(
                LeftColumn.Page.LESSONS,
                new LessonList(
                        models.lessons.shelf(),
                        room,
                        models.lessons.book(),
                        wording,
                        subscriptions));
        LessonColumn running =
                new LessonColumn(
                        room,
                        models.lessons.shelf(),
                        models.lessons.desk(),
                        lesson,
                        controls,
                        wording,
                        subscriptions);
        column.maxWidthProperty().bind(widthProperty().multiply(LARGEST_SIDE_SHARE));
        column.add(LeftColumn.Page.LESSON, running);
        return column;
    }

    private ExamplesColumn examples() {
        return new ExamplesColumn(
                models.examples,
                models.thumbnails,
                models.bench,
                models.documents,
                wording,
                subscriptions);
    }

    private void show(Caution caution) {
        models.bench.spotlight().show(Lit.of(caution.parts(), caution.links()));
        models.view.fit();
        caution.parts().stream()
                .findFirst()
                .map(id -> lookup("#part-" + id))
                .ifPresent(Node::requestFocus);
    }
}
