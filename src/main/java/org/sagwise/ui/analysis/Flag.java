package org.sagwise.ui.analysis;

import java.util.Locale;
import javafx.scene.AccessibleRole;
import javafx.scene.layout.Region;
import org.sagwise.hazard.Signal;

/**
 * Our own sign for a finding about the drawn circuit: a flag whose cloth has more tails the graver
 * it is. The triangle and the colours of the standards stay with messages about the real world.
 */
public final class Flag extends Region {

    /**
     * @param signal how grave
     * @param spoken what a screen reader says instead
     */
    public Flag(Signal signal, String spoken) {
        this(signal.name().toLowerCase(Locale.ROOT), spoken);
    }

    private Flag(String word, String spoken) {
        getStyleClass().addAll("flag", "flag-" + word);
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setAccessibleText(spoken);
        setMinSize(USE_PREF_SIZE, USE_PREF_SIZE);
        setMaxSize(USE_PREF_SIZE, USE_PREF_SIZE);
    }

    /** The flag of a circuit with nothing to flag: an outline. */
    static Flag lowered(String spoken) {
        return new Flag("none", spoken);
    }
}
