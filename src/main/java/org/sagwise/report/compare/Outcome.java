package org.sagwise.report.compare;

import java.util.List;
import java.util.Optional;
import org.sagwise.hazard.Caution;
import org.sagwise.report.symptom.Symptom;
import org.sagwise.run.RunEnd;

/**
 * What differs in outcome between two scenarios, and what there is to compare.
 *
 * @param rows numbers side by side
 * @param gone cautions of the first that the second does not have
 * @param come cautions of the second that the first does not have
 * @param was how the first goes on in time
 * @param is how the second goes on in time
 */
public record Outcome(List<Row> rows, List<Caution> gone, List<Caution> come, Course was, Course is) {

    /** Numbers that agree to so many parts count as equal: far below what any meter shows. */
    private static final double ALIKE = 1e-9;

    public Outcome {
        rows = List.copyOf(rows);
        gone = List.copyOf(gone);
        come = List.copyOf(come);
    }

    /**
     * What time and its owner tell of a bench.
     *
     * @param timeS how long it runs when it is pressed in the usual way, s; NaN if that cannot be told
     * @param end what ends it; empty if it has no cells to run down
     * @param symptoms what its owner would write that does not work
     */
    public record Course(double timeS, Optional<RunEnd> end, List<Symptom> symptoms) {
        /** Nobody has waited for it. */
        static final Course UNTOLD = new Course(Double.NaN, Optional.empty(), List.of());

        public Course {
            symptoms = List.copyOf(symptoms);
        }
    }

    /** What a row tells. */
    public enum Quantity {
        REST_CURRENT("A"),
        CURRENT("A"),
        TERMINAL("V"),
        SAG("V"),
        COIL_VOLTS("V"),
        COIL_POWER("W"),
        GIVEN("W"),
        EFFICIENCY(""),
        RUN_TIME("s");

        private final String unit;

        Quantity(String unit) {
            this.unit = unit;
        }

        /** Symbol of its unit; empty for a share. */
        public String unit() {
            return unit;
        }
    }

    /**
     * A number in both scenarios.
     *
     * @param quantity what it is
     * @param first id of the part in the first scenario; empty for the whole
     * @param second id of the part in the second scenario; empty for the whole
     * @param was value in the first; NaN if it has none
     * @param is value in the second; NaN if it has none
     */
    public record Row(Quantity quantity, String first, String second, double was, double is) {

        public boolean isAlike() {
            double size = Math.max(Math.abs(was), Math.abs(is));
            return Double.compare(was, is) == 0 || Math.abs(was - is) <= ALIKE * size + 1e-12;
        }
    }

    public boolean differs() {
        return !gone.isEmpty()
                || !come.isEmpty()
                || !was.end().equals(is.end())
                || rows.stream().anyMatch(row -> !row.isAlike());
    }
}
