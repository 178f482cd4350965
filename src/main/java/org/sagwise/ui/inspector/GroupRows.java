package org.sagwise.ui.inspector;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.control.CheckBox;
import javafx.scene.layout.VBox;
import org.sagwise.part.key.KeySpec;
import org.sagwise.part.key.KeyTable;
import org.sagwise.part.key.Keys;
import org.sagwise.ui.text.Wording;

/**
 * A nested object of a part, such as the guard of a cell: a tick, and its own rows while ticked.
 */
final class GroupRows extends VBox {

    private final String name;
    private final Change change;
    private final CheckBox tick;
    private final List<CardRow> rows = new ArrayList<>();

    /**
     * @param usual what the object holds when it is first ticked
     */
    GroupRows(KeySpec spec, KeySpec.GroupType type, Keys usual, Change change, CardRows maker, Wording wording) {
        this.name = spec.name();
        this.change = change;
        this.tick = new CheckBox(wording.say("key." + name));
        tick.setId("field-" + name);
        tick.setWrapText(true);
        tick.setOnAction(event -> {
            if (tick.isSelected()) {
                change.set(name, usual);
            } else {
                change.clear(name);
            }
            refresh();
        });
        Change inside = inside(change, name, type);
        type.keys().forEach(key -> maker.row(key, inside).ifPresent(rows::add));
        getStyleClass().add("card-group");
    }

    void refresh() {
        boolean there = change.keys().group(name).isPresent();
        tick.setSelected(there);
        getChildren().setAll(tick);
        if (there) {
            rows.forEach(CardRow::refresh);
            getChildren().addAll(rows);
        }
    }

    /** The nested object under a key of something that can be changed. */
    static Change inside(Change change, String name, KeySpec.GroupType type) {
        return new Change() {
            @Override
            public Keys keys() {
                return change.keys().group(name).orElse(Keys.NONE);
            }

            @Override
            public List<String> set(String key, Object value) {
                Keys old = keys().without(KeyTable.alternatives(type.rules(), key));
                return change.set(name, old.with(key, value));
            }

            @Override
            public List<String> clear(String key) {
                return change.set(name, keys().without(key));
            }
        };
    }
}
