package org.sagwise.ui.shell;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javafx.css.PseudoClass;
import javafx.event.ActionEvent;
import javafx.scene.Node;
import javafx.scene.control.Menu;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.sagwise.hazard.Caution;
import org.sagwise.interaction.Selection;
import org.sagwise.lesson.LessonPlayer;
import org.sagwise.part.PartKind;
import org.sagwise.plan.NextStep;
import org.sagwise.report.course.ClockTexts;
import org.sagwise.ui.clock.CurvesDrawer;
import org.sagwise.ui.document.DropTarget;
import org.sagwise.ui.kit.Commands;
import org.sagwise.ui.kit.Controls;
import org.sagwise.ui.kit.LookUp;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.settings.Shown;
import org.sagwise.ui.start.StartPage;
import org.sagwise.ui.start.TeachingNotice;
import org.sagwise.ui.text.Wording;

/** Everything inside the window, in one language. */
final class MainFrame extends BorderPane {

    /** Share of the width that a column may take where text is large. */
    private static final double LARGEST_COLUMN_SHARE = 0.42;

    /** Share of the height that the drawer with curves takes. */
    private static final double CURVES_SHARE = 0.29;

    /** Wide enough for names on one line. */
    private static final PseudoClass ROOMY = PseudoClass.getPseudoClass("roomy");

    private final Models models;
    private final Consumer<Path> openLessons;
    private final VBox foot = new VBox();
    private final HBox leftSide = new HBox();
    private final Heading heading;
    private final BenchArea middle;
    private final CurvesDrawer curves;
    private final SideColumn side;
    private final LeftPages left;
    private final Turn turn;
    private final TeachingNotice notice;
    private Arrangement.NoticePlace noticed;

    MainFrame(
            Models models,
            Commands commands,
            Consumer<Path> openLessons,
            Consumer<String> lookUp,
            Wording wording,
            Subscriptions subscriptions) {
        this.models = models;
        this.openLessons = openLessons;
        getStyleClass().add("frame");
        Controls controls = new Controls(wording, subscriptions);
        ClockTexts clockTexts = new ClockTexts(wording.locale());
        heading = new Heading(models, commands, openLessons, controls, clockTexts, wording, subscriptions);
        setTop(heading);
        curves = new CurvesDrawer(
                models.time().clock(), commands, models.shown().looks(), controls, clockTexts, subscriptions);
        curves.prefHeightProperty().bind(heightProperty().multiply(CURVES_SHARE));
        setBottom(foot);
        middle = new BenchArea(
                models,
                commands,
                new BenchArea.Leads(this::showCard, this::show, this::leadTo),
                controls,
                clockTexts,
                wording,
                subscriptions);
        side = new SideColumn(models.bench().model(), this::show, models.bench().cures(), wording, subscriptions);
        side.maxWidthProperty().bind(widthProperty().multiply(LARGEST_COLUMN_SHARE));
        setRight(side);
        left = new LeftPages(models, commands, this::closeColumn, controls, wording, subscriptions);
        left.column().maxWidthProperty().bind(widthProperty().multiply(LARGEST_COLUMN_SHARE));
        left.column().onAsked(this::turnPage);
        setLeft(leftSide);
        turn = new Turn(models.bench().model(), subscriptions);
        notice = new TeachingNotice(wording.locale());
        arrangeOnChange(subscriptions);
        DropTarget.on(this, this::take);
        addEventHandler(ActionEvent.ACTION, event -> {
            if (event instanceof LookUp wanted) {
                lookUp.accept(wanted.id());
            }
        });
    }

    /** Opens what was dropped on the window, or what it was called with. */
    void take(Path given) {
        if (Files.isDirectory(given)) {
            openLessons.accept(given);
        } else {
            models.files().documents().open(given);
        }
    }

    private void arrangeOnChange(Subscriptions subscriptions) {
        subscriptions.watch(models.shown().preferences().property(), now -> arrange());
        subscriptions.watch(widthProperty(), now -> arrange());
        subscriptions.onChange(models.shown().looks().property(), this::arrange);
        subscriptions.watch(models.lessons().room().playerProperty().map(Optional::isPresent), now -> arrange());
        subscriptions.onChange(
                models.lessons()
                        .room()
                        .playerProperty()
                        .map(now -> now.flatMap(LessonPlayer::beside).isPresent()),
                this::arrange);
        subscriptions.watch(heightProperty(), now -> arrange());
        subscriptions.onChange(turn.left(), this::arrange);
        subscriptions.onChange(turn.both(), this::arrange);
        subscriptions.watch(models.time().clock().haltProperty(), now -> arrange());
    }

    private void arrange() {
        Arrangement.Room room = new Arrangement.Room(
                getWidth(), getHeight(), models.shown().looks().get().textScale());
        Arrangement now = Arrangement.of(wanted(), room);
        boolean projected = models.shown().looks().projectorProperty().get();
        placeLeft(now.left(), !projected);
        left.project(projected);
        setRight(now.side() ? side : null);
        heading.tellReadings(now.side());
        middle.tellReadings(now.side());
        pseudoClassStateChanged(ROOMY, now.roomy());
        placeNotice(now.notice());
        placeCurves(now.curves());
    }

