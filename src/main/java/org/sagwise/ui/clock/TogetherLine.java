package org.sagwise.ui.clock;

import java.util.List;
import java.util.Optional;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import org.sagwise.report.course.ClockTexts;
import org.sagwise.run.playback.Ending;
import org.sagwise.ui.kit.Subscriptions;

/** Under two benches on one clock: how far each is, and when each came to its end. */
public final class TogetherLine extends HBox {

    private final Companion companion;
    private final ClockModel clock;
    private final ClockTexts words;
    private final Label first = label("together-first");
    private final Label second = label("together-second");

    public TogetherLine(Companion companion, ClockModel clock, ClockTexts words, Subscriptions subscriptions) {
        this.companion = companion;
        this.clock = clock;
        this.words = words;
        setId("together");
        getStyleClass().add("together");
        getChildren().addAll(first, second);
        subscriptions.watch(companion.seenProperty(), now -> show());
        subscriptions.onChange(companion.firstEndingProperty(), this::show);
        subscriptions.onChange(clock.nowProperty(), this::show);
    }

    private static Label label(String id) {
        Label label = new Label();
        label.setId(id);
        label.setWrapText(true);
        label.setMinWidth(0);
        label.setPrefWidth(1);
        label.setMaxWidth(Double.MAX_VALUE);
        label.setMinHeight(USE_PREF_SIZE);
        label.setAccessibleRole(AccessibleRole.TEXT);
        HBox.setHgrow(label, Priority.ALWAYS);
        return label;
    }

    private void show() {
        Optional<Companion.Seen> seen = companion.seenProperty().get();
        double endS = clock.nowProperty().get().endS();
        boolean begun = seen.isPresent() && endS > 0;
        setVisible(begun);
        setManaged(begun);
        if (begun) {
            tell(
                    first,
                    "together.here",
                    seen.get().firstFiredS(),
                    companion.firstEndingProperty().get());
            tell(second, "together.beside", seen.get().firedS(), seen.get().ending());
        }
    }

    private void tell(Label label, String who, double firedS, Optional<Ending> ending) {
        double endS = clock.nowProperty().get().endS();
        String how =
                ending.map(end -> ended(end, endS)).orElseGet(() -> words.word("together.held", words.time(firedS)));
        label.setText(words.word(who, how));
        label.getStyleClass().removeAll(List.of("together-ended"));
        if (ending.isPresent()) {
            label.getStyleClass().add("together-ended");
        }
    }

    private String ended(Ending end, double endS) {
        // Two equal benches end at moments that differ in the last bits.
        boolean ahead = end.timeS() > endS * (1 + 1e-6);
        String at = words.time(end.timeS());
        String held = words.time(end.firedS());
        if (at.equals(held)) {
            return words.word(ahead ? "together.ahead" : "together.ended", at);
        }
        return words.word(ahead ? "together.ahead.held" : "together.ended.held", at, held);
    }
}
