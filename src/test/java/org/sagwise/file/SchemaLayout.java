package org.sagwise.file;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Prints JSON as the schemas are laid out: whatever fits into a line stands in one. */
final class SchemaLayout {

    private final int width;

    private SchemaLayout(int width) {
        this.width = width;
    }

    static String print(JsonNode node, int width) {
        return new SchemaLayout(width).text(node, "", 0) + "\n";
    }

    private String text(JsonNode node, String indent, int used) {
        String line = line(node);
        if (!node.isContainerNode() || used + line.length() <= width) {
            return line;
        }
        String deeper = indent + "  ";
        int last = node.size() - 1;
        List<String> items = new ArrayList<>();
        if (node.isObject()) {
            node.properties().forEach(field -> {
                String head = deeper + quoted(field.getKey()) + ": ";
                items.add(head + text(field.getValue(), deeper, head.length() + comma(items.size(), last)));
            });
        } else {
            node.forEach(item -> items.add(deeper + text(item, deeper, deeper.length() + comma(items.size(), last))));
        }
        String open = node.isObject() ? "{" : "[";
        String close = node.isObject() ? "}" : "]";
        return open + "\n" + String.join(",\n", items) + "\n" + indent + close;
    }

    private static int comma(int item, int last) {
        return item < last ? 1 : 0;
    }

    private static String line(JsonNode node) {
        List<String> items = new ArrayList<>();
        if (node.isObject()) {
            node.properties().forEach(it -> items.add(quoted(it.getKey()) + ": " + line(it.getValue())));
            return items.stream().collect(Collectors.joining(", ", "{", "}"));
        }
        if (node.isArray()) {
            node.forEach(item -> items.add(line(item)));
            return items.stream().collect(Collectors.joining(", ", "[", "]"));
        }
        return node.isNumber()
                ? new BigDecimal(node.asText()).stripTrailingZeros().toPlainString()
                : node.toString();
    }

    private static String quoted(String name) {
        return "\"" + name + "\"";
    }
}
