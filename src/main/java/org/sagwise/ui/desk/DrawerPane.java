package org.sagwise.ui.desk;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SplitPane;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;
import javafx.stage.Stage;
import org.sagwise.file.DrawerCsv;
import org.sagwise.plan.drawer.CellMeasurement;
import org.sagwise.plan.drawer.Drawer;
import org.sagwise.plan.drawer.DrawerBench;
import org.sagwise.plan.drawer.DrawerProblem;
import org.sagwise.plan.drawer.OwnCell;
import org.sagwise.plan.drawer.Retirement;
import org.sagwise.plan.pairing.DrawerWords;
import org.sagwise.scenario.Finding;
import org.sagwise.text.Texts;
import org.sagwise.ui.desk.DrawerModel.Whose;
import org.sagwise.ui.kit.Dialogs;
import org.sagwise.ui.kit.Exports;
import org.sagwise.ui.kit.LatestTask;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.kit.Tip;
import org.sagwise.ui.plot.PlotSaver;
import org.sagwise.ui.settings.LooksModel;
import org.sagwise.ui.text.Wording;

/** The drawer with all that can be done with it. */
final class DrawerPane extends BorderPane {

    private static final KeyCombination UNDO = KeyCombination.valueOf("Shortcut+Z");
    private static final KeyCombination FIND = KeyCombination.valueOf("Shortcut+F");
    private static final int MOST_BYTES = 8 * 1024 * 1024;

    private final DrawerModel model;
    private final DrawerWords words;
    private final LooksModel looks;
    private final Wording wording;
    private final Exports exports;
    private final DrawerLaying laying;
    private final DrawerTable table;
    private final DrawerDetail detail;
    private final PairPane pairs;
    private final TextField search = new TextField();
    private final Label said = new Label();
    private final Label place = new Label();
    private final TabPane tabs = new TabPane();

    DrawerPane(
            DrawerModel model,
            DrawerWords words,
            Exports exports,
            DrawerLaying laying,
            LooksModel looks,
            LatestTask task,
            Wording wording,
            Subscriptions subscriptions) {
        this.model = model;
        this.words = words;
        this.looks = looks;
        this.wording = wording;
        this.exports = exports;
        this.laying = laying;
        table = new DrawerTable(words, model.catalogue());
        detail = new DrawerDetail(words, looks, subscriptions);
        detail.onCorrect(this::correct);
        detail.plots()
                .forEach(plot -> new PlotSaver(
                        plot,
                        () -> only().map(OwnCell::mark).orElse("") + ": "
                                + plot.chart().y().title(),
                        said::setText,
                        exports,
                        wording));
        pairs = new PairPane(words, wording, task, this::takeSet);
        setId("drawer");
        getStyleClass().add("drawer");
        SplitPane split = new SplitPane(table, detail);
        split.setDividerPositions(0.72);
        tabs.getTabs().setAll(tab("cells", split), tab("pairs", pairs));
        tabs.getSelectionModel().selectedItemProperty().subscribe((before, now) -> pairing());
        setTop(tools(subscriptions));
        setCenter(tabs);
        said.setId("drawer-said");
        said.setWrapText(true);
        said.setMinHeight(USE_PREF_SIZE);
        said.managedProperty().bind(said.textProperty().isNotEmpty());
        place.getStyleClass().add("quiet");
        place.setId("drawer-place");
        VBox foot = new VBox(said, place);
        foot.getStyleClass().add("drawer-foot");
        setBottom(foot);
        search.textProperty().subscribe((before, now) -> {
            table.filter(now);
            chooseAny();
        });
        table.getSelectionModel().selectedItemProperty().subscribe((before, now) -> detail.show(only()));
        subscriptions.watch(model.drawerProperty(), this::show);
        addEventHandler(KeyEvent.KEY_PRESSED, this::key);
        table.setOnKeyPressed(event -> {
            if (event.getCode() == KeyCode.ENTER) {
                edit();
                event.consume();
            }
        });
    }

    /** Dialogs over this very window. */
    private DrawerForms forms() {
        return new DrawerForms(new Dialogs((Stage) getScene().getWindow(), looks, wording), words, model.catalogue());
    }

