package org.sagwise.hazard;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.sagwise.part.PartKind;
import org.sagwise.run.CellMoment;
import org.sagwise.scenario.PartName;
import org.sagwise.scenario.TerminalName;
import org.sagwise.scenario.TerminalRef;

/**
 * Puts a caution together. Its texts may name {@code part} (the first part), {@code parts} (all),
 * {@code others} (all but the first), {@code measured}, {@code limit}, {@code when} and whatever is
 * given as a detail.
 */
final class CautionBuilder {

    /** The detail that says which of several texts of a hazard fits. */
    static final String VARIANT = "variant";

    /** The detail that is there where a regulated board decides what flows, and a coil's ohms do not. */
    static final String REGULATED = "regulated";

    /** The detail that is there where its current is one that a real cell does not keep up. */
    static final String OF_A_MOMENT = "ofAMoment";

    /** The detail that is there where no button decides when current flows. */
    static final String WITHOUT_BUTTON = "withoutButton";

    private final HazardContext context;
    private final Signal signal;
    private final Set<String> parts = new LinkedHashSet<>();
    private final List<Integer> links = new ArrayList<>();
    private final Map<String, Object> details = new HashMap<>();
    private Caution.When when = Caution.When.ALWAYS;
    private double measured = Double.NaN;
    private double limit = Double.NaN;
    private String unit = "";

    CautionBuilder(HazardContext context, Signal signal) {
        this.context = context;
        this.signal = signal;
    }

    CautionBuilder when(Caution.When value) {
        when = value;
        return this;
    }

    /** Adds parts, the one to look at first first. */
    CautionBuilder parts(List<String> ids) {
        parts.addAll(ids);
        return this;
    }

    CautionBuilder parts(String... ids) {
        return parts(List.of(ids));
    }

    CautionBuilder links(List<Integer> places) {
        links.addAll(places);
        return this;
    }

    /** The number found against the number it is held against; NaN for one that is not known. */
    CautionBuilder measured(double found, double against, String symbol) {
        measured = found;
        limit = against;
        unit = symbol;
        return this;
    }

    CautionBuilder variant(String name) {
        return detail(VARIANT, name);
    }

    /** Whether one part is concerned or several. */
    CautionBuilder oneOrMany() {
        return variant(parts.size() == 1 ? "one" : "many");
    }

    /** A number in the unit that the name ends in, a text, a name, or a list of them. */
    CautionBuilder detail(String name, Object value) {
        details.put(name, value);
        return this;
    }

    /** The names of parts as a detail. */
    CautionBuilder names(String name, List<String> ids) {
        return detail(name, ids.stream().map(this::name).toList());
    }

    /** The name of a terminal as a detail. */
    CautionBuilder terminal(String name, TerminalRef ref) {
        return detail(name, TerminalName.of(context.bench().scenario(), ref));
    }

    private PartName name(String part) {
        return PartName.of(context.part(part));
    }

    private boolean isOfAMoment() {
        return unit.equals("A")
                && parts.stream()
                        .map(context.bench().cells()::get)
                        .anyMatch(cell -> cell != null && CellMoment.isOfAMoment(measured, cell.capacityAh()));
    }

    /** The caution, about the hazard of this id. */
    Caution build(String id) {
        if (context.partsOf(PartKind.SWITCH).isEmpty()) {
            details.put(WITHOUT_BUTTON, "");
        }
        List<String> ids = List.copyOf(parts);
        if (!ids.isEmpty()) {
            details.put("part", name(ids.get(0)));
            names("parts", ids);
            names("others", ids.subList(1, ids.size()));
        }
        if (!context.partsOf(PartKind.BOARD).isEmpty()) {
            details.put(REGULATED, "");
        }
        if (isOfAMoment()) {
            details.put(OF_A_MOMENT, "");
        }
        return new Caution(id, signal, ids, links, when, measured, limit, unit, details);
    }
}
