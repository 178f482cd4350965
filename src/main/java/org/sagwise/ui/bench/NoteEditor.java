package org.sagwise.ui.bench;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextFormatter;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.sagwise.interaction.Selection;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.ScenarioKeys;
import org.sagwise.scenario.edit.AddNote;
import org.sagwise.scenario.edit.ChangeNote;
import org.sagwise.scenario.edit.DeleteNotes;
import org.sagwise.scenario.edit.NoteTarget;
import org.sagwise.ui.kit.Tip;
import org.sagwise.ui.text.PartTexts;
import org.sagwise.ui.text.Wording;
import org.sagwise.ui.workbench.Workbench;

/**
 * A slip over the bench on which a note is written. What stands there is kept when the slip is
 * left, and thrown away by Esc.
 */
final class NoteEditor extends VBox {

    private static final int ROWS = 4;
    private static final int MOST = ScenarioKeys.NOTE_TEXT.longest();

    private final Workbench work;
    private final Wording wording;
    private final Label heading = new Label();
    private final TextArea text = new TextArea();
    private final Label room = new Label();
    private final Button delete;
    private Optional<NoteTarget> target = Optional.empty();
    private OptionalInt note = OptionalInt.empty();

    NoteEditor(Workbench work, Wording wording) {
        this.work = work;
        this.wording = wording;
        setId("note-editor");
        getStyleClass().add("note-editor");
        setManaged(false);
        setVisible(false);
        text.setId("note-text");
        text.setWrapText(true);
        text.setPrefRowCount(ROWS);
        text.setTextFormatter(
                new TextFormatter<>(change -> change.getControlNewText().length() <= MOST ? change : null));
        text.textProperty().subscribe(now -> count());
        text.addEventFilter(KeyEvent.KEY_PRESSED, this::key);
        heading.setWrapText(true);
        heading.setLabelFor(text);
        heading.getStyleClass().add("section-title");
        room.getStyleClass().add("quiet");
        room.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(room, Priority.ALWAYS);
        delete = button("delete", this::delete);
        HBox foot = new HBox(room, delete, button("leave", this::leave), button("keep", this::done));
        foot.setAlignment(Pos.CENTER_LEFT);
        foot.getStyleClass().add("note-foot");
        getChildren().setAll(heading, text, foot);
        focusWithinProperty().subscribe((before, now) -> {
            if (!now) {
                keep();
            }
        });
        // The bench under it must not move along.
        addEventHandler(MouseEvent.ANY, MouseEvent::consume);
        addEventHandler(ScrollEvent.ANY, ScrollEvent::consume);
    }

    private Button button(String word, Runnable action) {
        Button button = new Button(wording.say("note." + word));
        button.setId("note-" + word);
        Tip.put(button, wording.say("note." + word + ".tip"));
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.setOnAction(event -> action.run());
        return button;
    }

    /** Begins to write: a new note on a chosen part or joint, or what a chosen note says. */
    void open(Selection chosen) {
        Scenario scenario = work.bench().scenario();
        note = chosen.notes().stream().mapToInt(Integer::intValue).findFirst();
        target = note.isPresent()
                ? NoteTarget.of(scenario, note.getAsInt())
                : chosen.parts().stream()
                        .<NoteTarget>map(NoteTarget.OnPart::new)
                        .findFirst()
                        .or(() -> chosen.links().stream()
                                .<NoteTarget>map(NoteTarget.OnJoint::new)
                                .findFirst());
        target.ifPresent(it -> show(scenario, it));
    }

    private void show(Scenario scenario, NoteTarget on) {
        String name = new PartTexts(wording).noted(scenario, on);
        heading.setText(wording.say("note.on", name));
        text.setAccessibleText(heading.getText());
        text.setText(note.isPresent() ? scenario.notes().get(note.getAsInt()).text() : "");
        delete.setVisible(note.isPresent());
        delete.setManaged(note.isPresent());
        count();
        setVisible(true);
        toFront();
        text.requestFocus();
        text.end();
    }

    private void count() {
        room.setText(wording.say("note.room", text.getText().length(), MOST));
    }

    private void key(KeyEvent event) {
        boolean tab = event.getCode() == KeyCode.TAB && !event.isShortcutDown();
        if (event.getCode() == KeyCode.ESCAPE) {
            leave();
        } else if (event.getCode() == KeyCode.ENTER && event.isShortcutDown()) {
            done();
        } else if (tab) {
            lookup(event.isShiftDown() ? "#note-leave" : "#note-keep").requestFocus();
        } else {
            return;
        }
        event.consume();
    }

    private void done() {
        keep();
        work.ground().takeFocus();
    }

    private void leave() {
        close();
        work.ground().takeFocus();
    }

    private void delete() {
        OptionalInt gone = note;
        close();
        gone.ifPresent(at -> work.perform(new DeleteNotes(Set.of(at))));
        work.ground().takeFocus();
    }

    /** Keeps what is written; nothing written is no note. */
    private void keep() {
        String words = text.getText().strip();
        Optional<NoteTarget> on = target;
        OptionalInt old = note;
        close();
        if (on.isEmpty() || words.isEmpty() && old.isEmpty()) {
            return;
        }
        if (words.isEmpty()) {
            work.perform(new DeleteNotes(Set.of(old.getAsInt())));
        } else if (old.isPresent()) {
            work.perform(new ChangeNote(old.getAsInt(), new ChangeNote.Text(words)));
        } else {
            work.perform(new AddNote(on.get(), words));
            work.hands().choose(Selection.note(work.bench().scenario().notes().size() - 1));
        }
    }

    /** Leaves it without keeping anything. */
    void close() {
        target = Optional.empty();
        note = OptionalInt.empty();
        setVisible(false);
    }

    boolean isOpen() {
        return target.isPresent();
    }
}
