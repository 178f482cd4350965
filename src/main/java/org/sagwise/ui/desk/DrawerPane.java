package org.sagwise.ui.desk;

import java.util.List;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.ScrollPane;
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
import javafx.stage.Stage;
import javafx.stage.Window;
import org.sagwise.file.DrawerCsv;
import org.sagwise.plan.drawer.Drawer;
import org.sagwise.plan.drawer.OwnCell;
import org.sagwise.plan.pairing.DrawerWords;
import org.sagwise.ui.desk.DrawerModel.Whose;
import org.sagwise.ui.kit.Dialogs;
import org.sagwise.ui.kit.Exports;
import org.sagwise.ui.kit.LatestTask;
import org.sagwise.ui.kit.PlainScroll;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.kit.TableRoom;
import org.sagwise.ui.kit.Tip;
import org.sagwise.ui.plot.PlotSaver;
import org.sagwise.ui.settings.LooksModel;
import org.sagwise.ui.text.Wording;

/** The drawer with all that can be done with it. */
final class DrawerPane extends BorderPane implements DrawerActions.View {

    private static final KeyCombination UNDO = KeyCombination.valueOf("Shortcut+Z");
    private static final KeyCombination FIND = KeyCombination.valueOf("Shortcut+F");

    private final DrawerModel model;
    private final DrawerWords words;
    private final DrawerActions actions;
    private final DrawerTableFiles files;
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
        actions = new DrawerActions(model, words, laying, this, window -> new Dialogs((Stage) window, looks, wording));
        files = new DrawerTableFiles(model, words, exports, this);
        table = new DrawerTable(words, model.catalogue());
        new TableRoom(table, looks, subscriptions);
        detail = new DrawerDetail(words, looks, subscriptions);
        detail.onCorrect(actions::correct);
        detail.plots()
                .forEach(plot -> new PlotSaver(
                        plot,
                        () -> only().map(OwnCell::mark).orElse("") + ": "
                                + plot.chart().y().title(),
                        this::say,
                        exports,
                        wording));
        pairs = new PairPane(words, wording, task, actions::takeSet);
        setId("drawer");
        getStyleClass().add("drawer");
        ScrollPane one = PlainScroll.of(detail, "drawer-one");
        one.setFitToHeight(true);
        SplitPane split = new SplitPane(table, one);
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
        place.setWrapText(true);
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
                actions.edit();
                event.consume();
            }
        });
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
        Button edit = button("edit", actions::edit);
        Button measure = button("measure", actions::measure);
        List.of(edit, measure).forEach(it -> it.disableProperty().bind(none));
        MenuButton together = menu("together", item("marry", actions::marry), item("part", actions::part));
        MenuButton retire = menu(
                "retire",
                item("retire", actions::retire),
                item("back", actions::back),
                item("remove", actions::remove));
        MenuButton lay = menu("lay", item("in-hand", actions::inHand), item("in-place", actions::inPlace));
        List.of(together, retire, lay).forEach(it -> it.disableProperty().bind(none));
        Button undo = button("undo", actions::undo);
        undo.disableProperty().bind(model.undoableProperty().not());
        FlowPane tools = new FlowPane(
                search,
                button("add", actions::add),
                edit,
                measure,
                together,
                retire,
                lay,
                undo,
                menu(
                        "table",
                        item("import", files::load),
                        item("export", () -> files.save(DrawerCsv.Style.POINT)),
                        item("export-comma", () -> files.save(DrawerCsv.Style.COMMA))),
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
            actions.undo();
            event.consume();
        } else if (FIND.match(event)) {
            search.requestFocus();
            event.consume();
        }
    }

    /** Shows one of the drawers, and says what is wrong with it. */
    void open(Whose whose) {
        actions.open(whose);
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

    @Override
    public List<OwnCell> chosen() {
        return table.chosen();
    }

    @Override
    public Optional<OwnCell> only() {
        return Optional.ofNullable(table.getSelectionModel().getSelectedItem());
    }

    @Override
    public void choose(List<String> marks) {
        table.choose(marks);
    }

    @Override
    public void say(String sentence) {
        said.setText(sentence);
    }

    @Override
    public Window window() {
        return getScene().getWindow();
    }
}
