package org.sagwise.ui.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.sagwise.plan.drawer.Drawer;
import org.sagwise.plan.drawer.OwnCell;
import org.sagwise.plan.pairing.DrawerWords;
import org.sagwise.plan.pairing.MatchedSet;
import org.sagwise.plan.pairing.Matching;
import org.sagwise.plan.pairing.PackLife;
import org.sagwise.plan.pairing.PairingWish;
import org.sagwise.quantity.Digits;
import org.sagwise.quantity.Measure;
import org.sagwise.quantity.Unit;
import org.sagwise.text.Texts;
import org.sagwise.ui.kit.ChoiceDialog;
import org.sagwise.ui.kit.LatestTask;
import org.sagwise.ui.kit.QuantityField;
import org.sagwise.ui.kit.WorkLine;
import org.sagwise.ui.kit.WrappedLabel;
import org.sagwise.ui.text.Wording;

/** Which cells of a drawer belong together: the wish to the left, the sets to the right. */
final class PairPane extends HBox {

    /** What is found for a wish, and what it is worth. */
    private record Answer(Matching matching, Optional<PackLife> life) {}

    private final DrawerWords words;
    private final LatestTask task;
    private final ChoiceDialog<Integer> size;
    private final QuantityField capacity;
    private final QuantityField resistance;
    private final CheckBox marriedToo = new CheckBox();
    private final Label how = label("pair-how");
    private final Label rest = label("pair-rest");
    private final Label life = label("pair-life");
    private final Button marry = new Button();
    private final Button lay = new Button();
    private final TableView<MatchedSet> sets = new TableView<>();
    private Drawer drawer = Drawer.EMPTY;

    /**
     * @param task computes behind the scenes
     * @param take what to do with a set: false to marry it, true to lay it on the bench
     */
    PairPane(DrawerWords words, Wording wording, LatestTask task, BiConsumer<List<String>, Boolean> take) {
        this.words = words;
        this.task = task;
        getStyleClass().add("window-row");
        size = new ChoiceDialog<>(
                "pair-size",
                words.say("window.pair.size"),
                IntStream.rangeClosed(2, PairingWish.MOST_SIZE).boxed().toList(),
                String::valueOf,
                String::valueOf);
        capacity = weight("capacity", PairingWish.PAIRS.capacityWeight(), wording);
        resistance = weight("resistance", PairingWish.PAIRS.resistanceWeight(), wording);
        marriedToo.setText(words.say("window.pair.married-too"));
        marriedToo.setId("pair-married-too");
        marriedToo.setWrapText(true);
        size.chosenProperty().subscribe((before, now) -> refresh());
        capacity.textProperty().subscribe((before, now) -> refresh());
        resistance.textProperty().subscribe((before, now) -> refresh());
        marriedToo.selectedProperty().subscribe((before, now) -> refresh());
        button(marry, "marry", take, false);
        button(lay, "lay", take, true);
        Label advice = label("pair-advice");
        advice.setText(Texts.in("cautions", words.format().locale()).raw("mixed-health.advice"));
        VBox wish = new VBox(size, capacity, resistance, marriedToo, marry, lay);
        wish.getStyleClass().add("window-options");
        wish.setMinWidth(USE_PREF_SIZE);
        table();
        VBox found = new VBox(how, new WorkLine("pair", task, how, wording).keepingRoom(), sets, life, rest, advice);
        found.getStyleClass().add("drawer-detail");
        HBox.setHgrow(found, Priority.ALWAYS);
        VBox.setVgrow(sets, Priority.ALWAYS);
        getChildren().addAll(wish, found);
    }

    private static Label label(String id) {
        Label label = WrappedLabel.of("");
        label.setId(id);
        return label;
    }

    private QuantityField weight(String name, double usual, Wording wording) {
        QuantityField field = new QuantityField(
                "pair-" + name, words.say("window.pair." + name), "", Measure.of(Unit.FRACTION), wording);
        field.write(words.format().number(usual, Digits.all()));
        return field;
    }

