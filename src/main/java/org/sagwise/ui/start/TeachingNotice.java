package org.sagwise.ui.start;

import java.util.Locale;
import javafx.css.PseudoClass;
import javafx.scene.layout.StackPane;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;
import org.sagwise.hazard.Notices;

/** The line that is always in sight: a teaching model, and who comes first. */
public final class TeachingNotice extends StackPane {

    private static final PseudoClass FOOT = PseudoClass.getPseudoClass("foot");

    public TeachingNotice(Locale locale) {
        String line = Notices.modelLine(locale);
        int first = line.indexOf(". ") + 1;
        Text what = new Text(line.substring(0, first));
        what.getStyleClass().addAll("run", "strong");
        Text who = new Text(line.substring(first));
        who.getStyleClass().add("run");
        TextFlow flow = new TextFlow(what, who);
        flow.setId("teaching-notice");
        flow.getStyleClass().addAll("teaching-notice", "markdown");
        flow.setAccessibleText(line);
        getStyleClass().add("notice-place");
        setMinHeight(USE_PREF_SIZE);
        getChildren().add(flow);
    }

    /** As a card at the end of a column. */
    public TeachingNotice asCard() {
        pseudoClassStateChanged(FOOT, false);
        return this;
    }

    /** As a line across the foot of the window. */
    public TeachingNotice asFoot() {
        pseudoClassStateChanged(FOOT, true);
        return this;
    }
}
