package org.sagwise.ui.inspector;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.Label;
import javafx.scene.control.MenuItem;
import javafx.scene.control.TextField;
import javafx.scene.input.ContextMenuEvent;
import org.sagwise.part.key.EffectiveKeys;
import org.sagwise.part.key.KeySpec;
import org.sagwise.quantity.KeyNumbers;
import org.sagwise.quantity.Parsed;
import org.sagwise.ui.desk.VaryWindow;
import org.sagwise.ui.kit.LookUp;
import org.sagwise.ui.kit.Tip;
import org.sagwise.ui.text.Wording;

/** A number with its unit; an empty field stands for what the model says. */
final class NumberRow extends CardRow {

    private final TextField field = new TextField();
    private final KeyNumbers numbers;
    private final Supplier<EffectiveKeys> effect;
    private final Label about = new Label();
    private String shown = "";

    NumberRow(KeySpec spec, Change change, Supplier<EffectiveKeys> effect, Wording wording) {
        super(spec, change, wording);
        this.numbers = new KeyNumbers(wording.locale());
        this.effect = effect;
        field.getStyleClass().add("card-number");
        about.setWrapText(true);
        about.setId("about-" + spec.name());
        about.getStyleClass().add("quiet");
        Tip.put(
                field,
                wording.say("card.number.tip", KeyNumbers.unit(spec.name())).strip());
        field.setOnAction(event -> commit());
        field.focusedProperty().subscribe((before, now) -> {
            if (!now) {
                commit();
            }
        });
        MenuItem vary = new MenuItem(wording.say("vary.open"));
        vary.setOnAction(event -> fireEvent(new LookUp(VaryWindow.ID + spec.name())));
        ContextMenu menu = new ContextMenu(vary);
        addEventFilter(ContextMenuEvent.CONTEXT_MENU_REQUESTED, event -> {
            menu.show(field, event.getScreenX(), event.getScreenY());
            event.consume();
        });
        show(field, KeyNumbers.unit(spec.name()));
    }

    @Override
    void fill() {
        OptionalDouble written = change().keys().number(spec().name());
        OptionalDouble other = otherwise();
        shown = written.isPresent() ? numbers.shown(written.getAsDouble()) : "";
        field.setText(shown);
        about(written.stream()
                .filter(numbers::isComputed)
                .mapToObj(numbers::exact)
                .findFirst());
        field.setPromptText(other.isPresent() ? numbers.roughly(other.getAsDouble()) : "—");
        answer(List.of());
    }

    /** What holds without this: what the model says, else what is usual. */
    private OptionalDouble otherwise() {
        EffectiveKeys values = effect.get();
        OptionalDouble said = values.number(spec().name());
        return said.isPresent() ? said : values.usual(spec());
    }

    /** Nobody writes so many digits: the field shows the number rounded, and keeps all of it. */
    private void about(Optional<String> exact) {
        getChildren().remove(about);
        exact.ifPresent(digits -> {
            about.setText(wording().say("card.number.about", digits, KeyNumbers.unit(spec().name())));
            getChildren().add(about);
        });
    }

    private void commit() {
        String text = field.getText().strip();
        if (text.equals(shown)) {
            answer(List.of());
            return;
        }
        if (text.isEmpty()) {
            putNothing();
            return;
        }
        Parsed parsed = numbers.read(spec().name(), text);
        if (parsed instanceof Parsed.Refused refused) {
            answer(List.of(refused.text(wording().locale())));
        } else {
            put(parsed.value().orElseThrow());
        }
    }
}
