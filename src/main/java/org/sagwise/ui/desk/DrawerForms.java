package org.sagwise.ui.desk;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javafx.application.Platform;
import javafx.scene.control.ButtonType;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.TilePane;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import org.controlsfx.control.PrefixSelectionComboBox;
import org.controlsfx.control.SearchableComboBox;
import org.sagwise.part.Catalogue;
import org.sagwise.part.PartKind;
import org.sagwise.part.key.KeySpec;
import org.sagwise.part.key.Keys;
import org.sagwise.plan.drawer.CellMeasurement;
import org.sagwise.plan.drawer.DrawerKeys;
import org.sagwise.plan.drawer.OwnCell;
import org.sagwise.plan.pairing.DrawerWords;
import org.sagwise.quantity.Digits;
import org.sagwise.quantity.Measure;
import org.sagwise.ui.kit.Dialogs;
import org.sagwise.ui.kit.QuantityField;

/** Asks for a cell, a measurement, a set, a reason. What is wrong is told, and nothing typed is lost. */
final class DrawerForms {

    private static final Pattern DAY_FIRST = Pattern.compile("(\\d{1,2})\\.(\\d{1,2})\\.(\\d{4})");

    private final Dialogs dialogs;
    private final DrawerWords words;
    private final Catalogue catalogue;

    DrawerForms(Dialogs dialogs, DrawerWords words, Catalogue catalogue) {
        this.dialogs = dialogs;
        this.words = words;
        this.catalogue = catalogue;
    }

    /** Takes what a form holds; what is against it, in sentences. */
    @FunctionalInterface
    interface Taker<T> {
        List<String> take(T value);
    }

    /** A cell, new or to be changed. */
    void cell(String titleKey, Optional<OwnCell> old, Taker<OwnCell> taker) {
        Map<String, TextField> texts = new LinkedHashMap<>();
        TilePane fields = fields(3);
        TextField mark = text(fields, texts, "mark", old.map(OwnCell::mark).orElse(""));
        text(fields, texts, "name", old.map(OwnCell::name).orElse(""));
        ComboBox<String> model = model(old.flatMap(OwnCell::model));
        fields.getChildren().add(named("model", model));
        text(
                fields,
                texts,
                "bought",
                old.flatMap(OwnCell::bought).map(LocalDate::toString).orElse(""));
        Keys figures = old.map(OwnCell::figures).orElse(Keys.NONE);
        Map<String, ComboBox<String>> choices = new LinkedHashMap<>();
        for (String name : List.of("chemistry", "format")) {
            ComboBox<String> box = choice(name, figures.text(name));
            choices.put(name, box);
            fields.getChildren().add(named(name, box));
        }
        Map<String, QuantityField> numbers = new LinkedHashMap<>();
        for (String name : List.of("capacity_mAh", "internal_mohm", "limit_A")) {
            numbers.put(name, quantity(fields, "drawer-" + name, "window.rated." + name, name));
            figures.number(name).ifPresent(value -> numbers.get(name).write(written(name, value)));
        }
        text(fields, texts, "note", old.map(OwnCell::note).orElse(""));
        ask("drawer-cell", words.say(titleKey), fields, () -> {
            Keys keys = Keys.of("mark", mark.getText().strip());
            keys = with(keys, "name", texts.get("name").getText());
            keys = with(keys, "model", model.getValue() == null ? "" : model.getValue());
            for (Map.Entry<String, ComboBox<String>> each : choices.entrySet()) {
                keys = with(
                        keys,
                        each.getKey(),
                        each.getValue().getValue() == null
                                ? ""
                                : each.getValue().getValue());
            }
            List<String> wrong = new ArrayList<>();
            keys = with(keys, numbers, QuantityField::positive, wrong);
            keys = with(keys, "bought", day(texts.get("bought").getText()));
            keys = with(keys, "note", texts.get("note").getText());
            DrawerKeys.checkCell(keys, "", catalogue)
                    .forEach(it -> wrong.add(
                            said(it.place(), it.sentence(words.format().locale()))));
            return wrong.isEmpty()
                    ? taker.take(
                            kept(OwnCell.of(keys, old.map(OwnCell::measurements).orElse(List.of())), old))
                    : wrong;
        });
    }

