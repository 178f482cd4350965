package org.sagwise.ui.workbench;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.sagwise.file.ShareText;
import org.sagwise.interaction.Selection;
import org.sagwise.picture.geometry.GridBox;
import org.sagwise.picture.layout.BenchLayout;
import org.sagwise.picture.layout.PartBox;
import org.sagwise.picture.layout.PartShape;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.edit.Fragment;
import org.sagwise.scenario.edit.PasteParts;
import org.sagwise.ui.kit.CopyBoard;

/**
 * Copies parts and pastes them, on one bench, between windows, or through a post: what is copied is
 * share text that says of itself that it is a part of a bench.
 */
public final class PartsBoard {

    private final Workbench work;
    private Scenario last = Scenario.empty();
    private int pasted;

    public PartsBoard(Workbench work) {
        this.work = work;
    }

    /** Copies what is chosen; says whether that could be done. */
    boolean copy() {
        Set<String> parts = work.hands().chosen().parts();
        Scenario whole =
                work.bench().scenario().withPlacement(work.ground().lying().placements());
        Optional<String> text =
                parts.isEmpty() ? Optional.empty() : ShareText.of(Fragment.marked(Fragment.of(whole, parts)));
        text.ifPresent(CopyBoard::put);
        last = Scenario.empty();
        return text.isPresent();
    }

    /** Lays copied parts beside where they lay; again and again, each time further on. */
    public void paste(Scenario fragment) {
        pasted = fragment.equals(last) ? pasted + 1 : 1;
        last = fragment;
        double step = BenchLayout.of(fragment).parts().stream()
                .map(PartBox::body)
                .reduce(GridBox::union)
                .map(all -> (double) all.width())
                .orElse(0.0);
        double dx = (Math.ceil(step / PartShape.GRID) + 2) * pasted;
        List<String> before =
                work.bench().scenario().parts().stream().map(p -> p.id()).toList();
        work.perform(new PasteParts(fragment, dx, 0));
        work.hands().choose(Selection.of(EditCommands.newParts(work, before), Set.of()));
    }
}
