package org.sagwise.ui.kit;

import javafx.scene.control.Label;
import javafx.scene.layout.Region;

/** Words that are wrapped where they are too long, and never cut off for want of height. */
public final class WrappedLabel {

    private WrappedLabel() {}

    /**
     * @param styles classes of the style sheet
     */
    public static Label of(String words, String... styles) {
        Label label = new Label(words);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        label.getStyleClass().addAll(styles);
        return label;
    }
}
