package org.sagwise.ui.shell;

import java.util.function.Consumer;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.sagwise.hazard.Caution;
import org.sagwise.ui.analysis.CautionsView;
import org.sagwise.ui.analysis.CureModel;
import org.sagwise.ui.analysis.LedgerView;
import org.sagwise.ui.analysis.LimitsView;
import org.sagwise.ui.document.BenchModel;
import org.sagwise.ui.kit.ColumnScroll;
import org.sagwise.ui.kit.Subscriptions;
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
        ColumnScroll scroll = new ColumnScroll(subscriptions);
        scroll.setContent(content);
        scroll.setId("side-scroll");
        setVgrow(scroll, Priority.ALWAYS);
        getChildren().add(scroll);
    }
}
