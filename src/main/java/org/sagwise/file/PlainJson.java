package org.sagwise.file;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.sagwise.part.key.Keys;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.Places;
import org.sagwise.scenario.Problem;
import org.sagwise.text.Position;

/**
 * Reads JSON without a library, into the same tree as {@link JsonDocument}. For the live page: there
 * Jackson and the locks that it needs would be larger than the engine, and what is read was written by
 * this program. Strict by RFC 8259 and limited in depth all the same, since a share text comes from
 * strangers; it only knows fewer words for what is broken.
 */
final class PlainJson {

    private final String text;
    private final List<Finding> findings = new ArrayList<>();
    private int at;
    private int line = 1;
    private int lineStart;

    private PlainJson(String text) {
        this.text = text;
    }

    /** Reads a whole text; what follows the first value is refused. */
    static Document read(String text) {
        PlainJson reader = new PlainJson(text);
        try {
            reader.space();
            if (reader.at == text.length()) {
                return broken(Finding.of("", Problem.NOT_JSON, JsonFault.Kind.EMPTY.word(), ""));
            }
            Node root = reader.node("", 0);
            reader.space();
            if (reader.at < text.length()) {
                throw reader.fault(JsonFault.Kind.TRAILING, "");
            }
            return new Document(Optional.of(root), reader.findings);
        } catch (Broken broken) {
            return broken(broken.finding);
        }
    }

    private static Document broken(Finding finding) {
        return new Document(Optional.empty(), List.of(finding));
    }

    private Node node(String place, int depth) {
        int ownLine = line;
        int column = column();
        return switch (peek()) {
            case '{' -> group(place, depth + 1, ownLine, column);
            case '[' -> items(place, depth + 1, ownLine, column);
            default -> new Node.Scalar(ownLine, column, single());
        };
    }

    private Node group(String place, int depth, int ownLine, int column) {
        Map<String, Node.Entry> entries = new LinkedHashMap<>();
        open(depth);
        while (more('}', entries.isEmpty())) {
            int nameLine = line;
            int nameColumn = column();
            String name = name();
            if (entries.containsKey(name)) {
                findings.add(Finding.of(Places.key(place, name), Problem.DUPLICATE_KEY, name)
                        .at(Optional.of(new Position(nameLine, nameColumn))));
            }
            Node value = node(Places.key(place, name), depth);
            Node kept =
                    name.equals(Keys.FOREIGN) ? new Node.Scalar(value.line(), value.column(), value.plain()) : value;
            entries.put(name, new Node.Entry(nameLine, nameColumn, kept));
        }
        return new Node.Group(ownLine, column, entries.isEmpty() ? Map.of() : entries);
    }

    private Node items(String place, int depth, int ownLine, int column) {
        List<Node> items = new ArrayList<>();
        open(depth);
        while (more(']', items.isEmpty())) {
            items.add(node(Places.item(place, items.size()), depth));
        }
        return new Node.Items(ownLine, column, items.isEmpty() ? List.of() : items);
    }

    private void open(int depth) {
        at++;
        if (depth > JsonDocument.DEEPEST) {
            throw new Broken(Finding.of("", Problem.TOO_DEEP, String.valueOf(JsonDocument.DEEPEST))
                    .at(Optional.of(position())));
        }
    }

    /** Whether another entry begins here; steps over the comma before it, or over the closing sign. */
    private boolean more(char closing, boolean first) {
        space();
        if (peek() == closing) {
            at++;
            return false;
        }
        if (!first) {
            take(',', JsonFault.Kind.MISSING_COMMA);
            space();
        }
        return true;
    }

    private String name() {
        if (peek() != '"') {
            throw fault(JsonFault.Kind.BARE_KEY, shown());
        }
        String name = string();
        space();
        take(':', JsonFault.Kind.MISSING_COLON);
        space();
        return name;
    }

    private Object single() {
        char first = peek();
        if (first == '"') {
            return string();
        } else if (first == '-' || isDigit(first)) {
            return number();
        }
        for (Map.Entry<String, Object> word : WORDS.entrySet()) {
            if (text.startsWith(word.getKey(), at)) {
                at += word.getKey().length();
                return word.getValue();
            }
        }
        throw fault(JsonFault.Kind.CHARACTER, shown());
    }

