package org.sagwise.ui.inspector;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.scene.control.ComboBox;
import javafx.util.StringConverter;
import org.sagwise.part.key.KeySpec;
import org.sagwise.ui.text.Wording;

/** One of several words: of a short list, or of the catalogue with a search. */
final class ChoiceRow extends CardRow {

    private final ComboBox<String> box;
    private final Optional<String> otherwise;
    private boolean filling;

    /**
     * @param words what is written in a file, with what people call it
     * @param box the control, empty
     * @param otherwise the word that holds where none is written
     */
    ChoiceRow(
            KeySpec spec,
            Map<String, String> words,
            ComboBox<String> box,
            Optional<String> otherwise,
            Change change,
            Wording wording) {
        super(spec, change, wording);
        this.box = box;
        this.otherwise = otherwise;
        box.getItems().setAll(words.keySet());
        box.setConverter(new StringConverter<>() {
            @Override
            public String toString(String word) {
                return word == null ? "" : words.getOrDefault(word, word);
            }

            @Override
            public String fromString(String text) {
                return text;
            }
        });
        box.setMaxWidth(Double.MAX_VALUE);
        box.valueProperty().subscribe((before, now) -> chosen(now));
        if (spec.type() instanceof KeySpec.CatalogueType) {
            showBelow(box);
        } else {
            show(box, "");
        }
    }

    private void chosen(String word) {
        if (filling || word == null) {
            return;
        }
        put(word);
    }

    @Override
    void fill() {
        filling = true;
        box.setValue(change().keys().text(spec().name()).or(() -> otherwise).orElse(null));
        filling = false;
        answer(List.of());
    }
}
