package org.sagwise.file;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.sagwise.hazard.Signal;
import org.sagwise.lesson.Choice;
import org.sagwise.lesson.Idea;
import org.sagwise.lesson.LessonProblem;
import org.sagwise.lesson.ReadingRef;
import org.sagwise.lesson.Step;
import org.sagwise.lesson.Step.Role;
import org.sagwise.text.LocalText;

/** Reads the steps of a lesson. */
final class LessonSteps {

    private static final List<String> KINDS =
            List.of("say", "predict", "estimate", "do", "measure", "explain", "write", "caution", "check");

    private static final String KEPT = "kept";

    private final Set<String> ids = new HashSet<>();

    List<Step> read(Fields lesson) {
        List<Step> steps = new ArrayList<>();
        for (Fields fields : lesson.items("steps")) {
            String kind = fields.neededWord("kind");
            Step.Head head = head(fields);
            Optional<Step> step = step(kind, head, fields);
            if (step.isPresent()) {
                fields.refuseOthers();
                steps.add(step.get());
            } else if (!kind.isEmpty()) {
                LessonConditions.unknown(fields, "kind", kind, KINDS);
            }
        }
        return steps;
    }

    private Step.Head head(Fields fields) {
        String id = fields.neededWord("id");
        if (!id.isEmpty() && !LessonReader.isName(id)) {
            fields.wrong("id", LessonProblem.BAD_ID, id);
        } else if (!ids.add(id) && !id.isEmpty()) {
            fields.wrong("id", LessonProblem.DUPLICATE_ID, id);
        }
        return new Step.Head(
                id,
                fields.text("text"),
                fields.word("bench"),
                fields.word("beside"),
                fields.words("look"),
                fields.textIfAny("note"),
                fields.flag("skip"));
    }

    private Optional<Step> step(String kind, Step.Head head, Fields fields) {
        return switch (kind) {
            case "say" -> Optional.of(new Step.Say(head));
            case "explain" -> Optional.of(new Step.Explain(head));
            case "write" -> Optional.of(write(head, fields));
            case "predict" -> Optional.of(choose(head, Role.PREDICT, fields));
            case "check" -> Optional.of(choose(head, Role.CHECK, fields));
            case "estimate" -> Optional.of(estimate(head, fields));
            case "do" -> Optional.of(makeDo(head, fields));
            case "measure" -> Optional.of(measure(head, fields));
            case "caution" -> Optional.of(caution(head, fields));
            default -> Optional.empty();
        };
    }

    private static Step write(Step.Head head, Fields fields) {
        List<LocalText> points = fields.texts("points");
        count(fields, "points", points.size(), 2, 6);
        return new Step.Write(head, points, fields.text("model"));
    }

    private Step choose(Step.Head head, Role role, Fields fields) {
        List<Choice> choices = new ArrayList<>();
        for (Fields each : fields.items("choices")) {
            choices.add(choice(each));
        }
        count(fields, "choices", choices.size(), role == Role.PREDICT ? 3 : 2, 4);
        if (choices.stream().filter(Choice::isRight).count() != 1) {
            fields.wrong("choices", LessonProblem.RIGHT_ANSWERS);
        }
        return new Step.Choose(head, role, choices, order(fields), role == Role.PREDICT ? also(fields) : Set.of());
    }

    /** What a prediction asks for besides. */
    private static Set<Step.Also> also(Fields fields) {
        Set<Step.Also> also = EnumSet.noneOf(Step.Also.class);
        for (String word : fields.words("also")) {
            Stream.of(Step.Also.values())
                    .filter(it -> it.word().equals(word))
                    .findFirst()
                    .ifPresentOrElse(
                            also::add,
                            () -> LessonConditions.unknown(
                                    fields,
                                    "also",
                                    word,
                                    Stream.of(Step.Also.values())
                                            .map(Step.Also::word)
                                            .toList()));
        }
        return also;
    }

    private static Step.Order order(Fields fields) {
        Optional<String> word = fields.word("order");
        if (word.filter(it -> !it.equals(KEPT)).isPresent()) {
            LessonConditions.unknown(fields, "order", word.get(), List.of(KEPT));
        }
        return word.isPresent() ? Step.Order.KEPT : Step.Order.ANY;
    }

    private Choice choice(Fields fields) {
        boolean right = fields.flag("right");
        Optional<String> word = fields.word("idea");
        if (right && word.isPresent()) {
            fields.wrong("idea", LessonProblem.RIGHT_WITH_IDEA);
        } else if (!right && word.isEmpty()) {
            fields.wrong(LessonProblem.NO_IDEA);
        }
        Optional<Idea> idea = word.flatMap(Idea::ofWord);
        if (word.isPresent() && idea.isEmpty()) {
            LessonConditions.unknown(
                    fields,
                    "idea",
                    word.get(),
                    Stream.of(Idea.values()).map(Idea::word).toList());
        }
        Choice choice = new Choice(
                fields.text("text"),
                right ? Optional.empty() : Optional.of(idea.orElse(Idea.SLIP)),
                fields.text("reply"));
        fields.refuseOthers();
        return choice;
    }

    private Step estimate(Step.Head head, Fields fields) {
        ReadingRef ref = reading(fields);
        double share = share(fields, "10%");
        return new Step.Estimate(head, ref, share, fields.text("reply"));
    }

    private Step makeDo(Step.Head head, Fields fields) {
        List<LocalText> hints = fields.texts("hints");
        var until = LessonConditions.read(fields, "until");
        count(fields, "hints", hints.size(), 1, 3);
        count(fields, "until", until.size(), 1, 8);
        return new Step.Do(head, until, LessonMoves.read(fields, "solution"), hints);
    }

    private Step measure(Step.Head head, Fields fields) {
        ReadingRef ref = reading(fields);
        double expected = fields.neededNumber("is");
        double share = share(fields, "2%");
        double slack = fields.number("slack").orElse(0);
        return new Step.Measure(head, ref, expected, share, slack, fields.texts("hints"));
    }

    private Step caution(Step.Head head, Fields fields) {
        String word = fields.neededWord("signal");
        Optional<Signal> signal =
                Stream.of(Signal.values()).filter(it -> it.name().equals(word)).findFirst();
        if (signal.isEmpty() && !word.isEmpty()) {
            List<String> known = Stream.of(Signal.values()).map(Signal::name).toList();
            LessonConditions.unknown(fields, "signal", word, known);
        }
        return new Step.Caution(head, signal.orElse(Signal.values()[0]), fields.text("harm"), fields.text("avoid"));
    }

    private static ReadingRef reading(Fields fields) {
        String word = fields.neededWord("reading");
        Optional<ReadingRef> ref = ReadingRef.parse(word);
        if (ref.isEmpty() && !word.isEmpty()) {
            fields.wrong("reading", LessonProblem.BAD_READING, word);
        }
        return ref.orElse(ReadingRef.parse("pack.delivered_W").orElseThrow());
    }

    private static double share(Fields fields, String usual) {
        return LessonConditions.tolerance(fields, fields.word("within").orElse(usual), 1);
    }

    private static void count(Fields fields, String key, int size, int least, int most) {
        if (size < least) {
            fields.wrong(key, LessonProblem.TOO_FEW, key, String.valueOf(least));
        } else if (size > most) {
            fields.wrong(key, LessonProblem.TOO_MANY, key, String.valueOf(most));
        }
    }
}
