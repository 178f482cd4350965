package org.sagwise.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.sagwise.part.Catalogue;
import org.sagwise.part.key.KeySpec;
import org.sagwise.part.key.Keys;
import org.sagwise.plan.drawer.CellMeasurement;
import org.sagwise.plan.drawer.Drawer;
import org.sagwise.plan.drawer.DrawerKeys;
import org.sagwise.plan.drawer.DrawerProblem;
import org.sagwise.plan.drawer.OwnCell;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.Places;
import org.sagwise.text.Position;

/** Takes a table of cells over into a drawer. Used for one table and thrown away. */
final class DrawerCsvReader {

    /** What says in the column about retirement that a cell is in use. */
    private static final Set<String> NO = Set.of("", "no", "nein", "0", "false", "-");

    private final Drawer into;
    private final Catalogue catalogue;
    private final DrawerCsv.Precedence precedence;
    private final List<Finding> findings = new ArrayList<>();
    private final Map<String, Keys> cells = new LinkedHashMap<>();
    private final Map<String, List<CellMeasurement>> measured = new LinkedHashMap<>();
    private List<String> heads = List.of();
    private boolean decimalComma;
    private int more;

    DrawerCsvReader(Drawer into, Catalogue catalogue, DrawerCsv.Precedence precedence) {
        this.into = into;
        this.catalogue = catalogue;
        this.precedence = precedence;
        into.cells().forEach(cell -> {
            cells.put(cell.mark(), cell.keys());
            measured.put(cell.mark(), new ArrayList<>(cell.measurements()));
        });
    }

    /** Reads a table; all that is wrong with it is told at once. */
    DrawerCsv.Read read(CsvTable table) {
        findings.addAll(table.findings());
        decimalComma = table.hasDecimalComma();
        if (findings.isEmpty()) {
            heads(table.rows());
        }
        if (findings.isEmpty()) {
            table.rows().stream().skip(1).forEach(this::row);
        }
        if (cells.size() > DrawerKeys.MOST_CELLS) {
            findings.add(Finding.of("", DrawerProblem.TOO_MANY_CELLS, String.valueOf(DrawerKeys.MOST_CELLS)));
        }
        measured.forEach((mark, all) -> {
            if (all.size() > DrawerKeys.MOST_MEASUREMENTS) {
                findings.add(Finding.of(
                        "", DrawerProblem.TOO_MANY_MEASUREMENTS, String.valueOf(DrawerKeys.MOST_MEASUREMENTS)));
            }
        });
        if (!findings.isEmpty()) {
            return new DrawerCsv.Read.Refused(
                    findings.stream().sorted(Finding.READING_ORDER).toList());
        }
        List<OwnCell> all = new ArrayList<>();
        cells.forEach((mark, keys) -> all.add(OwnCell.of(keys, measured.get(mark))));
        return new DrawerCsv.Read.Ok(
                new Drawer(all, into.foreign()), all.size() - into.cells().size(), more);
    }

    private void heads(List<List<CsvTable.Field>> rows) {
        if (rows.isEmpty()) {
            findings.add(Finding.of("", DrawerProblem.NO_TABLE));
            return;
        }
        List<String> found = new ArrayList<>();
        for (CsvTable.Field head : rows.get(0)) {
            String said = head.text().strip();
            Optional<String> known = DrawerCsv.COLUMNS.keySet().stream()
                    .filter(said::equalsIgnoreCase)
                    .findFirst();
            if (known.isEmpty() && !said.isEmpty()) {
                wrong(head, DrawerProblem.UNKNOWN_COLUMN, said, String.join(", ", DrawerCsv.COLUMNS.keySet()));
            } else if (known.isPresent() && found.contains(known.get())) {
                wrong(head, DrawerProblem.COLUMN_TWICE, said);
            }
            found.add(known.orElse(""));
        }
        if (!found.contains("mark") && findings.isEmpty()) {
            findings.add(Finding.of("", DrawerProblem.MISSING_COLUMN).at(Optional.of(new Position(1, 1))));
        }
        heads = found;
    }

    private void row(List<CsvTable.Field> row) {
        int before = findings.size();
        Map<String, CsvTable.Field> fields = new LinkedHashMap<>();
        for (int i = 0; i < row.size(); i++) {
            CsvTable.Field field = row.get(i);
            boolean empty = field.text().isBlank();
            if (i >= heads.size() && !empty) {
                wrong(field, DrawerProblem.TOO_MANY_FIELDS);
                return;
            } else if (!empty && !heads.get(i).isEmpty()) {
                fields.put(heads.get(i), field);
            }
        }
        if (fields.isEmpty()) {
            return;
        }
        Keys cell = Keys.NONE;
        Keys numbers = Keys.NONE;
        boolean ofCell = true;
        for (Map.Entry<String, String> column : DrawerCsv.COLUMNS.entrySet()) {
            ofCell &= !column.getKey().equals(DrawerCsv.FIRST_MEASURED);
            CsvTable.Field field = fields.get(column.getKey());
            if (field == null) {
                continue;
            } else if (ofCell) {
                cell = with(cell, column.getValue(), field, DrawerKeys.CELL);
            } else {
                numbers = with(numbers, column.getValue(), field, DrawerKeys.MEASURED);
            }
        }
        if (findings.size() == before) {
            take(cell, numbers, fields, row.get(0).at());
        }
    }

