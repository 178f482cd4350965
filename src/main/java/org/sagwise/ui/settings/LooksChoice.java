package org.sagwise.ui.settings;

import java.util.Optional;
import org.sagwise.picture.look.Theme;

/** What a person asked the window to look like. */
public enum LooksChoice {
    /** As the system does, where it tells. */
    SYSTEM(Optional.empty()),
    LIGHT(Optional.of(Theme.LIGHT)),
    DARK(Optional.of(Theme.DARK)),
    HIGH_CONTRAST(Optional.of(Theme.HIGH_CONTRAST));

    private final Optional<Theme> theme;

    LooksChoice(Optional<Theme> theme) {
        this.theme = theme;
    }

    /** The theme that follows from it. */
    public Theme on(Theme system) {
        return theme.orElse(system);
    }
}
