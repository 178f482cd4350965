package org.sagwise.picture.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.sagwise.part.PartKind;
import org.sagwise.picture.layout.PartBox;
import org.sagwise.picture.look.TextStyle;
import org.sagwise.picture.look.Tone;
import org.sagwise.picture.scene.BenchScene;
import org.sagwise.picture.scene.Figures;
import org.sagwise.quantity.Measure;
import org.sagwise.quantity.Unit;
import org.sagwise.reading.CoilReading;
import org.sagwise.reading.PartReading;

/** What stands beside each part. */
final class Captions {

    /** Below this a part counts as without current, A. */
    private static final double IDLE_A = 1e-3;

    private final BenchScene scene;
    private final Figures figures;

    Captions(BenchScene scene) {
        this.scene = scene;
        this.figures = Figures.of(scene);
    }

    Caption of(PartBox box) {
        return switch (box.part().kind()) {
            case CELL -> new CellCaption(scene, box, figures).caption();
            case COIL ->
                scene.readings()
                        .coil(box.id())
                        .map(reading -> coil(box, reading))
                        .orElseGet(() -> nameOnly(box));
            case METER -> scene.isSchematic() ? meter(box) : nameOnly(box);
            default ->
                scene.readings()
                        .part(box.id())
                        .map(reading -> other(box, reading))
                        .orElseGet(() -> nameOnly(box));
        };
    }

    private Caption nameOnly(PartBox box) {
        return new Caption(List.of(Caption.Row.of(name(box))));
    }

    private Caption.Piece name(PartBox box) {
        return new Caption.Piece(figures.label(box.part()), TextStyle.NAME, Tone.INK);
    }

    private Caption coil(PartBox box, CoilReading reading) {
        List<Caption.Row> rows = new ArrayList<>();
        rows.add(Caption.Row.of(
                name(box), new Caption.Piece(figures.print(reading.ohm(), Unit.OHM), TextStyle.NAME, Tone.INK)));
        if (Math.abs(reading.currentA()) >= IDLE_A) {
            rows.add(Caption.Row.of(figures.print(reading.powerW(), Unit.WATT), TextStyle.HEADLINE, Tone.LOAD));
            List<Caption.Piece> pieces = new ArrayList<>(List.of(
                    plain(figures.print(Math.abs(reading.voltsV()), Unit.VOLT)),
                    plain(figures.print(Math.abs(reading.currentA()), Unit.AMPERE))));
            temperature(reading).ifPresent(words -> pieces.add(plain(words)));
            rows.add(new Caption.Row(pieces));
        } else {
            List<Caption.Piece> pieces = new ArrayList<>(List.of(muted(idle(reading.currentA()))));
            temperature(reading).ifPresent(words -> pieces.add(muted(words)));
            rows.add(new Caption.Row(pieces));
        }
        return new Caption(rows);
    }

    /** Nothing for a coil known by its ohms alone. */
    private Optional<String> temperature(CoilReading reading) {
        return Double.isNaN(reading.temperatureC())
                ? Optional.empty()
                : Optional.of(figures.print(reading.temperatureC(), Unit.CELSIUS));
    }

    private Caption other(PartBox box, PartReading reading) {
        List<Caption.Row> rows = new ArrayList<>();
        List<Caption.Piece> first = new ArrayList<>(List.of(name(box)));
        rating(box).ifPresent(text -> first.add(muted(text)));
        rows.add(new Caption.Row(first));
        rows.add(Caption.Row.of(state(box.part().kind(), reading)));
        stuck(box).ifPresent(rows::add);
        return new Caption(rows);
    }

    /** Its symbol has no display, as the thing has. */
    private Caption meter(PartBox box) {
        return new Caption(List.of(
                Caption.Row.of(name(box)),
                Caption.Row.of(new Caption.Piece(PanelFigure.of(scene, box.part()), TextStyle.FIGURE, Tone.INK))));
    }

    private Optional<String> rating(PartBox box) {
        return box.part().kind().descriptor().ratedBy().map(key -> {
            Measure measure = Measure.ofKey(key).orElseThrow();
            double value = scene.bench().values(box.id()).need(key);
            return figures.print(measure.scale().toUnit(value), measure.unit());
        });
    }

    private Optional<Caption.Row> stuck(PartBox box) {
        return scene.bench()
                .values(box.id())
                .word("stuck")
                .map(how ->
                        Caption.Row.of(figures.texts().say("switch.stuck-" + how), TextStyle.SMALL_BOLD, Tone.FLAG));
    }

    private Caption.Piece state(PartKind kind, PartReading reading) {
        boolean idle = !(Math.abs(reading.currentA()) >= IDLE_A);
        return switch (reading.state()) {
            case OPEN -> muted(across("switch.open", "switch.gap", reading));
            case BLOCKING -> muted(across("guard.blocks", "guard.against", reading));
            case BLOWN ->
                new Caption.Piece(across("fuse.blown", "switch.gap", reading), TextStyle.SMALL_BOLD, Tone.FLAG);
            case STOPPED_CUTOFF,
                    STOPPED_INPUT_LIMIT,
                    STOPPED_NO_POWER,
                    STOPPED_OUTPUT_SHORTED,
                    OUTPUT_AT_MAX,
                    OUTPUT_AT_MIN ->
                new Caption.Piece(figures.texts().say("board." + word(reading)), TextStyle.SMALL_BOLD, Tone.FLAG);
            default -> idle ? muted(idle(reading.currentA())) : working(kind, reading);
        };
    }

    private String idle(double currentA) {
        return figures.texts().say(Double.isNaN(currentA) ? unknownKey(scene) : "part.idle");
    }

    /** Why the amps of a part are not told. */
    static String unknownKey(BenchScene scene) {
        return scene.readings().isVeiled() ? "part.asked" : "part.unknown";
    }

    private static String word(PartReading reading) {
        return reading.state().name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private String across(String without, String with, PartReading reading) {
        double volts = Math.abs(reading.voltsV());
        return volts >= 0.01
                ? figures.say(with, volts, Unit.VOLT)
                : figures.texts().say(without);
    }

    private Caption.Piece working(PartKind kind, PartReading reading) {
        double volts = Math.abs(reading.voltsV());
        String amps = figures.print(Math.abs(reading.currentA()), Unit.AMPERE);
        return switch (kind.role()) {
            case IN_LINE -> new Caption.Piece(figures.say("part.lost", volts, Unit.VOLT), TextStyle.SMALL, Tone.DROP);
            case LOAD ->
                plain(figures.print(volts, Unit.VOLT) + "  " + figures.print(Math.abs(reading.powerW()), Unit.WATT));
            case SOURCE, METER, CONVERTER -> plain(figures.print(volts, Unit.VOLT) + "  " + amps);
        };
    }

    private static Caption.Piece plain(String text) {
        return new Caption.Piece(text, TextStyle.PLAIN, Tone.INK);
    }

    private static Caption.Piece muted(String text) {
        return new Caption.Piece(text, TextStyle.SMALL, Tone.MUTED);
    }
}
