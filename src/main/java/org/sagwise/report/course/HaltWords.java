package org.sagwise.report.course;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.sagwise.run.RunEvent.Kind;
import org.sagwise.run.RunTexts;
import org.sagwise.run.playback.Halt;

/**
 * What there is to say when the clock stops.
 *
 * @param title when, and what ended it
 * @param sentences what happened, with its numbers
 * @param advice what to do in front of the thing; empty where nothing is to be done
 * @param isGrave whether a cell vents, or may: people must leave
 */
public record HaltWords(String title, List<String> sentences, Optional<String> advice, boolean isGrave) {

    /** What advice is about, the most urgent first. */
    public enum Topic {
        HOT_CELL,
        OVERCHARGED,
        TOO_EMPTY,
        HOT_WIRE,
        FUSE,
        PTC,
        GUARD,
        COIL,
        BOARD,
        CUTOFF;

        String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    public static HaltWords of(Halt halt, ClockTexts texts) {
        RunTexts about = texts.about(halt.bench());
        String at = texts.time(halt.state().timeS());
        String title = halt.end()
                .map(end -> texts.word("halt.ran-down", at, about.end(end)))
                .orElseGet(() -> texts.word("halt.at", at));
        List<String> sentences =
                halt.events().stream().map(about::sentence).distinct().limit(4).toList();
        boolean grave = halt.isGrave();
        Optional<String> advice = halt.events().stream()
                .flatMap(event -> topic(event.kind()).stream())
                .min(Comparator.naturalOrder())
                .map(topic -> texts.word("do." + topic.word()));
        return new HaltWords(title, sentences, grave ? Optional.empty() : advice, grave);
    }

    /** What an event asks for. */
    private static Optional<Topic> topic(Kind kind) {
        return Optional.ofNullable(
                switch (kind) {
                    case TOO_WARM -> Topic.HOT_CELL;
                    case OVERCHARGED -> Topic.OVERCHARGED;
                    case INTERNAL_SHORT, COPPER_DISSOLVES, REVERSED, BELOW_LOWEST -> Topic.TOO_EMPTY;
                    case WIRE_HOT, WIRE_MELTED -> Topic.HOT_WIRE;
                    case FUSE_BLOWN -> Topic.FUSE;
                    case PTC_TRIPPED -> Topic.PTC;
                    case GUARD_CURRENT, GUARD_HIGH, GUARD_LOW -> Topic.GUARD;
                    case COIL_MELTED -> Topic.COIL;
                    case BOARD_SHORTED, BOARD_CUTOFF, BOARD_INPUT_LIMIT, BOARD_NO_POWER -> Topic.BOARD;
                    case CUTOFF -> Topic.CUTOFF;
                    default -> null;
                });
    }

    public String spoken() {
        return title + ". " + String.join(" ", sentences) + " " + advice.orElse("");
    }
}
