package org.sagwise.caution;

import java.util.List;
import org.sagwise.caution.circuit.Branch;
import org.sagwise.caution.circuit.Conflict;
import org.sagwise.reading.CellReading;

/**
 * A conflict between sources together with what it does in one position of the button.
 *
 * @param look in which position
 * @param conflict who stands against whom
 */
record Fight(Look look, Conflict conflict) {

    /**
     * The conflicts of one kind: those with the button let go, then those that only show when it is
     * held.
     */
    static List<Fight> all(Evidence evidence, Conflict.Kind kind) {
        return evidence.looks().stream()
                .flatMap(look -> look.conflicts().stream().map(found -> new Fight(look, found)))
                .filter(fight -> fight.conflict().kind() == kind)
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
                .filter(m -> look.cell(m.part()) != null)
                .toList();
        return look.busiest(cells.isEmpty() ? conflict.members() : cells);
    }

    /** Its current, A; NaN where nothing at all limits it. */
    double currentA() {
        return Math.abs(look.currentA(busiest()));
    }

    /** Its discharge limit, A; NaN for a supply. */
    double limitA() {
        CellReading cell = look.cell(busiest());
        return cell == null ? Double.NaN : cell.limitA();
    }

    /** Heat inside it, W; NaN for a supply. */
    double heatW() {
        CellReading cell = look.cell(busiest());
        return cell == null ? Double.NaN : cell.heatW();
    }

    /** A caution with the numbers of this fight, still without parts. */
    CautionBuilder caution(Evidence evidence, String id) {
        return new CautionBuilder(evidence, id, Gravity.unchecked(currentA(), limitA()))
                .when(look.when())
                .links(look.linksWithHalfOf(currentA(), busiest()))
                .measured(currentA(), limitA(), "A")
                .detail("heatW", heatW());
    }
}
