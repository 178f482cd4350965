package org.sagwise.report;

import java.util.List;
import java.util.StringJoiner;
import org.sagwise.run.CellMoment;
import org.sagwise.run.CoilMoment;
import org.sagwise.run.RunState;
import org.sagwise.run.Trace;

/**
 * The course of a run as comma-separated values (RFC 4180), for a spreadsheet: one row for each
 * state that was kept, full double precision, a point as the decimal mark, the unit in the name of
 * each column. A number that is not known is left empty.
 */
public final class RunCsv {

    private static final String LINE_END = "\r\n";

    private RunCsv() {}

    /** The whole table, its heads first. */
    public static String of(Trace trace) {
        StringBuilder table = new StringBuilder();
        List<RunState> states = trace.states();
        table.append(heads(states.get(0))).append(LINE_END);
        states.forEach(state -> table.append(row(state)).append(LINE_END));
        return table.toString();
    }

    private static String heads(RunState state) {
        StringJoiner heads = new StringJoiner(",");
        heads.add("time_s").add("fired");
        for (CellMoment cell : state.cells()) {
            for (String quantity : List.of("rest_V", "terminal_V", "current_A", "charge", "temperature_C")) {
                heads.add(cell.id() + "_" + quantity);
            }
        }
        for (CoilMoment coil : state.coils()) {
            for (String quantity : List.of("volts_V", "current_A", "power_W", "temperature_C")) {
                heads.add(coil.id() + "_" + quantity);
            }
        }
        return heads.toString();
    }

    private static String row(RunState state) {
        StringJoiner row = new StringJoiner(",");
        row.add(number(state.timeS())).add(state.press().isHeld() ? "1" : "0");
        for (CellMoment cell : state.cells()) {
            row.add(number(cell.restV()))
                    .add(number(cell.terminalV()))
                    .add(number(cell.currentA()))
                    .add(number(cell.charge()))
                    .add(number(cell.temperatureC()));
        }
        for (CoilMoment coil : state.coils()) {
            row.add(number(coil.voltsV()))
                    .add(number(coil.currentA()))
                    .add(number(coil.powerW()))
                    .add(number(coil.temperatureC()));
        }
        return row.toString();
    }

    private static String number(double value) {
        return Double.isFinite(value) ? Double.toString(value + 0.0) : "";
    }
}
