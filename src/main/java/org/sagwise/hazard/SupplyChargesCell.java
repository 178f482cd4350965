package org.sagwise.hazard;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.sagwise.part.PartKind;
import org.sagwise.scenario.Part;

/**
 * A bench supply pushes current into a cell: nothing ends the charge as a charger made for the cell
 * would.
 */
final class SupplyChargesCell implements HazardRule {
    /** Current into a cell from which on it counts, A: our choice. */
    static final double LEAST_A = 0.05;

    @Override
    public List<CautionBuilder> check(HazardContext context) {
        List<CautionBuilder> found = new ArrayList<>();
        for (Part supply : context.partsOf(PartKind.SUPPLY)) {
            context.views().stream()
                    .filter(view -> view.currentA(supply.id()) > LEAST_A)
                    .flatMap(view -> mostCharged(context, view, supply).stream())
                    .findFirst()
                    .ifPresent(found::add);
        }
        return found;
    }

    private static Optional<CautionBuilder> mostCharged(HazardContext context, SwitchView view, Part supply) {
        int island = view.island(supply.id());
        return view.cells().values().stream()
                .filter(cell -> cell.currentA() < -LEAST_A && view.island(cell.id()) == island)
                .min(Worst.least(CellView::currentA))
                .map(cell -> new CautionBuilder(context, Signal.WARNING)
                        .when(view.when())
                        .parts(supply.id(), cell.id())
                        .measured(-cell.currentA(), Double.NaN, "A")
                        .names("cell", List.of(cell.id())));
    }
}
