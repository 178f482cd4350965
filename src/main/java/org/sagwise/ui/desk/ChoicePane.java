package org.sagwise.ui.desk;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.ListChangeListener;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.sagwise.part.Catalogue;
import org.sagwise.part.PartKind;
import org.sagwise.picture.geometry.Point;
import org.sagwise.picture.plot.Mark;
import org.sagwise.plan.pack.PackCell;
import org.sagwise.plan.pack.PackChoice;
import org.sagwise.plan.pack.PackPlan;
import org.sagwise.plan.pack.PackPlanner;
import org.sagwise.plan.pack.PackWish;
import org.sagwise.plan.pack.PackWords;
import org.sagwise.quantity.QuantityFormat;
import org.sagwise.scenario.Scenario;
import org.sagwise.ui.kit.LatestTask;
import org.sagwise.ui.kit.NamedRows;
import org.sagwise.ui.kit.PlainScroll;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.kit.TableRoom;
import org.sagwise.ui.kit.WorkLine;
import org.sagwise.ui.kit.WrappedLabel;
import org.sagwise.ui.plot.PlotView;
import org.sagwise.ui.settings.LooksModel;
import org.sagwise.ui.text.Wording;

/** A wish, and every layout for it: as a table, as a picture of what trades against what, and one by one. */
final class ChoicePane extends BorderPane {

    /** Share of the width that the form may take where text is large. */
    private static final double LARGEST_FORM_SHARE = 0.42;

    private final Catalogue catalogue;
    private final Supplier<List<PackCell>> drawer;
    private final Wording wording;
    private final PackWords words;
    private final ChoiceForm form;
    private final ChoiceTable table;
    private final PlotView plot;
    private final LatestTask task;
    private final Label answer = WrappedLabel.of("", "words");
    private final VBox detail = new VBox();
    private final Button choose = new Button();
    private final Button cancel = new Button();
    private final Button open = new Button();
    private final Button compare = new Button();
    private final ProgressBar progress = new ProgressBar(0);
    private AtomicBoolean stop = new AtomicBoolean();
    private Optional<PackPlan> plan = Optional.empty();

    /**
     * @param drawer gives the cells of the own drawer
     * @param opened takes the bench that was chosen
     * @param compared takes two to set beside each other
     */
    ChoicePane(
            Catalogue catalogue,
            Supplier<List<PackCell>> drawer,
            LooksModel looks,
            Consumer<Scenario> opened,
            BiConsumer<Scenario, Scenario> compared,
            Wording wording,
            Subscriptions subscriptions) {
        this.catalogue = catalogue;
        this.drawer = drawer;
        this.wording = wording;
        this.words = PackWords.byTitle(QuantityFormat.forPeople(wording.locale()), catalogue);
        setId("choice");
        // A thread of its own: seconds of reckoning must not keep the bench from being painted.
        ExecutorService behind = Executors.newSingleThreadExecutor(ChoicePane::quiet);
        subscriptions.add(() -> {
            stop.set(true);
            behind.shutdownNow();
        });
        task = LatestTask.in(behind);
        form = new ChoiceForm(wording);
        table = new ChoiceTable(words, wording.say("choice.nothing-yet"));
        plot = new PlotView(looks, new SimpleObjectProperty<>(Optional.empty()), subscriptions);
        plot.setId("choice-plot");
        plot.readByKeys();
        plot.onPick((Point point) -> plot.chart().nearest(point).ifPresent(this::select));
        new TableRoom(table, looks, subscriptions);
        answer.setId("choice-answer");
        button(choose, "choice.do", "choice-do", this::start);
        choose.setDefaultButton(true);
        button(cancel, "choice.cancel", "choice-cancel", this::callOff);
        button(
                open,
                "choice.open",
                "choice-open",
                () -> one().map(PackChoice::bench).ifPresent(opened));
        button(compare, "choice.compare", "choice-compare", () -> {
            List<PackChoice> two = chosen();
            compared.accept(two.get(0).bench(), two.get(1).bench());
        });
        ScrollPane wishes = PlainScroll.of(form, "choice-form");
        VBox.setVgrow(wishes, Priority.ALWAYS);
        // What begins it all is in sight however far the form is rolled.
        VBox left = new VBox(wishes, startRow());
        left.maxWidthProperty().bind(widthProperty().multiply(LARGEST_FORM_SHARE));
        setLeft(left);
        setCenter(middle());
        setBottom(foot());
        table.getSelectionModel().getSelectedItems().addListener((ListChangeListener<PackChoice>) change -> tell());
        busy(false);
        task.stateProperty().subscribe(this::endInVain);
        tell();
    }

    /** Ended without an answer: it took too long, or too much memory. */
    private void endInVain(LatestTask.State now) {
        WorkLine.why(now, wording).ifPresent(why -> {
            busy(false);
            answer.setText(why);
        });
    }