    private static final Map<String, Object> WORDS = words();

    private static Map<String, Object> words() {
        Map<String, Object> words = new HashMap<>();
        words.put("true", Boolean.TRUE);
        words.put("false", Boolean.FALSE);
        words.put("null", null);
        return words;
    }

    private WrittenNumber number() {
        int start = at;
        if (peek() == '-') {
            at++;
        }
        boolean zero = peek() == '0';
        int leading = at;
        digits();
        if (zero && at > leading + 1) {
            throw fault(JsonFault.Kind.NUMBER, text.substring(start, at));
        }
        if (at < text.length() && text.charAt(at) == '.') {
            at++;
            digits();
        }
        if (at < text.length() && (text.charAt(at) == 'e' || text.charAt(at) == 'E')) {
            at++;
            if (peek() == '+' || peek() == '-') {
                at++;
            }
            digits();
        }
        return WrittenNumber.of(text.substring(start, at));
    }

    private void digits() {
        if (!isDigit(peek())) {
            throw fault(JsonFault.Kind.NUMBER, shown());
        }
        while (at < text.length() && isDigit(text.charAt(at))) {
            at++;
        }
    }

    private static boolean isDigit(char sign) {
        return sign >= '0' && sign <= '9';
    }

    private String string() {
        at++;
        StringBuilder out = new StringBuilder();
        for (char sign = peek(); sign != '"'; sign = peek()) {
            if (sign < ' ') {
                throw fault(JsonFault.Kind.CONTROL, "");
            }
            at++;
            out.append(sign == '\\' ? escaped() : sign);
        }
        at++;
        return out.toString();
    }

    private char escaped() {
        char sign = peek();
        at++;
        return switch (sign) {
            case '"', '\\', '/' -> sign;
            case 'b' -> '\b';
            case 'f' -> '\f';
            case 'n' -> '\n';
            case 'r' -> '\r';
            case 't' -> '\t';
            case 'u' -> {
                int code = 0;
                for (int i = 0; i < 4; i++) {
                    int digit = peek() < 0x80 ? Character.digit(peek(), 16) : -1;
                    if (digit < 0) {
                        throw fault(JsonFault.Kind.ESCAPE, shown());
                    }
                    code = 16 * code + digit;
                    at++;
                }
                yield (char) code;
            }
            default -> {
                at--;
                throw fault(JsonFault.Kind.ESCAPE, "\\" + shown());
            }
        };
    }

    private void take(char wanted, JsonFault.Kind otherwise) {
        if (peek() != wanted) {
            throw fault(otherwise, shown());
        }
        at++;
    }

    private void space() {
        while (at < text.length() && " \t\r\n".indexOf(text.charAt(at)) >= 0) {
            if (text.charAt(at) == '\n' || isLoneReturn()) {
                line++;
                lineStart = at + 1;
            }
            at++;
        }
    }

    private boolean isLoneReturn() {
        return text.charAt(at) == '\r' && !text.startsWith("\n", at + 1);
    }

    /** The sign here. */
    private char peek() {
        if (at >= text.length()) {
            throw fault(JsonFault.Kind.CLIPPED, "");
        }
        return text.charAt(at);
    }

    private String shown() {
        return at < text.length() ? text.substring(at, text.offsetByCodePoints(at, 1)) : "";
    }

    private int column() {
        return at - lineStart + 1;
    }

    private Position position() {
        return new Position(line, column());
    }

    private Broken fault(JsonFault.Kind kind, String shown) {
        return new Broken(Finding.of("", Problem.NOT_JSON, kind.word(), shown).at(Optional.of(position())));
    }

    /** Reading stops here. */
    private static final class Broken extends RuntimeException {

        private static final long serialVersionUID = 1L;

        private final transient Finding finding;

        Broken(Finding finding) {
            super(null, null, false, false);
            this.finding = finding;
        }
    }
}