    private Tab tab(String key, Node content) {
        Tab tab = new Tab(words.say("window.tab." + key), content);
        tab.setId("drawer-tab-" + key);
        tab.setClosable(false);
        return tab;
    }

    private FlowPane tools(Subscriptions subscriptions) {
        BooleanBinding none = Bindings.isEmpty(table.getSelectionModel().getSelectedItems());
        search.setId("drawer-search");
        search.setPromptText(words.say("window.search"));
        search.setAccessibleText(words.say("window.search"));
        ToggleButton ofClass = new ToggleButton(words.say("window.class"));
        ofClass.setId("drawer-class");
        Tip.put(ofClass, words.say("window.class.tip"));
        ofClass.setOnAction(event -> open(ofClass.isSelected() ? Whose.CLASS : Whose.OWN));
        subscriptions.watch(model.whoseProperty(), whose -> ofClass.setSelected(whose == Whose.CLASS));
        Button edit = button("edit", this::edit);
        Button measure = button("measure", this::measure);
        List.of(edit, measure).forEach(it -> it.disableProperty().bind(none));
        MenuButton together = menu("together", item("marry", this::marry), item("part", this::part));
        MenuButton retire =
                menu("retire", item("retire", this::retire), item("back", this::back), item("remove", this::remove));
        MenuButton lay = menu("lay", item("in-hand", this::inHand), item("in-place", () -> inPlace(marks())));
        List.of(together, retire, lay).forEach(it -> it.disableProperty().bind(none));
        Button undo = button("undo", () -> tell(model.undo()));
        undo.disableProperty().bind(model.undoableProperty().not());
        FlowPane tools = new FlowPane(
                search,
                button("add", () -> forms().cell("window.add.title", Optional.empty(), this::add)),
                edit,
                measure,
                together,
                retire,
                lay,
                undo,
                menu(
                        "table",
                        item("import", this::load),
                        item("export", () -> save(DrawerCsv.Style.POINT)),
                        item("export-comma", () -> save(DrawerCsv.Style.COMMA))),
                ofClass);
        tools.getStyleClass().add("drawer-tools");
        return tools;
    }

    private Button button(String key, Runnable deed) {
        Button button = new Button(words.say("window." + key));
        button.setId("drawer-" + key);
        Tip.put(button, words.say("window." + key + ".tip"));
        button.setOnAction(event -> deed.run());
        return button;
    }

    private MenuButton menu(String key, MenuItem... items) {
        MenuButton menu = new MenuButton(words.say("window.menu." + key));
        menu.setId("drawer-menu-" + key);
        menu.getItems().setAll(items);
        return menu;
    }

    private MenuItem item(String key, Runnable deed) {
        MenuItem item = new MenuItem(words.say("window." + key));
        item.setId("drawer-" + key);
        item.setOnAction(event -> deed.run());
        return item;
    }

    private void key(KeyEvent event) {
        if (UNDO.match(event)) {
            tell(model.undo());
            event.consume();
        } else if (FIND.match(event)) {
            search.requestFocus();
            event.consume();
        }
    }

    /** Shows one of the drawers, and says what is wrong with it. */
    void open(Whose whose) {
        tell(model.open(whose));
        place.setText(whose == Whose.OWN ? words.say("window.place", model.place()) : words.say("window.class.place"));
        table.requestFocus();
    }

    private void show(Drawer drawer) {
        table.show(drawer);
        chooseAny();
        pairing();
    }

    /** One cell is chosen for as long as there is any. */
    private void chooseAny() {
        if (table.chosen().isEmpty() && !table.getItems().isEmpty()) {
            table.getSelectionModel().select(0);
        }
        detail.show(only());
    }

    private void pairing() {
        if (tabs.getSelectionModel().getSelectedIndex() == 1) {
            pairs.show(model.drawer());
        }
    }

    private Optional<OwnCell> only() {
        return Optional.ofNullable(table.getSelectionModel().getSelectedItem());
    }

    private List<String> marks() {
        return table.chosen().stream().map(OwnCell::mark).toList();
    }

    private void tell(List<String> sentences) {
        said.setText(String.join("\n", sentences));
    }

    private void say(String key, Object... details) {
        said.setText(words.say(key, details));
    }

