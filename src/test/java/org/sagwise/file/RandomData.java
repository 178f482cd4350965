package org.sagwise.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.sagwise.part.key.KeySpec.Bound;
import org.sagwise.part.key.KeySpec.Grain;
import org.sagwise.part.key.KeySpec.NumberType;

/** Values for random scenarios: numbers in range, all sorts of text, data of other tools. */
final class RandomData {

    private static final String[] ODD_TEXT = {
        "\"", "\\", "\n", "\r\n", "\t", "\u0000", "\u001f", "\u007f", "\u2028", "Ω", "−", "é", "漢",
        "\ud83d\udd0b", "\ud800", "\udc00", "{", "}", "[", "]", ":", ",", " ", "'", "/", "</script>",
        "\ufeff", "\u202e"
    };

    private static final String[] LITERAL_NUMBERS = {
        "0",
        "-0",
        "0.0",
        "1.50",
        "1e5",
        "1E+5",
        "-2.50e-10",
        "12345678901234567890",
        "0.1000000000000000055511151231257827",
        "1e999"
    };

    private static final int DEEPEST = 6;

    private final Random random;

    RandomData(Random random) {
        this.random = random;
    }

    <T> T one(List<T> choices) {
        return choices.get(random.nextInt(choices.size()));
    }

    double number(NumberType type) {
        double span = type.most() - type.least();
        double value = switch (random.nextInt(4)) {
            case 0 -> type.most();
            case 1 -> type.least() + Math.rint(random.nextInt(100) * span / 100);
            case 2 -> type.least() + span * random.nextDouble();
            default -> type.least() + span * Math.pow(10, -random.nextInt(12));
        };
        double grained = type.grain() == Grain.WHOLE ? Math.rint(value) : value;
        boolean bare = type.bound() == Bound.EXCLUDED && grained <= type.least();
        return bare ? type.most() : Math.min(grained, type.most());
    }

    String text(int longest) {
        StringBuilder text = new StringBuilder();
        int length = random.nextInt(longest / 2);
        while (text.length() < length) {
            text.append(
                    random.nextInt(3) > 0
                            ? String.valueOf((char) ('a' + random.nextInt(26)))
                            : ODD_TEXT[random.nextInt(ODD_TEXT.length)]);
        }
        return text.toString();
    }

    /** An object such as another tool may leave under {@code x}. */
    Map<String, Object> object(int depth) {
        Map<String, Object> object = new LinkedHashMap<>();
        int size = random.nextInt(5);
        for (int i = 0; i < size; i++) {
            object.put(random.nextInt(3) == 0 ? text(30) : "key" + i, anything(depth + 1));
        }
        return object;
    }

    private Object anything(int depth) {
        return switch (random.nextInt(depth < DEEPEST ? 7 : 5)) {
            case 0 -> WrittenNumber.of(LITERAL_NUMBERS[random.nextInt(LITERAL_NUMBERS.length)]);
            case 1 -> text(40);
            case 2 -> random.nextBoolean();
            case 3 -> null;
            case 4 -> WrittenNumber.of(String.valueOf(random.nextInt()));
            case 5 -> object(depth);
            default -> list(depth);
        };
    }

    private List<Object> list(int depth) {
        List<Object> list = new ArrayList<>();
        int size = random.nextInt(5);
        for (int i = 0; i < size; i++) {
            list.add(anything(depth + 1));
        }
        return list;
    }
}
