package org.sagwise.ui.lesson;

import java.util.function.LongSupplier;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import org.sagwise.lesson.HintPace;

/** The pace of hints, for a window to watch. */
public final class HintTimer {

    private final HintPace pace;
    private final ReadOnlyBooleanWrapper mayHint = new ReadOnlyBooleanWrapper(true);
    private final ReadOnlyBooleanWrapper offers = new ReadOnlyBooleanWrapper(false);

    /**
     * @param nanoTime real time, ns
     */
    public HintTimer(LongSupplier nanoTime) {
        pace = new HintPace(nanoTime);
    }

    /** Whether a hint may be asked for now. */
    public ReadOnlyBooleanProperty mayHintProperty() {
        return mayHint.getReadOnlyProperty();
    }

    /** Whether it is time to say that there are hints. */
    public ReadOnlyBooleanProperty offersProperty() {
        return offers.getReadOnlyProperty();
    }

    /** A step begins. */
    void begin() {
        pace.begin();
        show();
    }

    /** Something was tried: the bench was changed, the button pressed, a number typed. */
    void tried() {
        pace.tried();
        show();
    }

    /** A hint was given. */
    void hinted() {
        pace.hinted();
        show();
    }

    /** Looks at the time; called about once a second. */
    void look() {
        pace.look();
        show();
    }

    private void show() {
        mayHint.set(pace.mayHint());
        offers.set(pace.offers());
    }
}
