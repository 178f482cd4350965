package org.sagwise.hazard;

import java.util.List;
import org.sagwise.caution.circuit.Branch;
import org.sagwise.caution.circuit.Conflict;
import org.sagwise.reading.CellReading;

/**
 * A conflict between sources together with what it does in one position of the button.
 *
 * @param view in which position
 * @param conflict who stands against whom
 */
record ConflictCurrent(SwitchView view, Conflict conflict) {

    /**
     * The conflicts of one kind: those with the button let go, then those that only show when it is
     * held.
     */
    static List<ConflictCurrent> all(HazardContext context, Conflict.Kind kind) {
        return context.views().stream()
                .flatMap(view -> view.conflicts().stream().map(found -> new ConflictCurrent(view, found)))
                .filter(current -> current.conflict().kind() == kind)
                .toList();
    }

    List<String> members() {
        return ids(conflict.members());
    }

    List<String> turned() {
        return ids(conflict.turned());
    }

    List<String> others() {
        return ids(conflict.others());
    }

    private static List<String> ids(List<Branch> sources) {
        return sources.stream().map(Branch::part).toList();
    }

    /** The cell that carries most; of supplies alone the one that does. */
    String busiest() {
        List<Branch> cells = conflict.members().stream()
                .filter(m -> view.cell(m.part()) != null)
                .toList();
        return view.busiest(cells.isEmpty() ? conflict.members() : cells);
    }

    /** Its current, A; NaN where nothing at all limits it. */
    double currentA() {
        return Math.abs(view.currentA(busiest()));
    }

    /** Its discharge limit, A; NaN for a supply. */
    double limitA() {
        CellReading cell = view.cell(busiest());
        return cell == null ? Double.NaN : cell.limitA();
    }

    /** Heat inside it, W; NaN for a supply. */
    double heatW() {
        CellReading cell = view.cell(busiest());
        return cell == null ? Double.NaN : cell.heatW();
    }

    /** A caution with its numbers, still without parts. */
    CautionBuilder caution(HazardContext context, String id) {
        return new CautionBuilder(context, id, Gravity.unchecked(currentA(), limitA()))
                .when(view.when())
                .links(view.linksWithHalfOf(currentA(), busiest()))
                .measured(currentA(), limitA(), "A")
                .detail("heatW", heatW());
    }
}
