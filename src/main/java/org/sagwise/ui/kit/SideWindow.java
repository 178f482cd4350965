package org.sagwise.ui.kit;

import java.util.Optional;
import java.util.function.Supplier;
import javafx.stage.Stage;

/** A window beside the main one that is open once at most. */
public final class SideWindow {

    private Optional<Stage> stage = Optional.empty();

    /** Opens it, or brings it to the front where it is open. */
    public Stage show(Supplier<Stage> opening) {
        Stage shown = stage.filter(Stage::isShowing).orElseGet(opening);
        stage = Optional.of(shown);
        shown.requestFocus();
        return shown;
    }

    /** As it was opened last. */
    public Optional<Stage> stage() {
        return stage;
    }

    public void close() {
        stage.ifPresent(Stage::close);
    }
}
