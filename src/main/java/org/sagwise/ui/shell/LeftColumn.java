package org.sagwise.ui.shell;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import org.sagwise.ui.text.Wording;

/** The column at the left of the bench: one of several pages, chosen at its top. */
final class LeftColumn extends BorderPane {

    /** What the column can show. */
    enum Page {
        SHELF,
        CARD,
        EXAMPLES,
        LESSONS,
        /** The lesson that runs. */
        LESSON,
        /** What is to be mended in lessons of one's own. */
        AUTHOR
    }

    /** A lesson is read from further away, in larger type, and needs more room. */
    private static final PseudoClass TEACHING = PseudoClass.getPseudoClass("teaching");

    private static final int TABS_IN_A_ROW = 2;

    /** So many fit in one row as well. */
    private static final int ODD_TABS = 3;

    private final Map<Page, Node> pages = new EnumMap<>(Page.class);
    private final Map<Page, ToggleButton> tabs = new EnumMap<>(Page.class);
    private final ToggleGroup group = new ToggleGroup();
    private final GridPane bar = new GridPane();
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
        tab.setMinWidth(USE_PREF_SIZE);
        tab.setOnAction(event -> show(page));
        tabs.put(page, tab);
        pages.put(page, content);
    }

    /** Takes the tabs away while a class looks on, and brings them back. */
    void project(boolean projected) {
        setTop(projected ? null : bar);
    }

    /** Offers these pages and shows one of them; so many beside each other that words fit. */
    void offer(Page shown, List<Page> offered) {
        int inARow = offered.size() == ODD_TABS ? ODD_TABS : TABS_IN_A_ROW;
        bar.getChildren().clear();
        bar.getColumnConstraints().clear();
        for (int i = 0; i < inARow; i++) {
            ColumnConstraints share = new ColumnConstraints();
            share.setPercentWidth(100.0 / inARow);
            bar.getColumnConstraints().add(share);
        }
        for (int i = 0; i < offered.size(); i++) {
            bar.add(tabs.get(offered.get(i)), i % inARow, i / inARow);
        }
        show(shown);
    }

    /** The page that is shown; empty before the first. */
    Optional<Page> page() {
        return tabs.entrySet().stream()
                .filter(each -> each.getValue().isSelected())
                .map(Map.Entry::getKey)
                .findFirst();
    }

    void show(Page page) {
        tabs.get(page).setSelected(true);
        setCenter(pages.get(page));
        pseudoClassStateChanged(TEACHING, page == Page.LESSON);
    }
}
