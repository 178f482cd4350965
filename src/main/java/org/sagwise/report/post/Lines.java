package org.sagwise.report.post;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.sagwise.text.Printable;
import org.sagwise.text.Signs;
import org.sagwise.text.Wrap;

/** Breaks words into lines of a width and sets tables in columns, for type of equal width. */
final class Lines {

    /** What a code block in a forum shows without a scroll bar: common practice, no source. */
    static final int WIDTH = 72;

    private static final Pattern NUMBER_AND_UNIT =
            Pattern.compile("(?<=\\d) (?=[\\p{L}%°µΩ][\\p{L}Ω²/]{0,6}(?![\\p{L}]))");

    private static final int LEAST_NAME = 12;

    private final Signs signs;

    Lines(Signs signs) {
        this.signs = signs;
    }

    /** A text on one line, as these signs can show it: nothing in it steers a terminal. */
    String plain(String text) {
        return Printable.line(text.replaceAll("\\s+", " ").strip(), signs);
    }

    /** A text in lines; a number stays with its unit. */
    List<String> wrap(String text, String first, String others) {
        String bound = NUMBER_AND_UNIT.matcher(plain(text)).replaceAll("\u00a0");
        return Wrap.lines(bound, first, others, WIDTH).stream()
                .map(each -> each.replace('\u00a0', ' '))
                .toList();
    }

    /** A table in columns: words to the left, numbers to the right, names cut where need be. */
    List<String> columns(Block.Table table) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(table.heads().stream().map(this::plain).toList());
        // Some forums make links of addresses in code blocks, too.
        table.rows()
                .forEach(row ->
                        rows.add(row.stream().map(this::plain).map(Inert::links).toList()));
        int[] widths = new int[table.heads().size()];
        int numbers = 0;
        for (int column = widths.length - 1; column >= 0; column--) {
            for (List<String> row : rows) {
                widths[column] = Math.max(widths[column], length(row.get(column)));
            }
            numbers += column > 0 ? widths[column] + 2 : 0;
        }
        int name = Math.max(LEAST_NAME, WIDTH - numbers);
        widths[0] = Math.min(widths[0], name);
        return rows.stream().map(row -> line(row, widths)).toList();
    }

    private static String line(List<String> row, int[] widths) {
        StringBuilder line = new StringBuilder();
        for (int column = 0; column < widths.length; column++) {
            String cell = shortened(row.get(column), widths[column]);
            String space = " ".repeat(widths[column] - length(cell));
            line.append(column == 0 ? cell + space : "  " + space + cell);
        }
        return line.toString().stripTrailing();
    }

    private static String shortened(String name, int most) {
        return length(name) <= most ? name : name.substring(0, name.offsetByCodePoints(0, most - 3)) + "...";
    }

    /** A long text without spaces in pieces of the width. */
    static List<String> chopped(String text) {
        List<String> pieces = new ArrayList<>();
        for (int from = 0; from < text.length(); from += WIDTH) {
            pieces.add(text.substring(from, Math.min(text.length(), from + WIDTH)));
        }
        return pieces;
    }

    private static int length(CharSequence text) {
        return text.toString().codePointCount(0, text.length());
    }
}
