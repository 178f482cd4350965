package org.sagwise.ui.inspector;

import java.util.List;
import javafx.scene.control.TextField;
import org.sagwise.part.key.KeySpec;
import org.sagwise.ui.text.Wording;

/** A line of free text. */
final class TextRow extends CardRow {

    private final TextField field = new TextField();
    private final String otherwise;

    /**
     * @param otherwise what holds where nothing is written
     */
    TextRow(KeySpec spec, String otherwise, Change change, Wording wording) {
        super(spec, change, wording);
        this.otherwise = otherwise;
        field.getStyleClass().add("card-text");
        field.setOnAction(event -> commit());
        field.focusedProperty().subscribe((before, now) -> {
            if (!now) {
                commit();
            }
        });
        show(field, "");
    }

    @Override
    void fill() {
        field.setText(change().keys().text(spec().name()).orElse(""));
        field.setPromptText(otherwise);
        answer(List.of());
    }

    private void commit() {
        String text = field.getText().strip();
        if (text.equals(change().keys().text(spec().name()).orElse(""))) {
            return;
        }
        if (text.isEmpty()) {
            putNothing();
        } else {
            put(text);
        }
    }
}
