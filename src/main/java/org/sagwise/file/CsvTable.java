package org.sagwise.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.sagwise.plan.drawer.DrawerProblem;
import org.sagwise.scenario.Finding;
import org.sagwise.text.Position;

/**
 * A table of text with separated fields (RFC 4180), each of which knows where it stands. The
 * separator, be it comma, semicolon or tab, is found in the first line.
 */
final class CsvTable {

    /**
     * A field.
     *
     * @param text what it holds, without the quotation marks around it
     * @param at where it begins
     */
    record Field(String text, Position at) {}

    private final String text;
    private final char separator;
    private final List<List<Field>> rows = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();
    private int at;
    private int line = 1;
    private int lineStart;

    private CsvTable(String text) {
        this.text = text;
        this.separator = separator(text.lines().findFirst().orElse(""));
    }

    static CsvTable read(String text) {
        CsvTable table = new CsvTable(text);
        table.read();
        return table;
    }

    /** Every line that holds anything, in order. */
    List<List<Field>> rows() {
        return rows;
    }

    /** Whether a comma can only stand before decimals here. */
    boolean hasDecimalComma() {
        return separator != ',';
    }

    /** Quotation marks that do not fit. */
    List<Finding> findings() {
        return findings;
    }

    private static char separator(String heads) {
        char best = ',';
        long most = 0;
        for (char each : new char[] {',', ';', '\t'}) {
            long count = heads.chars().filter(sign -> sign == each).count();
            if (count > most) {
                best = each;
                most = count;
            }
        }
        return best;
    }

    private void read() {
        while (at < text.length() && findings.isEmpty()) {
            List<Field> row = row();
            if (row.size() > 1 || !row.get(0).text().isBlank()) {
                rows.add(row);
            }
        }
    }

    private List<Field> row() {
        List<Field> row = new ArrayList<>();
        row.add(field());
        while (at < text.length() && text.charAt(at) == separator) {
            at++;
            row.add(field());
        }
        if (at < text.length() && text.charAt(at) == '\r') {
            at++;
        }
        if (at < text.length() && text.charAt(at) == '\n') {
            at++;
        }
        line++;
        lineStart = at;
        return row;
    }

    private Position here() {
        return new Position(line, at - lineStart + 1);
    }

    private Field field() {
        Position begin = here();
        return at < text.length() && text.charAt(at) == '"' ? quoted(begin) : new Field(plain(), begin);
    }

    private String plain() {
        int start = at;
        while (!isAtEnd()) {
            if (text.charAt(at) == '"') {
                wrong(DrawerProblem.STRAY_QUOTE, here());
            }
            at++;
        }
        return text.substring(start, at);
    }

    private Field quoted(Position begin) {
        StringBuilder inner = new StringBuilder();
        at++;
        while (at < text.length()) {
            char sign = text.charAt(at++);
            if (sign == '"' && at < text.length() && text.charAt(at) == '"') {
                inner.append('"');
                at++;
            } else if (sign == '"') {
                if (!isAtEnd()) {
                    wrong(DrawerProblem.STRAY_QUOTE, here());
                    plain();
                }
                return new Field(inner.toString(), begin);
            } else {
                inner.append(sign);
                if (sign == '\n') {
                    line++;
                    lineStart = at;
                }
            }
        }
        wrong(DrawerProblem.OPEN_QUOTE, begin);
        return new Field(inner.toString(), begin);
    }

    /** Whether a field ends here. */
    private boolean isAtEnd() {
        return at >= text.length()
                || text.charAt(at) == separator
                || text.charAt(at) == '\n'
                || text.charAt(at) == '\r';
    }

    private void wrong(DrawerProblem problem, Position where) {
        if (findings.isEmpty()) {
            findings.add(Finding.of("", problem).at(Optional.of(where)));
        }
    }

    /** A field as it is written: in quotation marks where it needs them. */
    static String written(String text, char separator) {
        boolean plain = text.chars().noneMatch(it -> it == separator || it == '"' || it == '\n' || it == '\r');
        return plain ? text : '"' + text.replace("\"", "\"\"") + '"';
    }
}