    private void placeLeft(boolean open, boolean tabs) {
        List<Node> pieces = Stream.concat(
                        Stream.of(left.column().edge()).filter(it -> tabs),
                        Stream.<Node>of(left.column()).filter(it -> open))
                .toList();
        if (!leftSide.getChildren().equals(pieces)) {
            leftSide.getChildren().setAll(pieces);
        }
        left.column().setOpen(open);
    }

    private Arrangement.Wanted wanted() {
        Optional<LessonPlayer> lesson = models.lessons().room().player();
        return new Arrangement.Wanted(
                lesson.isPresent(),
                lesson.flatMap(LessonPlayer::beside).isPresent(),
                isColumnWanted(),
                turn.left().get(),
                models.shown().preferences().get().readings() == Shown.SHOWN,
                turn.both().get(),
                models.shown().preferences().get().curves() == Shown.SHOWN,
                word(),
                models.shown().looks().projectorProperty().get());
    }

    private Arrangement.Word word() {
        return models.time()
                .clock()
                .haltProperty()
                .get()
                .map(halt -> halt.isGrave() ? Arrangement.Word.GRAVE : Arrangement.Word.ENDED)
                .orElse(Arrangement.Word.NONE);
    }

    private boolean isColumnWanted() {
        return models.shown().preferences().get().examples() == Shown.SHOWN;
    }

    private void placeNotice(Arrangement.NoticePlace place) {
        if (place == noticed) {
            return;
        }
        noticed = place;
        foot.getChildren().remove(notice);
        side.getChildren().remove(notice);
        left.column().setBottom(null);
        switch (place) {
            case FOOT -> foot.getChildren().add(notice.asFoot());
            case UNDER_READINGS -> side.getChildren().add(notice.asCard());
            case UNDER_LEFT -> left.column().setBottom(notice.asCard());
        }
    }

    private void placeCurves(Arrangement.CurvesPlace place) {
        boolean atFoot = place == Arrangement.CurvesPlace.FOOT;
        if (!atFoot) {
            foot.getChildren().remove(curves);
        }
        boolean instead = place == Arrangement.CurvesPlace.INSTEAD_OF_BENCH;
        setCenter(instead ? curves : middle.node());
        if (atFoot && !foot.getChildren().contains(curves)) {
            foot.getChildren().add(0, curves);
        }
        curves.setVisible(place != Arrangement.CurvesPlace.NOWHERE);
    }

    /** Goes where a door of the opening page leads. */
    void enter(StartPage.Door door) {
        showColumn();
        left.enter(door);
    }

    /** Shows the lessons to choose from. */
    void showLessons() {
        showColumn();
        left.column().show(LeftColumn.Page.LESSONS);
    }

    List<Menu> menus() {
        return heading.menus();
    }

    /** Shows the card of what is chosen, ready to be filled in. */
    void showCard() {
        showColumn();
        left.showCard();
    }

    /** Shows the shelf, ready to be searched. */
    void findPart() {
        showColumn();
        left.findPart();
    }

    /** Shows the column at the left, or takes it away. */
    void toggleColumn() {
        if (isLeftOpen()) {
            closeColumn();
        } else {
            showColumn();
        }
    }

    /** Shows the readings, or takes them away. */
    void toggleReadings() {
        boolean shown = getRight() != null;
        if (shown) {
            turn.leave();
        } else {
            turn.askReadings(isLeftOpen());
        }
        models.shown().preferences().change(now -> now.withReadings(shown ? Shown.HIDDEN : Shown.SHOWN));
    }

    /** A tab calls up its page. */
    private void turnPage(LeftColumn.Page page) {
        left.column().show(page);
        showColumn();
    }

    private boolean isLeftOpen() {
        return leftSide.getChildren().contains(left.column());
    }

    private void closeColumn() {
        turn.leave();
        models.shown().preferences().change(now -> now.withExamples(Shown.HIDDEN));
    }

    private void showColumn() {
        models.shown().preferences().change(now -> now.withExamples(Shown.SHOWN));
        turn.ask();
    }

    /** Leads whoever builds to what the circuit needs next. */
    private void leadTo(NextStep step) {
        switch (step) {
            case SOURCE -> lead(PartKind.CELL);
            case LOAD -> lead(PartKind.COIL);
            case SWITCH -> lead(PartKind.SWITCH);
            case JOINTS -> models.bench().work().focusFreeTerminal();
            case NONE -> middle.pane().takeFocus();
        }
    }

    private void lead(PartKind kind) {
        showColumn();
        left.lead(kind);
    }

    private void show(Caution caution) {
        models.bench().model().spotlight().show(Selection.of(caution.parts(), caution.links()));
        models.shown().view().fit();
        caution.parts().stream().findFirst().map(id -> lookup("#part-" + id)).ifPresent(Node::requestFocus);
    }
}
