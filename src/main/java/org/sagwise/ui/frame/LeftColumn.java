package org.sagwise.ui.frame;

import javafx.css.PseudoClass;
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
import java.util.stream.Stream;

/** The column at the left of the bench: one of several pages, chosen at its top. */
final class LeftColumn extends BorderPane {

    /** What the column can show. */
    enum Page {
        SHELF,
        CARD,
        EXAMPLES,
        LESSONS,
        /** The lesson that runs. */
        LESSON
    }

    /** A lesson is read from further away, in larger type, and needs more room. */
    private static final PseudoClass TEACHING = PseudoClass.getPseudoClass("teaching");

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
        tabs.put(page, tab);
        pages.put(page, content);
    }

    /** Offers these pages and shows one of them. */
    void offer(Page shown, Page... offered) {
        bar.getChildren().setAll(Stream.of(offered).map(tabs::get).toList());
        show(shown);
    }

    void show(Page page) {
        tabs.get(page).setSelected(true);
        setCenter(pages.get(page));
        pseudoClassStateChanged(TEACHING, page == Page.LESSON);
    }
}
