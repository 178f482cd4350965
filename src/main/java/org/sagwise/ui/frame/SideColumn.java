package org.sagwise.ui.frame;

import java.util.function.Consumer;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.sagwise.hazard.Caution;
import org.sagwise.ui.caution.CautionsView;
import org.sagwise.ui.caution.CureModel;
import org.sagwise.ui.ledger.LedgerView;
import org.sagwise.ui.ledger.LimitsView;
import org.sagwise.ui.model.BenchModel;
import org.sagwise.ui.model.Subscriptions;
import org.sagwise.ui.scroll.FocusScroll;
import org.sagwise.ui.text.Wording;

/** The column beside the bench: ledger, limits, cautions. */
final class SideColumn extends VBox {

    SideColumn(
            BenchModel bench, Consumer<Caution> show, CureModel cures, Wording wording, Subscriptions subscriptions) {
        setId("side");
        getStyleClass().add("side");
        VBox content = new VBox(
                new LedgerView(bench, wording, subscriptions),
                new LimitsView(bench, wording, subscriptions),
                new CautionsView(bench, show, cures, wording, subscriptions));
        content.getStyleClass().add("column");
        ScrollPane scroll = new ScrollPane(content);
        scroll.setId("side-scroll");
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.getStyleClass().add("plain-scroll");
        FocusScroll.in(scroll, subscriptions);
        setVgrow(scroll, Priority.ALWAYS);
        getChildren().add(scroll);
    }
}
