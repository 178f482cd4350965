package org.sagwise.hazard;

import java.util.List;
import org.sagwise.circuit.Branch;
import org.sagwise.circuit.Conflict;

/**
 * A conflict between sources together with what it does in one position of the button.
 *
 * @param view in which position
 * @param conflict who stands against whom
 */
record ConflictCurrent(SwitchView view, Conflict conflict) {

    /** Rows side by side with different numbers of cells: the longer drives current through the shorter. */
    static List<CautionBuilder> unequalRows(HazardContext context) {
        return context.conflicts(Conflict.Kind.UNEQUAL_ROWS).stream()
                .map(current ->
                        current.caution(context).parts(current.busiest()).parts(current.members()))
                .toList();
    }

    /**
     * Cells that stand the other way round than those beside them, so that they drive current
     * through one another with no load in the way, button or no button: i = (E1 + E2)/(R1 + R2) for
     * two.
     */
    static List<CautionBuilder> reversed(HazardContext context) {
        return context.conflicts(Conflict.Kind.REVERSED).stream()
                .map(current -> current.caution(context)
                        .parts(current.turned())
                        .parts(current.others())
                        .names("turned", current.turned())
                        .names("rest", current.others()))
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
        CellView cell = view.cell(busiest());
        return cell == null ? Double.NaN : cell.limitA();
    }

    /** Heat inside it, W; NaN for a supply. */
    double heatW() {
        CellView cell = view.cell(busiest());
        return cell == null ? Double.NaN : cell.heatW();
    }

    /** A caution with its numbers, still without parts. */
    CautionBuilder caution(HazardContext context) {
        return new CautionBuilder(context, Gravity.unchecked(currentA(), limitA()))
                .when(view.when())
                .links(view.linksWithHalfOf(currentA(), busiest()))
                .measured(currentA(), limitA(), "A")
                .detail("heatW", heatW());
    }
}
