package org.sagwise.file;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.StringJoiner;
import org.sagwise.part.Catalogue;
import org.sagwise.part.key.Keys;
import org.sagwise.plan.drawer.CellMeasurement;
import org.sagwise.plan.drawer.Drawer;
import org.sagwise.plan.drawer.OwnCell;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.Places;

/**
 * A drawer as a table for spreadsheets: one line a measurement, with what its cell is in front; a
 * cell without measurements has one line. A text that a spreadsheet would take for a formula gets
 * an apostrophe in front, which is taken off again when it is read.
 */
public final class DrawerCsv {

    private static final String LINE_END = "\r\n";

    /** The first column that is about a measurement; those before it are about the cell. */
    static final String FIRST_MEASURED = "measured_on";

    static final String RETIRED = "retired";

    /** Columns in their order, with the key that each fills. */
    static final Map<String, String> COLUMNS = new LinkedHashMap<>();

    static {
        for (String same : List.of("mark", "name", "model", "chemistry", "format")) {
            COLUMNS.put(same, same);
        }
        COLUMNS.put("rated_capacity_mAh", "capacity_mAh");
        COLUMNS.put("rated_internal_mohm", "internal_mohm");
        COLUMNS.put("limit_A", "limit_A");
        COLUMNS.put("bought", "bought");
        COLUMNS.put("married_set", "married.set");
        COLUMNS.put("married_since", "married.since");
        COLUMNS.put(RETIRED, RETIRED);
        COLUMNS.put("retired_on", "retired.on");
        COLUMNS.put("retired_why", "retired.why");
        COLUMNS.put("note", "note");
        COLUMNS.put(FIRST_MEASURED, "on");
        for (String same : List.of("capacity_mAh", "internal_mohm", "rest_V", "week_V", "how")) {
            COLUMNS.put(same, same);
        }
    }

    private DrawerCsv() {}

    /** How numbers are written, and what stands between fields. */
    public enum Style {
        /** Commas between fields, a point before decimals. */
        POINT(','),
        /** Semicolons between fields, a comma before decimals: as spreadsheets want it where people write so. */
        COMMA(';');

        private final char separator;

        Style(char separator) {
            this.separator = separator;
        }

        private String number(double value) {
            String plain = Places.plain(value);
            return this == COMMA ? plain.replace('.', ',') : plain;
        }
    }

    /** Who is right where a table says something else of a cell than the drawer. */
    public enum Precedence {
        /** Nobody: it is told, and nothing is taken over. */
        NEITHER,
        TABLE
    }

    /** What came of reading a table. */
    public sealed interface Read {

        /**
         * The drawer with what the table says.
         *
         * @param cells how many cells are new
         * @param measurements how many measurements are new
         */
        record Ok(Drawer drawer, int cells, int measurements) implements Read {}

        /** Nothing is taken over; everything that is wrong, from the top of the table down. */
        record Refused(List<Finding> findings) implements Read {}
    }

    /** The names of the columns, in their order. */
    public static List<String> columns() {
        return List.copyOf(COLUMNS.keySet());
    }

    /** The table of a drawer. */
    public static String write(Drawer drawer, Style style) {
        StringBuilder table = new StringBuilder();
        table.append(String.join(String.valueOf(style.separator), COLUMNS.keySet()))
                .append(LINE_END);
        for (OwnCell cell : drawer.cells()) {
            List<CellMeasurement> measured = cell.measurements();
            for (int i = 0; i < Math.max(1, measured.size()); i++) {
                Keys numbers = i < measured.size() ? measured.get(i).keys() : Keys.NONE;
                table.append(row(cell, numbers, style)).append(LINE_END);
            }
        }
        return table.toString();
    }

    private static String row(OwnCell cell, Keys measured, Style style) {
        Keys keys = cell.keys();
        StringJoiner row = new StringJoiner(String.valueOf(style.separator));
        boolean ofCell = true;
        for (Map.Entry<String, String> column : COLUMNS.entrySet()) {
            ofCell &= !column.getKey().equals(FIRST_MEASURED);
            Object value = column.getKey().equals(RETIRED)
                    ? (cell.isInUse() ? "" : "yes")
                    : value(ofCell ? keys : measured, column.getValue());
            String text = value instanceof Double number ? style.number(number) : guarded(String.valueOf(value));
            row.add(CsvTable.written(text, style.separator));
        }
        return row.toString();
    }

    static Object value(Keys keys, String path) {
        int point = path.indexOf('.');
        Object value = point < 0
                ? keys.values().get(path)
                : keys.group(path.substring(0, point))
                        .map(inner -> inner.values().get(path.substring(point + 1)))
                        .orElse(null);
        return value == null ? "" : value;
    }

    /** A text that no spreadsheet takes for a formula. */
    static String guarded(String text) {
        return text.matches("(?s)'*[=+\\-@\\t\\r].*") ? "'" + text : text;
    }

    static String unguarded(String text) {
        return text.matches("(?s)'+[=+\\-@\\t\\r].*") ? text.substring(1) : text;
    }

    /**
     * Reads a table into a drawer: cells and measurements that it lacks are added, what it has is
     * kept.
     */
    public static Read read(byte[] bytes, Drawer into, Catalogue catalogue, Precedence precedence) {
        SourceText source = SourceText.of(bytes);
        return source.problem()
                .<Read>map(problem -> new Read.Refused(List.of(problem)))
                .orElseGet(() -> new DrawerCsvReader(into, catalogue, precedence).read(CsvTable.read(source.text())));
    }
}