    private List<String> add(OwnCell cell) {
        List<String> wrong = model.change(
                drawer -> drawer.find(cell.mark()).isPresent()
                        ? List.of(Finding.of("", DrawerProblem.DUPLICATE_MARK, cell.mark()))
                        : List.of(),
                drawer -> drawer.with(cell));
        if (wrong.isEmpty()) {
            table.choose(List.of(cell.mark()));
            say("window.added", cell.mark());
        }
        return wrong;
    }

    private void edit() {
        only().ifPresent(old -> forms().cell("window.edit.title", Optional.of(old), now -> {
            List<String> wrong = model.change(
                    drawer -> !now.mark().equals(old.mark())
                                    && drawer.find(now.mark()).isPresent()
                            ? List.of(Finding.of("", DrawerProblem.DUPLICATE_MARK, now.mark()))
                            : drawer.unknown(List.of(old.mark())),
                    drawer -> drawer.change(old.mark(), same -> now));
            if (wrong.isEmpty()) {
                table.choose(List.of(now.mark()));
            }
            return wrong;
        }));
    }

    private void measure() {
        only().ifPresent(cell -> forms().measurement(
                        cell.mark(),
                        LocalDate.now(),
                        Optional.empty(),
                        measured -> measured(cell, measured.orElseThrow())));
    }

    private void correct() {
        only().filter(cell -> !cell.measurements().isEmpty()).ifPresent(cell -> {
            CellMeasurement last = cell.measurements().get(cell.measurements().size() - 1);
            forms().measurement(
                            cell.mark(), LocalDate.now(), Optional.of(last), now -> corrected(cell.mark(), last, now));
        });
    }

    private List<String> corrected(String mark, CellMeasurement last, Optional<CellMeasurement> now) {
        return model.change(
                drawer -> drawer.unknown(List.of(mark)),
                drawer -> drawer.change(mark, cell -> {
                    List<CellMeasurement> all = new ArrayList<>(cell.measurements());
                    all.remove(last);
                    now.ifPresent(all::add);
                    return cell.withMeasurements(all);
                }));
    }

    private List<String> measured(OwnCell cell, CellMeasurement measured) {
        List<String> wrong = model.change(
                drawer -> drawer.unknown(List.of(cell.mark())),
                drawer -> drawer.change(cell.mark(), it -> it.with(measured)));
        if (wrong.isEmpty()) {
            say("window.written", cell.mark());
        }
        return wrong;
    }

    private void marry() {
        marry(marks());
    }

    private void marry(List<String> marks) {
        List<Finding> wrong = model.drawer().againstMarrying("", marks);
        if (!wrong.isEmpty()) {
            tell(wrong.stream().map(it -> it.text(words.format().locale())).toList());
            return;
        }
        forms().line(
                        "drawer-marry-form",
                        words.say("window.marry.title", String.join(", ", marks)),
                        "window.key.set",
                        freshSet(),
                        set -> {
                            List<String> refused = set.isEmpty() || set.length() > 32
                                    ? List.of(words.say("window.set-name"))
                                    : model.change(
                                            drawer -> drawer.againstMarrying(set, marks),
                                            drawer -> drawer.marry(set, marks, Optional.of(LocalDate.now())));
                            if (refused.isEmpty()) {
                                said.setText(Texts.in("cautions", words.format().locale())
                                        .raw("married-apart.advice"));
                            }
                            return refused;
                        });
    }

    private String freshSet() {
        int number = 1;
        while (model.drawer().sets().containsKey(words.say("window.set", number))) {
            number++;
        }
        return words.say("window.set", number);
    }

    private void part() {
        List<String> sets = table.chosen().stream()
                .flatMap(cell -> cell.marriage().stream())
                .map(it -> it.set())
                .distinct()
                .toList();
        if (sets.isEmpty()) {
            say("window.no-set");
            return;
        }
        tell(model.change(drawer -> List.of(), drawer -> {
            Drawer now = drawer;
            for (String set : sets) {
                now = now.divorce(set);
            }
            return now;
        }));
    }