    private String said(String place, String sentence) {
        return place.isEmpty() ? sentence : words.say("window.field", name(place), sentence);
    }

    private static OwnCell kept(OwnCell now, Optional<OwnCell> old) {
        return new OwnCell(
                now.mark(),
                now.name(),
                now.model(),
                now.figures(),
                now.bought(),
                now.measurements(),
                old.flatMap(OwnCell::marriage),
                old.flatMap(OwnCell::retirement),
                now.note(),
                old.flatMap(OwnCell::foreign));
    }

    /** A measurement of today, or an older one to be corrected: without any number it is taken out. */
    void measurement(
            String mark, LocalDate today, Optional<CellMeasurement> old, Taker<Optional<CellMeasurement>> taker) {
        Keys before = old.map(CellMeasurement::keys).orElse(Keys.of("on", today.toString()));
        Map<String, TextField> texts = new LinkedHashMap<>();
        TilePane fields = fields(3);
        text(fields, texts, "on", before.text("on").orElse(""));
        Map<String, QuantityField> numbers = new LinkedHashMap<>();
        for (String name : List.of("capacity_mAh", "internal_mohm", "rest_V", "week_V")) {
            numbers.put(name, quantity(fields, "drawer-" + name, "window.measured." + name, name));
            before.number(name).ifPresent(value -> numbers.get(name).write(written(name, value)));
        }
        text(fields, texts, "how", before.text("how").orElse(""));
        ask(
                "drawer-measure",
                words.say(old.isPresent() ? "window.correct.title" : "window.measure.title", mark),
                fields,
                () -> {
                    Keys keys = Keys.of("on", day(texts.get("on").getText()));
                    List<String> wrong = new ArrayList<>();
                    keys = with(keys, numbers, QuantityField::value, wrong);
                    keys = with(keys, "how", texts.get("how").getText());
                    if (old.isPresent()
                            && wrong.isEmpty()
                            && numbers.values().stream().allMatch(QuantityField::isEmpty)) {
                        return taker.take(Optional.empty());
                    }
                    DrawerKeys.checkMeasured(keys, "")
                            .forEach(it -> wrong.add(
                                    said(it.place(), it.sentence(words.format().locale()))));
                    return wrong.isEmpty() ? taker.take(Optional.of(CellMeasurement.of(keys))) : wrong;
                });
    }

    /** A line of words, such as the name of a set or a reason. */
    void line(String id, String title, String labelKey, String begin, Taker<String> taker) {
        Map<String, TextField> texts = new LinkedHashMap<>();
        TilePane fields = fields(1);
        text(fields, texts, labelKey, begin);
        ask(id, title, fields, () -> taker.take(texts.get(labelKey).getText().strip()));
    }

    /** Asks until what is typed can be taken, or the person thinks better. */
    private void ask(String id, String title, TilePane fields, Supplier<List<String>> attempt) {
        Label trouble = new Label();
        trouble.setId(id + "-trouble");
        trouble.setWrapText(true);
        trouble.setMaxWidth(560);
        trouble.getStyleClass().add("field-error");
        VBox content = new VBox(fields, trouble);
        content.getStyleClass().add("drawer-form");
        ButtonType keep = dialogs.agree("drawer.keep");
        List<String> wrong;
        do {
            Platform.runLater(() -> fields.lookup(".text-field").requestFocus());
            Optional<ButtonType> answer =
                    dialogs.ask(id, title, content, List.of(keep, dialogs.leave("dialog.cancel")));
            if (answer.filter(keep::equals).isEmpty()) {
                return;
            }
            wrong = attempt.get();
            trouble.setText(
                    String.join("\n", wrong.stream().filter(it -> !it.isEmpty()).toList()));
        } while (!wrong.isEmpty());
    }