    private static Thread quiet(Runnable work) {
        Thread thread = new Thread(work, "choose-a-pack");
        thread.setDaemon(true);
        return thread;
    }

    private void button(Button button, String key, String id, Runnable action) {
        button.setText(wording.say(key));
        button.setId(id);
        button.setMinWidth(USE_PREF_SIZE);
        button.setOnAction(event -> action.run());
    }

    private HBox startRow() {
        progress.setId("choice-progress");
        progress.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(progress, Priority.ALWAYS);
        HBox row = new HBox(choose, progress, cancel);
        row.setAlignment(Pos.CENTER_LEFT);
        row.getStyleClass().add("window-row");
        return row;
    }

    private VBox middle() {
        detail.getStyleClass().add("choice-detail");
        ScrollPane words = PlainScroll.of(detail, "choice-words");
        HBox below = new HBox(words, plot);
        below.getStyleClass().add("choice-below");
        HBox.setHgrow(plot, Priority.ALWAYS);
        VBox.setVgrow(table, Priority.ALWAYS);
        VBox.setVgrow(below, Priority.ALWAYS);
        VBox middle = new VBox(answer, table, below);
        middle.setMinWidth(0);
        middle.getStyleClass().add("choice-middle");
        return middle;
    }

    private HBox foot() {
        Label hint = WrappedLabel.of(wording.say("choice.hint"), "quiet");
        hint.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(hint, Priority.ALWAYS);
        HBox foot = new HBox(hint, compare, open);
        foot.setAlignment(Pos.CENTER_LEFT);
        foot.getStyleClass().add("window-row");
        return foot;
    }

    /** Stops what is being worked out, if anything is; what there is of it is shown. */
    void callOff() {
        stop.set(true);
    }

    private void busy(boolean now) {
        choose.setDisable(now);
        progress.setVisible(now);
        cancel.setVisible(now);
    }

    private void start() {
        Optional<PackWish> wish = form.wish();
        if (wish.isEmpty()) {
            return;
        }
        List<PackCell> cells = (form.isOwn() ? drawer.get() : catalogueCells())
                .stream()
                        .filter(cell -> form.format().map(cell.format()::equals).orElse(true))
                        .toList();
        if (cells.isEmpty()) {
            answer.setText(wording.say(form.isOwn() ? "choice.empty-drawer" : "choice.no-cells"));
            return;
        }
        AtomicBoolean stopped = new AtomicBoolean();
        stop = stopped;
        progress.setProgress(0);
        busy(true);
        answer.setText(wording.say("choice.working"));
        task.ask(
                () -> PackPlanner.plan(wish.get(), cells, catalogue, wording.locale(), (done, all) -> {
                    Platform.runLater(() -> progress.setProgress((double) done / all));
                    return !stopped.get();
                }),
                (Consumer<PackPlan>) this::show);
    }

    private List<PackCell> catalogueCells() {
        return catalogue.models(PartKind.CELL).all().stream()
                .filter(model -> !PackCell.isPoor(model))
                .map(PackCell::of)
                .toList();
    }

    private void show(PackPlan found) {
        plan = Optional.of(found);
        busy(false);
        answer.setText(words.answer(found));
        table.getSortOrder().clear();
        table.getItems().setAll(found.choices());
        table.getSelectionModel().clearSelection();
        found.best().or(found::nearest).ifPresent(best -> {
            table.getSelectionModel().select(best);
            table.scrollTo(best);
        });
        tell();
    }

    private List<PackChoice> chosen() {
        return List.copyOf(table.getSelectionModel().getSelectedItems());
    }

    private Optional<PackChoice> one() {
        return Optional.ofNullable(table.getSelectionModel().getSelectedItem());
    }

    private void select(Mark mark) {
        table.getItems().stream()
                .filter(choice -> ChoiceChart.is(choice, mark))
                .findFirst()
                .ifPresent(choice -> table.getSelectionModel()
                        .clearAndSelect(table.getItems().indexOf(choice)));
    }

    private void tell() {
        List<PackChoice> chosen = chosen();
        open.setDisable(chosen.size() != 1);
        compare.setDisable(chosen.size() != 2);
        plot.show(ChoiceChart.of(table.getItems(), chosen, words, wording), Optional.empty());
        plot.setVisible(!table.getItems().isEmpty());
        plot.setAccessibleText(wording.say("choice.plot.text"));
        detail.getChildren().clear();
        one().ifPresent(this::tell);
        plan.ifPresent(it ->
                words.notes(it, catalogue).forEach(note -> detail.getChildren().add(WrappedLabel.of(note, "quiet"))));
    }

    private void tell(PackChoice choice) {
        NamedRows rows = new NamedRows();
        words.rows(choice, catalogue).forEach(row -> rows.add(row.label(), row.value(), "choice-value-" + row.key()));
        detail.getChildren().add(rows);
    }
}