    private void retire() {
        List<String> marks = marks();
        forms().line(
                        "drawer-retire-form",
                        words.say("window.retire.title", String.join(", ", marks)),
                        "window.key.why",
                        "",
                        why -> {
                            List<String> wrong = changeAll(
                                    marks,
                                    cell -> cell.withRetirement(
                                            Optional.of(new Retirement(Optional.of(LocalDate.now()), why))));
                            if (wrong.isEmpty()) {
                                said.setText(Texts.in("notices", words.format().locale())
                                        .raw("safety.damaged-cell.text"));
                            }
                            return wrong;
                        });
    }

    private void back() {
        tell(changeAll(marks(), cell -> cell.withRetirement(Optional.empty())));
    }

    private List<String> changeAll(List<String> marks, Function<OwnCell, OwnCell> change) {
        return model.change(drawer -> drawer.unknown(marks), drawer -> {
            Drawer now = drawer;
            for (String mark : marks) {
                now = now.change(mark, change::apply);
            }
            return now;
        });
    }

    private void remove() {
        List<String> marks = marks();
        List<String> wrong = model.change(drawer -> drawer.unknown(marks), drawer -> drawer.without(marks));
        if (wrong.isEmpty()) {
            say("window.removed", String.join(", ", marks));
        } else {
            tell(wrong);
        }
    }

    private void inHand() {
        only().ifPresent(cell -> {
            if (DrawerBench.canLie(cell)) {
                laying.inHand(DrawerBench.part(cell, model.drawer(), model.catalogue()));
            } else {
                say("lay.unknown", cell.mark());
            }
        });
    }

    private void inPlace(List<String> marks) {
        List<OwnCell> cells = marks.stream()
                .flatMap(mark -> model.drawer().find(mark).stream())
                .toList();
        Optional<OwnCell> unknown =
                cells.stream().filter(cell -> !DrawerBench.canLie(cell)).findFirst();
        if (unknown.isPresent()) {
            say("lay.unknown", unknown.get().mark());
            return;
        }
        List<String> onBench = laying.places(cells.size());
        if (onBench.isEmpty()) {
            say("window.no-place", cells.size());
            return;
        }
        List<String> wrong = new ArrayList<>();
        for (int i = 0; i < cells.size(); i++) {
            wrong.addAll(laying.perform(
                    DrawerBench.inPlaceOf(onBench.get(i), cells.get(i), model.drawer(), model.catalogue())));
        }
        if (wrong.isEmpty()) {
            say("window.laid", String.join(", ", marks), String.join(", ", onBench));
        } else {
            tell(wrong);
        }
    }

    private void takeSet(List<String> marks, boolean lays) {
        if (lays) {
            inPlace(marks);
        } else {
            marry(marks);
        }
    }

    private void load() {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(words.say("window.import"));
        chooser.getExtensionFilters().add(new FileChooser.ExtensionFilter("CSV", "*.csv", "*.txt", "*.tsv"));
        Optional.ofNullable(chooser.showOpenDialog(getScene().getWindow())).ifPresent(file -> load(file.toPath()));
    }

    /** Adds what a table says; if anything is wrong with it, nothing. */
    void load(Path file) {
        byte[] bytes;
        try (var stream = Files.newInputStream(file)) {
            bytes = stream.readNBytes(MOST_BYTES + 1);
        } catch (IOException failure) {
            said.setText(words.say("window.unreadable", file.toString(), String.valueOf(failure.getMessage())));
            return;
        }
        Consumer<DrawerCsv.Read.Ok> done = ok -> say("cli.imported", ok.cells(), ok.measurements());
        List<String> wrong = model.change(
                drawer -> DrawerCsv.read(bytes, drawer, model.catalogue(), DrawerCsv.Precedence.NEITHER)
                                instanceof DrawerCsv.Read.Refused refused
                        ? refused.findings()
                        : List.of(),
                drawer -> {
                    DrawerCsv.Read.Ok ok = (DrawerCsv.Read.Ok)
                            DrawerCsv.read(bytes, drawer, model.catalogue(), DrawerCsv.Precedence.NEITHER);
                    done.accept(ok);
                    return ok.drawer();
                });
        if (!wrong.isEmpty()) {
            tell(wrong);
        }
    }

    private void save(DrawerCsv.Style style) {
        byte[] bytes = DrawerCsv.write(model.drawer(), style).getBytes(StandardCharsets.UTF_8);
        exports.save(getScene().getWindow(), words.say("window.title"), "csv", bytes)
                .ifPresent(said::setText);
    }
}
