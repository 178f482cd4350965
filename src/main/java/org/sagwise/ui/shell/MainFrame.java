package org.sagwise.ui.shell;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.control.Menu;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;
import org.sagwise.hazard.Caution;
import org.sagwise.interaction.Selection;
import org.sagwise.lesson.LessonPlayer;
import org.sagwise.report.course.ClockTexts;
import org.sagwise.run.playback.Halt;
import org.sagwise.ui.clock.CurvesDrawer;
import org.sagwise.ui.document.DropTarget;
import org.sagwise.ui.kit.Commands;
import org.sagwise.ui.kit.Controls;
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
    private final Heading heading;
    private final BenchArea middle;
    private final CurvesDrawer curves;
    private final SideColumn side;
    private final LeftPages left;
    private final Turn turn;
    private final TeachingNotice notice;

    MainFrame(
            Models models,
            Commands commands,
            Consumer<Path> openLessons,
            Wording wording,
            Subscriptions subscriptions) {
        this.models = models;
        this.openLessons = openLessons;
        getStyleClass().add("frame");
        Controls controls = new Controls(wording, subscriptions);
        ClockTexts clockTexts = new ClockTexts(wording.locale());
        heading = new Heading(models, commands, this::show, openLessons, controls, clockTexts, wording, subscriptions);
        setTop(heading);
        curves = new CurvesDrawer(
                models.time().clock(), commands, models.shown().looks(), controls, clockTexts, subscriptions);
        curves.prefHeightProperty().bind(heightProperty().multiply(CURVES_SHARE));
        setBottom(foot);
        middle = new BenchArea(models, commands, this::showCard, controls, wording, subscriptions);
        side = new SideColumn(models.bench().model(), this::show, models.bench().cures(), wording, subscriptions);
        side.maxWidthProperty().bind(widthProperty().multiply(LARGEST_COLUMN_SHARE));
        setRight(side);
        left = new LeftPages(models, commands, controls, wording, subscriptions);
        left.column().maxWidthProperty().bind(widthProperty().multiply(LARGEST_COLUMN_SHARE));
        turn = new Turn(models.bench().model(), subscriptions);
        notice = new TeachingNotice(wording.locale());
        arrangeOnChange(subscriptions);
        DropTarget.on(this, this::take);
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
        subscriptions.watch(models.time().clock().haltProperty(), now -> arrange());
    }

    private void arrange() {
        Arrangement.Room room = new Arrangement.Room(
                getWidth(), getHeight(), models.shown().looks().get().textScale());
        Arrangement now = Arrangement.of(wanted(), room);
        setLeft(now.left() ? left.column() : null);
        left.project(models.shown().looks().projectorProperty().get());
        setRight(now.side() ? side : null);
        pseudoClassStateChanged(ROOMY, now.roomy());
        placeNotice(now.noticeBeside());
        placeCurves(now.curves());
    }

    private Arrangement.Wanted wanted() {
        Optional<LessonPlayer> lesson = models.lessons().room().player();
        return new Arrangement.Wanted(
                lesson.isPresent(),
                lesson.flatMap(LessonPlayer::beside).isPresent(),
                isColumnWanted(),
                turn.left().get(),
                models.shown().preferences().get().curves() == Shown.SHOWN,
                models.time().clock().haltProperty().get().filter(Halt::isGrave).isPresent(),
                models.shown().looks().projectorProperty().get());
    }

    private boolean isColumnWanted() {
        return models.shown().preferences().get().examples() == Shown.SHOWN;
    }

    private void placeNotice(boolean beside) {
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
        left.enter(door);
        turn.ask();
    }

    /** Shows the lessons to choose from. */
    void showLessons() {
        turn.ask();
        left.column().show(LeftColumn.Page.LESSONS);
    }

    List<Menu> menus() {
        return heading.menus();
    }

    /** Shows the card of what is chosen, ready to be filled in. */
    void showCard() {
        turn.ask();
        left.showCard();
    }

    /** Shows the shelf, ready to be searched. */
    void findPart() {
        showColumn();
        left.findPart();
    }

    /** Shows the column at the left, or takes it away. */
    void toggleColumn() {
        if (isColumnWanted() && getLeft() != null) {
            models.shown().preferences().change(now -> now.withExamples(Shown.HIDDEN));
            turn.leave();
        } else {
            showColumn();
        }
    }

    private void showColumn() {
        models.shown().preferences().change(now -> now.withExamples(Shown.SHOWN));
        turn.ask();
    }

    private void show(Caution caution) {
        models.bench().model().spotlight().show(Selection.of(caution.parts(), caution.links()));
        models.shown().view().fit();
        caution.parts().stream().findFirst().map(id -> lookup("#part-" + id)).ifPresent(Node::requestFocus);
    }
}
