package org.sagwise.ui.shell;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javafx.css.PseudoClass;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;
import org.sagwise.ui.kit.Tip;
import org.sagwise.ui.text.Wording;

/** The column at the left of the bench: one of several pages, called up by tabs on the window's edge. */
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

    /** The words of a tab are read from the foot of the window to its top. */
    private static final double UPWARDS = -90;

    private final Map<Page, Supplier<? extends Node>> pages = new EnumMap<>(Page.class);
    private final Map<Page, ToggleButton> tabs = new EnumMap<>(Page.class);
    private final VBox edge = new VBox();
    private final Button close = new Button();
    private final Wording wording;
    private Optional<Page> page = Optional.empty();
    private boolean open;
    private Consumer<Page> asked = this::show;

    /**
     * @param leave closes the column
     */
    LeftColumn(Runnable leave, Wording wording) {
        this.wording = wording;
        close.setText("\u2039");
        close.setId("left-close");
        close.getStyleClass().add("left-close");
        close.setAccessibleText(wording.say("left.close"));
        Tip.put(close, wording.say("left.close"));
        close.setOnAction(event -> leave.run());
        setId("left");
        getStyleClass().add("left-column");
        edge.setId("left-edge");
        edge.setMinHeight(0);
        edge.getStyleClass().add("left-edge");
        edge.heightProperty().subscribe(height -> fit());
    }

    /** The tabs; they stay while the column is closed. */
    Node edge() {
        return edge;
    }

    /**
     * @param ask is told the page whose tab somebody pressed
     */
    void onAsked(Consumer<Page> ask) {
        asked = ask;
    }

    /**
     * @param content makes the page when it is first seen: a window that opens waits for none that nobody looks at
     * @return gives the page, which is made if nobody has seen it yet
     */
    <T extends Node> Supplier<T> add(Page added, Supplier<T> content) {
        String word = added.name().toLowerCase(Locale.ROOT);
        ToggleButton tab = new ToggleButton(wording.say("left." + word));
        tab.setId("tab-" + word);
        Tip.put(tab, wording.say("left." + word + ".tip"));
        tab.setRotate(UPWARDS);
        tab.setMinWidth(USE_PREF_SIZE);
        tab.setOnAction(event -> {
            mark();
            asked.accept(added);
        });
        tabs.put(added, tab);
        Supplier<T> once = new Once<>(content);
        pages.put(added, once);
        return once;
    }

    /** Makes something when it is first asked for. */
    private static final class Once<T> implements Supplier<T> {
        private final Supplier<T> maker;
        private T made;

        Once(Supplier<T> maker) {
            this.maker = maker;
        }

        @Override
        public T get() {
            if (made == null) {
                made = maker.get();
            }
            return made;
        }
    }

    /** Offers these pages and makes one of them the page that is shown. */
    void offer(Page shown, List<Page> offered) {
        Stream<Node> turned = offered.stream().map(tabs::get).map(Group::new);
        edge.getChildren().setAll(Stream.concat(turned, Stream.of(close)).toList());
        fit();
        show(shown);
    }

    /** Where text is large and the window low, the words of the tabs are as large as the edge is long. */
    private void fit() {
        edge.setStyle("");
        edge.applyCss();
        double wished = edge.prefHeight(-1);
        if (edge.getHeight() > 0 && wished > edge.getHeight()) {
            edge.setStyle(String.format(Locale.ROOT, "-fx-font-size: %.3fem", edge.getHeight() / wished));
        }
    }

    /** The page that is shown; empty before the first. */
    Optional<Page> page() {
        return page;
    }

    void show(Page shown) {
        page = Optional.of(shown);
        fill();
        pseudoClassStateChanged(TEACHING, shown == Page.LESSON);
        mark();
    }

    /** Whether the column is in the window; its tabs tell. */
    void setOpen(boolean now) {
        open = now;
        fill();
        mark();
    }

    private void fill() {
        if (open) {
            page.ifPresent(shown -> setCenter(pages.get(shown).get()));
        }
    }

    private void mark() {
        tabs.forEach(
                (each, tab) -> tab.setSelected(open && page.filter(each::equals).isPresent()));
        close.setVisible(open && page.filter(Page.LESSON::equals).isEmpty());
    }
}
