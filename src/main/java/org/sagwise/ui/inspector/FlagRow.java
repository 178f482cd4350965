package org.sagwise.ui.inspector;

import java.util.List;
import javafx.scene.control.CheckBox;
import org.sagwise.part.key.KeySpec;
import org.sagwise.ui.text.Wording;

/** Yes or no. */
final class FlagRow extends CardRow {

    private final CheckBox box = new CheckBox();

    FlagRow(KeySpec spec, Change change, Wording wording) {
        super(spec, change, wording);
        box.setOnAction(event -> put(box.isSelected()));
        show(box, "");
    }

    @Override
    void fill() {
        box.setSelected(change().keys().flag(spec().name()).orElse(false));
        answer(List.of());
    }
}
