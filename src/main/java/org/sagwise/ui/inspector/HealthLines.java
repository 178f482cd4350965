package org.sagwise.ui.inspector;

import java.util.List;
import java.util.function.Function;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import org.sagwise.quantity.QuantityFormat;
import org.sagwise.report.health.HealthWords;
import org.sagwise.ui.document.BenchModel;
import org.sagwise.ui.text.Wording;

/** How the ohms of what a card is about stand beside what is usual, as the table of the readings has it. */
final class HealthLines extends Label {

    private final BenchModel bench;
    private final Wording wording;

    HealthLines(BenchModel bench, Wording wording) {
        this.bench = bench;
        this.wording = wording;
        setId("card-health");
        setWrapText(true);
        setMinHeight(Region.USE_PREF_SIZE);
    }

    /** Says it anew; nothing while a lesson asks, for a verdict would be the answer. */
    void show(Function<HealthWords, List<String>> about) {
        boolean isAsked = bench.button().lockedProperty().get();
        setText(isAsked ? "" : String.join("\n", about.apply(words())));
        setVisible(!getText().isEmpty());
        setManaged(isVisible());
    }

    private HealthWords words() {
        QuantityFormat format = QuantityFormat.forPeople(wording.locale());
        return new HealthWords(bench.assessment().bench(), wording.locale(), format.signs());
    }
}
