package org.sagwise.file;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import org.sagwise.lesson.CellMove;
import org.sagwise.lesson.LessonProblem;
import org.sagwise.lesson.LinkMove;
import org.sagwise.lesson.Move;
import org.sagwise.lesson.PartMove;
import org.sagwise.part.PartKind;
import org.sagwise.part.key.Keys;
import org.sagwise.scenario.TerminalRef;

/** Reads the moves of a solution. */
final class LessonMoves {

    private static final List<String> HEADS =
            List.of("join", "cut", "free", "swap", "set", "mend", "turn", "add", "remove", "button", "probes");

    /** What makes a part that part: another one has to be added instead. */
    private static final List<String> FIXED = List.of("id", "kind");

    private LessonMoves() {}

    static List<Move> read(LessonFields step, String key) {
        return step.items(key).stream()
                .map(node -> LessonFields.of(node, step.faults()))
                .flatMap(fields -> one(fields).stream())
                .toList();
    }

    private static Optional<Move> one(LessonFields fields) {
        List<String> heads = fields.present(HEADS);
        if (heads.size() != 1) {
            fields.wrong(LessonProblem.ONE_OF, String.join(", ", HEADS));
            return Optional.empty();
        }
        Optional<Move> move = of(heads.get(0), fields);
        fields.refuseOthers();
        return move;
    }

    private static Optional<Move> of(String head, LessonFields fields) {
        return switch (head) {
            case "join" -> join(fields);
            case "cut" -> pair(fields, head, LinkMove.Cut::new);
            case "probes" -> pair(fields, head, Move.Probe::new);
            case "swap" -> swap(fields);
            case "free" -> fields.word(head).map(LinkMove.Free::new);
            case "turn" -> fields.word(head).map(CellMove.Turn::new);
            case "remove" -> fields.word(head).map(PartMove.Remove::new);
            case "mend" -> {
                double mohm = fields.neededNumber("contact_mohm");
                yield fields.word(head).map(link -> new LinkMove.Mend(link, mohm));
            }
            case "set" -> {
                Map<String, Object> keys = keysBeside(fields, head);
                yield fields.word(head).map(part -> new PartMove.Set(part, keys));
            }
            case "add" -> add(fields);
            default -> fields.word(head).map(it -> it.equals("held") ? new Move.Hold() : new Move.LetGo());
        };
    }

    private static Optional<Move> join(LessonFields fields) {
        double mohm = fields.number("contact_mohm").orElse(0);
        return pair(fields, "join", (from, to) -> new LinkMove.Join(from, to, mohm));
    }

    private static Optional<Move> swap(LessonFields fields) {
        List<String> both = fields.words("swap");
        if (both.size() != 2) {
            fields.wrong("swap", LessonProblem.NOT_A_PAIR);
            return Optional.empty();
        }
        return Optional.of(new CellMove.Swap(both.get(0), both.get(1)));
    }

    private static Optional<Move> pair(
            LessonFields fields, String head, BiFunction<TerminalRef, TerminalRef, Move> move) {
        return fields.pair(head).map(it -> move.apply(it.get(0), it.get(1)));
    }

    private static Optional<Move> add(LessonFields fields) {
        Map<String, Object> keys = keysBeside(fields, "add");
        String id = fields.neededWord("add");
        Optional<PartKind> kind =
                Optional.ofNullable(keys.get("kind")).map(String::valueOf).flatMap(PartKind::ofWord);
        if (kind.isEmpty()) {
            fields.wrong(LessonProblem.MISSING_KEY, "kind");
            return Optional.empty();
        }
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("id", id);
        all.putAll(keys);
        return Optional.of(new PartMove.Add(id, kind.get(), new Keys(all)));
    }

    /** Every key beside the head, numbers as numbers: whether they fit is tried on the bench. */
    private static Map<String, Object> keysBeside(LessonFields fields, String head) {
        Map<String, Object> keys = new LinkedHashMap<>();
        for (String key : fields.group().values().keySet()) {
            if (head.equals("set") && FIXED.contains(key)) {
                fields.wrong(key, LessonProblem.FIXED_KEY, key);
            } else if (!key.equals(head)) {
                fields.word(key).ifPresent(word -> keys.put(key, value(word)));
            }
        }
        return keys;
    }

    private static Object value(String word) {
        OptionalDouble number = LessonFields.parse(word);
        return number.isPresent() ? (Object) number.getAsDouble() : word;
    }
}