    private void take(Keys cell, Keys numbers, Map<String, CsvTable.Field> fields, Position start) {
        int before = findings.size();
        locate(DrawerKeys.checkCell(cell, "", catalogue), false, fields, start);
        if (!numbers.names().isEmpty() && !numbers.has("on")) {
            findings.add(Finding.of("", DrawerProblem.NEEDS_DATE).at(Optional.of(start)));
        } else if (!numbers.names().isEmpty()) {
            locate(DrawerKeys.checkMeasured(numbers, ""), true, fields, start);
        }
        if (findings.size() > before) {
            return;
        }
        String mark = cell.text("mark").orElseThrow();
        cells.put(mark, merged(mark, cells.getOrDefault(mark, Keys.NONE), cell, fields));
        List<CellMeasurement> all = measured.computeIfAbsent(mark, name -> new ArrayList<>());
        boolean known =
                all.stream().anyMatch(it -> it.keys().without(Keys.FOREIGN).equals(numbers));
        if (!numbers.names().isEmpty() && !known) {
            all.add(CellMeasurement.of(numbers));
            more++;
        }
    }

    /** Findings about keys, at the fields that hold them. */
    private void locate(List<Finding> found, boolean ofMeasured, Map<String, CsvTable.Field> fields, Position start) {
        for (Finding each : found) {
            String column = DrawerCsv.COLUMNS.entrySet().stream()
                    .filter(it -> it.getValue().equals(each.place()) && ofMeasured == isMeasured(it.getKey()))
                    .map(Map.Entry::getKey)
                    .findFirst()
                    .orElse("");
            Position where = fields.containsKey(column) ? fields.get(column).at() : start;
            findings.add(new Finding(column, Optional.empty(), each.problem(), each.details()).at(Optional.of(where)));
        }
    }

    private static boolean isMeasured(String column) {
        List<String> all = DrawerCsv.columns();
        return all.indexOf(column) >= all.indexOf(DrawerCsv.FIRST_MEASURED);
    }

    private Keys merged(String mark, Keys old, Keys now, Map<String, CsvTable.Field> fields) {
        Keys merged = old;
        for (Map.Entry<String, String> column : DrawerCsv.COLUMNS.entrySet()) {
            CsvTable.Field field = fields.get(column.getKey());
            String path = column.getValue();
            if (field == null || isMeasured(column.getKey()) || path.equals(DrawerCsv.RETIRED)) {
                continue;
            }
            Object said = DrawerCsv.value(now, path);
            Object had = DrawerCsv.value(old, path);
            if (!had.equals("") && !had.equals(said) && precedence == DrawerCsv.Precedence.NEITHER) {
                wrong(field, DrawerProblem.CONFLICT, mark, column.getKey(), shown(said), shown(had));
            } else {
                merged = put(merged, path, said);
            }
        }
        return now.has(DrawerCsv.RETIRED) && !merged.has(DrawerCsv.RETIRED)
                ? merged.with(DrawerCsv.RETIRED, Keys.NONE)
                : merged;
    }

    private static String shown(Object value) {
        return value instanceof Double number ? Places.plain(number) : String.valueOf(value);
    }

    private static Keys put(Keys keys, String path, Object value) {
        int point = path.indexOf('.');
        if (point < 0) {
            return keys.with(path, value);
        }
        String outer = path.substring(0, point);
        Keys inner = keys.group(outer).orElse(Keys.NONE).with(path.substring(point + 1), value);
        return keys.with(outer, inner);
    }

    private Keys with(Keys keys, String path, CsvTable.Field field, List<KeySpec> specs) {
        String text = DrawerCsv.unguarded(field.text().strip());
        if (path.equals(DrawerCsv.RETIRED)) {
            boolean is = !NO.contains(text.toLowerCase(Locale.ROOT));
            return is && !keys.has(DrawerCsv.RETIRED) ? keys.with(DrawerCsv.RETIRED, Keys.NONE) : keys;
        }
        boolean number =
                specs.stream().anyMatch(spec -> spec.name().equals(path) && spec.type() instanceof KeySpec.NumberType);
        if (!number) {
            return put(keys, path, text);
        }
        Optional<Double> value = number(text);
        if (value.isEmpty()) {
            wrong(field, DrawerProblem.NOT_A_NUMBER, text);
            return keys;
        }
        return put(keys, path, value.get());
    }

    /**
     * A number. A mark of which nobody can tell whether it stands before decimals or between
     * thousands makes it none.
     */
    private Optional<Double> number(String text) {
        String plain = text.replace("\u2212", "-");
        boolean odd = plain.matches("[+-]?[1-9][0-9]{0,2}" + (decimalComma ? "\\." : ",") + "[0-9]{3}");
        if (odd || !plain.matches("[+-]?[0-9]+([.,][0-9]+)?([eE][+-]?[0-9]{1,3})?")) {
            return Optional.empty();
        }
        return Fields.parse(plain.replace(',', '.')).stream().boxed().findFirst();
    }

    private void wrong(CsvTable.Field field, DrawerProblem problem, String... details) {
        findings.add(Finding.of("", problem, details).at(Optional.of(field.at())));
    }
}
