package org.sagwise.file;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.BiFunction;
import org.sagwise.lesson.LessonProblem;
import org.sagwise.part.PartKind;
import org.sagwise.part.key.Keys;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Probes;
import org.sagwise.scenario.TerminalRef;
import org.sagwise.scenario.edit.CutBetween;
import org.sagwise.scenario.edit.DeleteParts;
import org.sagwise.scenario.edit.Edit;
import org.sagwise.scenario.edit.FlipParts;
import org.sagwise.scenario.edit.FreeParts;
import org.sagwise.scenario.edit.JoinTerminals;
import org.sagwise.scenario.edit.MendJoint;
import org.sagwise.scenario.edit.PressButton;
import org.sagwise.scenario.edit.PutPart;
import org.sagwise.scenario.edit.SetPartKeys;
import org.sagwise.scenario.edit.SetProbes;
import org.sagwise.scenario.edit.SwapParts;

/** Reads the moves of a solution. */
final class LessonMoves {

    private static final List<String> HEADS =
            List.of("join", "cut", "free", "swap", "set", "mend", "turn", "add", "remove", "button", "probes");

    /** What makes a part that part: another one has to be added instead. */
    private static final List<String> FIXED = List.of("id", "kind");

    private LessonMoves() {}

    static List<Edit> read(Fields step, String key) {
        return step.items(key).stream().flatMap(fields -> one(fields).stream()).toList();
    }

    private static Optional<Edit> one(Fields fields) {
        List<String> heads = fields.present(HEADS);
        if (heads.size() != 1) {
            fields.wrong(LessonProblem.ONE_OF, String.join(", ", HEADS));
            return Optional.empty();
        }
        Optional<Edit> move = of(heads.get(0), fields);
        fields.refuseOthers();
        return move;
    }

    private static Optional<Edit> of(String head, Fields fields) {
        return switch (head) {
            case "join" -> join(fields);
            case "cut" -> pair(fields, head, CutBetween::new);
            case "probes" -> pair(fields, head, (red, black) -> new SetProbes(Optional.of(Probes.of(red, black))));
            case "swap" -> swap(fields);
            case "free" -> fields.word(head).map(id -> new FreeParts(Set.of(id)));
            case "turn" -> fields.word(head).map(id -> new FlipParts(Set.of(id)));
            case "remove" -> fields.word(head).map(id -> new DeleteParts(Set.of(id)));
            case "mend" -> {
                double mohm = fields.neededNumber("contact_mohm");
                yield fields.word(head).map(link -> new MendJoint(link, mohm));
            }
            case "set" -> {
                Keys keys = new Keys(keysBeside(fields, head));
                yield fields.word(head).map(part -> new SetPartKeys(part, keys, Set.of()));
            }
            case "add" -> add(fields);
            default -> fields.word(head).map(it -> new PressButton(it.equals("held")));
        };
    }

    private static Optional<Edit> join(Fields fields) {
        OptionalDouble mohm = fields.number("contact_mohm");
        return pair(
                fields,
                "join",
                (from, to) -> mohm.isPresent()
                        ? JoinTerminals.touch(from, to, mohm.getAsDouble())
                        : JoinTerminals.ideal(from, to));
    }

    private static Optional<Edit> swap(Fields fields) {
        List<String> both = fields.words("swap");
        if (both.size() != 2) {
            fields.wrong("swap", LessonProblem.NOT_A_PAIR);
            return Optional.empty();
        }
        return Optional.of(new SwapParts(both.get(0), both.get(1)));
    }

    private static Optional<Edit> pair(Fields fields, String head, BiFunction<TerminalRef, TerminalRef, Edit> move) {
        return fields.pair(head).map(it -> move.apply(it.get(0), it.get(1)));
    }

    private static Optional<Edit> add(Fields fields) {
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
        return Optional.of(new PutPart(Part.of(new Keys(all))));
    }

    /** Every key beside the head, numbers as numbers: whether they fit is tried on the bench. */
    private static Map<String, Object> keysBeside(Fields fields, String head) {
        Map<String, Object> keys = new LinkedHashMap<>();
        for (String key : fields.keys()) {
            if (head.equals("set") && FIXED.contains(key)) {
                fields.wrong(key, LessonProblem.FIXED_KEY, key);
            } else if (!key.equals(head)) {
                fields.word(key).ifPresent(word -> keys.put(key, value(word)));
            }
        }
        return keys;
    }

    private static Object value(String word) {
        OptionalDouble number = Fields.parse(word);
        return number.isPresent() ? (Object) number.getAsDouble() : word;
    }
}
