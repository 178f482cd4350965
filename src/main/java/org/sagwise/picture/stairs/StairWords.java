package org.sagwise.picture.stairs;

import java.util.Locale;
import java.util.stream.Stream;
import org.sagwise.picture.scene.Figures;
import org.sagwise.quantity.Unit;
import org.sagwise.reading.Staircase;
import org.sagwise.reading.Staircase.Kind;
import org.sagwise.reading.Staircase.Step;

/** Words for steps. */
final class StairWords {

    private final StairScene scene;
    private final Figures figures;

    StairWords(StairScene scene) {
        this.scene = scene;
        this.figures = Figures.in(scene.locale());
    }

    Figures figures() {
        return figures;
    }

    String say(String key, Object... words) {
        return figures.texts().say(key, words);
    }

    String volts(double volts) {
        return figures.print(volts, Unit.VOLT);
    }

    /** What a step is called: the part's name, or the kind of joint; for sag that word. */
    String name(Step step) {
        return switch (step.kind()) {
            case SAG -> say(raised(step) ? "stairs.raised" : "stairs.sag");
            case CONTACT, WIRE -> kind(step.kind());
            case GAP -> step.part().isEmpty() ? say("stairs.gap-no-joint") : say("stairs.gap", partName(step));
            default -> partName(step);
        };
    }

    /** Whether a cell is charged: walked through backwards, what lifts its volts leads down. */
    private boolean raised(Step sag) {
        Staircase stairs = scene.staircase();
        boolean backwards = Stream.concat(
                        stairs.steps().stream(), stairs.lanes().stream().flatMap(lane -> lane.steps().stream()))
                .anyMatch(
                        each -> StairOrder.isSource(each.kind()) && each.part().equals(sag.part()) && each.riseV() < 0);
        return backwards ? sag.riseV() < 0 : sag.riseV() > 0;
    }

    /** What losses that were put together are called. */
    String name(Losses.Entry entry) {
        Step first = entry.steps().get(0);
        if (entry.steps().size() == 1) {
            return entry.kind() == Kind.SAG ? say("stairs.sag-of", partName(first)) : name(first);
        }
        if (entry.kind() == Kind.SAG || entry.grain() == Losses.Grain.KINDS) {
            return say("stairs.all-" + word(entry.kind()));
        }
        return say(entry.grain() == Losses.Grain.PLACES ? "stairs.all-outside" : "stairs.all-joints");
    }

    private String partName(Step step) {
        return scene.scenario().part(step.part()).map(figures::label).orElse(step.part());
    }

    private String kind(Kind kind) {
        return say("stairs." + word(kind));
    }

    private static String word(Kind kind) {
        return kind.name().toLowerCase(Locale.ROOT);
    }
}
