package org.sagwise.ui.kit;

import javafx.scene.Node;
import javafx.scene.control.ScrollPane;

/** A column that is rolled up and down, as wide as there is room. */
public final class PlainScroll {

    private PlainScroll() {}

    /**
     * @param style class of the style sheet
     */
    public static ScrollPane of(Node content, String style) {
        ScrollPane scroll = new ScrollPane(content);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.getStyleClass().addAll("plain-scroll", style);
        return scroll;
    }
}
