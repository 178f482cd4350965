package org.sagwise.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Sets lines in columns of equal width: words to the left, numbers to the right. */
final class TextTable {

    private static final String GAP = "   ";

    /** To which side the words of a column go. */
    enum Side {
        LEFT,
        RIGHT
    }

    private final List<Side> sides;
    private final List<List<String>> rows = new ArrayList<>();

    TextTable(Side... sides) {
        this.sides = List.of(sides);
    }

    /**
     * A first column of words, and numbers in the others, under their heads.
     *
     * @param heads what stands above the columns, as keys of texts without {@code head.}
     */
    static TextTable headed(CallContext call, String... heads) {
        Side[] sides = IntStream.range(0, heads.length)
                .mapToObj(column -> column == 0 ? Side.LEFT : Side.RIGHT)
                .toArray(Side[]::new);
        String[] words = Stream.of(heads)
                .map(head -> call.printable(call.texts().say("head." + head)))
                .toArray(String[]::new);
        return new TextTable(sides).row(words);
    }

    boolean isEmpty() {
        return rows.isEmpty();
    }

    /** Adds a row; one cell a column. */
    TextTable row(String... cells) {
        if (cells.length != sides.size()) {
            throw new IllegalArgumentException(cells.length + " cells for " + sides.size());
        }
        rows.add(List.of(cells));
        return this;
    }

    /** The lines, without spaces at their ends. */
    List<String> lines() {
        int[] widths = new int[sides.size()];
        for (List<String> row : rows) {
            for (int column = 0; column < widths.length; column++) {
                widths[column] = Math.max(widths[column], width(row.get(column)));
            }
        }
        return rows.stream().map(row -> line(row, widths)).toList();
    }

    private String line(List<String> row, int[] widths) {
        StringBuilder line = new StringBuilder();
        for (int column = 0; column < widths.length; column++) {
            String cell = row.get(column);
            String space = " ".repeat(widths[column] - width(cell));
            line.append(column == 0 ? "" : GAP);
            line.append(sides.get(column) == Side.LEFT ? cell + space : space + cell);
        }
        return line.toString().stripTrailing();
    }

    private static int width(String text) {
        return text.codePointCount(0, text.length());
    }
}