    private void button(Button button, String name, BiConsumer<List<String>, Boolean> take, boolean lays) {
        button.setText(words.say("window.pair." + name));
        button.setId("pair-" + name);
        button.setWrapText(true);
        button.setMaxWidth(Double.MAX_VALUE);
        button.disableProperty()
                .bind(sets.getSelectionModel().selectedItemProperty().isNull());
        button.setOnAction(
                event -> take.accept(sets.getSelectionModel().getSelectedItem().marks(), lays));
    }

    private void table() {
        sets.setId("pair-sets");
        column("set", set -> String.join(" + ", set.marks()), "words");
        column("capacity-spread", set -> words.share(OptionalDouble.of(set.capacitySpread())), "number");
        column("resistance-spread", set -> words.share(OptionalDouble.of(set.resistanceSpread())), "number");
        column(
                "each",
                set -> set.cells().stream()
                        .map(cell -> words.capacity(cell.capacityAh()) + " " + words.resistance(cell.resistanceOhm()))
                        .collect(Collectors.joining(";  ")),
                "words");
        sets.setColumnResizePolicy(TableView.CONSTRAINED_RESIZE_POLICY_FLEX_LAST_COLUMN);
        sets.setPlaceholder(label("pair-none"));
    }

    private void column(String key, Function<MatchedSet, String> cell, String style) {
        TableColumn<MatchedSet, String> column = new TableColumn<>(words.say("column." + key));
        column.setCellValueFactory(row -> new ReadOnlyStringWrapper(cell.apply(row.getValue())));
        column.getStyleClass().add(style);
        column.setReorderable(false);
        column.setSortable(false);
        column.setPrefWidth(key.equals("each") ? 260 : 120);
        sets.getColumns().add(column);
    }

    /** Asks again, of this drawer. */
    void show(Drawer now) {
        drawer = now;
        refresh();
    }

    private Optional<PairingWish> wish() {
        OptionalDouble ofCapacity = capacity.value();
        OptionalDouble ofResistance = resistance.value();
        boolean good = ofCapacity.isPresent()
                && ofResistance.isPresent()
                && ofCapacity.getAsDouble() >= 0
                && ofResistance.getAsDouble() >= 0
                && ofCapacity.getAsDouble() + ofResistance.getAsDouble() > 0
                && ofCapacity.getAsDouble() + ofResistance.getAsDouble() < 1e6;
        return good
                ? Optional.of(new PairingWish(
                        size.get(), ofCapacity.getAsDouble(), ofResistance.getAsDouble(), marriedToo.isSelected()))
                : Optional.empty();
    }

    private void refresh() {
        Optional<PairingWish> wish = wish();
        if (wish.isEmpty()) {
            how.setText(words.say("cli.weights"));
            return;
        }
        Drawer asked = drawer;
        how.setText(words.say("window.pair.busy"));
        task.ask(
                () -> {
                    Matching matching = Matching.of(asked, wish.get(), words.catalogue());
                    return new Answer(matching, PackLife.of(matching, asked, words.catalogue()));
                },
                this::tell);
    }

    private void tell(Answer answer) {
        Matching matching = answer.matching();
        how.setText(words.how(matching.wish()));
        sets.getItems().setAll(matching.sets());
        ((Label) sets.getPlaceholder())
                .setText(words.say("pair.none", matching.wish().size()));
        if (!matching.sets().isEmpty()) {
            sets.getSelectionModel().select(0);
        }
        life.setText(answer.life().map(it -> words.life(it, matching.wish())).orElse(""));
        List<String> others = new ArrayList<>();
        if (!matching.left().isEmpty()) {
            others.add(words.say(
                    "pair.left", matching.left().stream().map(OwnCell::mark).collect(Collectors.joining(", "))));
        }
        matching.unfit().forEach((cell, why) -> others.add(words.unfit(cell, why, matching.wish())));
        rest.setText(String.join(" ", others));
    }
}
