package org.sagwise.ui.frame;

import javafx.scene.Node;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

import org.sagwise.ui.text.Wording;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;

/** The column at the left of the bench: one of several pages, chosen at its top. */
final class LeftColumn extends BorderPane {

    /** What the column can show. */
    enum Page {
        SHELF,
        CARD,
        EXAMPLES
    }

    private final Map<Page, Node> pages = new EnumMap<>(Page.class);
    private final Map<Page, ToggleButton> tabs = new EnumMap<>(Page.class);
    private final ToggleGroup group = new ToggleGroup();
    private final HBox bar = new HBox();
    private final Wording wording;

    LeftColumn(Wording wording) {
        this.wording = wording;
        setId("left");
        getStyleClass().add("left-column");
        bar.getStyleClass().add("left-tabs");
        setTop(bar);
    }

    void add(Page page, Node content) {
        String word = page.name().toLowerCase(Locale.ROOT);
        ToggleButton tab = new ToggleButton(wording.say("left." + word));
        tab.setId("tab-" + word);
        tab.setTooltip(new Tooltip(wording.say("left." + word + ".tip")));
        tab.setToggleGroup(group);
        tab.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(tab, Priority.ALWAYS);
        tab.setOnAction(event -> show(page));
        bar.getChildren().add(tab);
        tabs.put(page, tab);
        pages.put(page, content);
    }

    void show(Page page) {
        tabs.get(page).setSelected(true);
        setCenter(pages.get(page));
    }
}
