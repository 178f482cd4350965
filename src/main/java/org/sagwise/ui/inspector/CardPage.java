package org.sagwise.ui.inspector;

import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import org.sagwise.interaction.Selection;
import org.sagwise.ui.kit.ColumnScroll;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.settings.LooksModel;
import org.sagwise.ui.text.Wording;
import org.sagwise.ui.workbench.Workbench;

/** The card of whatever one thing is chosen on the bench. */
public final class CardPage extends ColumnScroll {

    private final Workbench work;
    private final Wording wording;
    private final CurvePlot curve;
    private final VBox content = new VBox();
    private final Label none = new Label();
    private Optional<PartCard> part = Optional.empty();
    private Optional<LinkCard> link = Optional.empty();

    public CardPage(Workbench work, LooksModel looks, Wording wording, Subscriptions subscriptions) {
        super(subscriptions, "card-page");
        this.work = work;
        this.wording = wording;
        this.curve = new CurvePlot(looks, wording, subscriptions);
        setId("card");
        none.setText(wording.say("card.none"));
        none.setWrapText(true);
        none.getStyleClass().add("quiet");
        content.getStyleClass().add("column");
        setContent(content);
        subscriptions.onChange(work.movesProperty(), this::follow);
        subscriptions.onChange(work.bench().assessmentProperty(), this::follow);
        follow();
    }

    /** Gives the focus to the first field. */
    public void focusFirst() {
        content.lookupAll(".text-field").stream().findFirst().ifPresent(each -> each.requestFocus());
    }

    private void follow() {
        Selection chosen = work.hands().chosen();
        Optional<String> onePart = chosen.parts().stream()
                .filter(id -> chosen.parts().size() == 1)
                .filter(id -> work.bench().scenario().part(id).isPresent())
                .findFirst();
        Optional<Integer> oneLink = chosen.links().stream()
                .filter(at -> chosen.parts().isEmpty() && chosen.links().size() == 1)
                .filter(at -> at < work.bench().scenario().links().size())
                .findFirst();
        if (onePart.isPresent() && part.map(PartCard::part).equals(onePart)) {
            part.get().refresh();
        } else if (oneLink.isPresent() && link.map(LinkCard::link).equals(oneLink)) {
            link.get().refresh();
        } else {
            part = onePart.flatMap(work.bench().scenario()::part).map(each -> new PartCard(work, each, curve, wording));
            link = oneLink.map(at -> new LinkCard(work, at, wording));
            content.getChildren().setAll(none);
            part.ifPresent(card -> content.getChildren().setAll(card));
            link.ifPresent(card -> content.getChildren().setAll(card));
        }
    }
}