    private static TilePane fields(int columns) {
        TilePane fields = new TilePane();
        fields.setPrefColumns(columns);
        fields.setMinWidth(TilePane.USE_PREF_SIZE);
        fields.getStyleClass().add("drawer-fields");
        return fields;
    }

    private String name(String key) {
        return words.say("window.key." + key.substring(key.lastIndexOf('.') + 1));
    }

    private VBox named(String key, Control field) {
        Label label = new Label(name(key));
        label.setLabelFor(field);
        field.setId("drawer-" + key);
        field.setMaxWidth(Double.MAX_VALUE);
        VBox box = new VBox(label, field);
        box.getStyleClass().add("quantity-field");
        return box;
    }

    private TextField text(TilePane fields, Map<String, TextField> texts, String key, String begin) {
        TextField field = new TextField(begin);
        fields.getChildren().add(named(key, field));
        texts.put(key, field);
        return field;
    }

    private QuantityField quantity(TilePane fields, String id, String labelKey, String key) {
        Measure measure = Measure.ofKey(key).orElseThrow();
        QuantityField field = new QuantityField(
                id, words.say(labelKey), words.say("window.in", measure.scale().symbol()), measure, dialogs.wording());
        fields.getChildren().add(field);
        return field;
    }

    private String written(String key, double value) {
        Measure measure = Measure.ofKey(key).orElseThrow();
        return words.format().print(measure.scale().toUnit(value), measure.scale(), Digits.all());
    }

    private ComboBox<String> model(Optional<String> now) {
        ComboBox<String> box = new SearchableComboBox<>();
        box.getItems().add("");
        box.getItems().addAll(catalogue.models(PartKind.CELL).ids());
        box.setConverter(new StringConverter<>() {
            @Override
            public String toString(String id) {
                return id == null || id.isEmpty()
                        ? words.say("window.no-model")
                        : catalogue
                                .models(PartKind.CELL)
                                .find(id)
                                .map(it -> it.card().title().in(words.format().locale()))
                                .orElse(id);
            }

            @Override
            public String fromString(String shown) {
                return Stream.concat(Stream.of(""), catalogue.models(PartKind.CELL).ids().stream())
                        .filter(id -> toString(id).equals(shown))
                        .findFirst()
                        .orElse("");
            }
        });
        box.setValue(now.orElse(""));
        return box;
    }

    private ComboBox<String> choice(String name, Optional<String> now) {
        ComboBox<String> box = new PrefixSelectionComboBox<>();
        box.getItems().add("");
        DrawerKeys.CELL.stream()
                .filter(spec -> spec.name().equals(name))
                .map(KeySpec::type)
                .map(KeySpec.ChoiceType.class::cast)
                .forEach(type -> box.getItems().addAll(type.choices()));
        box.setValue(now.orElse(""));
        return box;
    }

    /** With the numbers of fields; an empty word is added for each that cannot be read, which its field says. */
    private static Keys with(
            Keys before,
            Map<String, QuantityField> numbers,
            Function<QuantityField, OptionalDouble> reading,
            List<String> wrong) {
        Keys keys = before;
        for (Map.Entry<String, QuantityField> each : numbers.entrySet()) {
            OptionalDouble value = reading.apply(each.getValue());
            Measure measure = Measure.ofKey(each.getKey()).orElseThrow();
            if (value.isPresent()) {
                keys = keys.with(each.getKey(), measure.scale().fromUnit(value.getAsDouble()));
            } else if (!each.getValue().isEmpty()) {
                wrong.add("");
            }
        }
        return keys;
    }

    private static Keys with(Keys keys, String name, String text) {
        return text.isBlank() ? keys : keys.with(name, text.strip());
    }

    /** A day as people write it, year first; anything else as it is, to be complained of. */
    private static String day(String text) {
        Matcher dayFirst = DAY_FIRST.matcher(text.strip());
        return dayFirst.matches()
                ? String.format(
                        Locale.ROOT,
                        "%s-%02d-%02d",
                        dayFirst.group(3),
                        Integer.parseInt(dayFirst.group(2)),
                        Integer.parseInt(dayFirst.group(1)))
                : text.strip();
    }
}
