package org.sagwise.picture.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.sagwise.picture.layout.PartBox;
import org.sagwise.picture.look.TextStyle;
import org.sagwise.picture.look.Tone;
import org.sagwise.picture.scene.BenchScene;
import org.sagwise.picture.scene.Figures;
import org.sagwise.quantity.Digits;
import org.sagwise.quantity.Unit;
import org.sagwise.reading.CellReading;
import org.sagwise.reading.CellState;

/** Figures of a cell: rest and terminal voltage, sag, amps against the limit. */
final class CellCaption {

    /** Below this a cell counts as resting, A. */
    private static final double IDLE_A = 1e-3;

    /** What rounding leaves of the sag of an ideal cell, V: no meter shows it. */
    private static final double LEAST_SAG_V = 1e-9;

    private static final double WARM_K = 5;
    private static final double FULL = 0.995;

    private final BenchScene scene;
    private final PartBox box;
    private final Figures figures;

    CellCaption(BenchScene scene, PartBox box, Figures figures) {
        this.scene = scene;
        this.box = box;
        this.figures = figures;
    }

    Caption caption() {
        Optional<CellReading> reading = scene.readings().cell(box.id());
        if (reading.isEmpty()) {
            return new Caption(List.of(name()));
        }
        boolean idle = !(Math.abs(reading.get().currentA()) >= IDLE_A);
        boolean across = box.isTurnedAside();
        if (across) {
            return new Caption(idle ? idleAcross(reading.get()) : busyAcross(reading.get()));
        }
        return new Caption(idle ? idleBeside(reading.get()) : busyBeside(reading.get()));
    }

    private Caption.Row name() {
        List<Caption.Piece> pieces = new ArrayList<>();
        pieces.add(new Caption.Piece(figures.label(box.part()), TextStyle.NAME, Tone.INK));
        if (scene.isReversed(box)) {
            pieces.add(new Caption.Piece(figures.texts().say("cell.reversed"), TextStyle.SMALL_BOLD, Tone.FLAG));
        }
        return new Caption.Row(pieces);
    }

    private List<Caption.Row> idleBeside(CellReading reading) {
        List<Caption.Row> rows = new ArrayList<>();
        rows.add(name());
        rows.add(Caption.Row.of(volts(reading.restV())));
        rows.add(Caption.Row.of(resting(reading)));
        state().ifPresent(rows::add);
        return rows;
    }

    private List<Caption.Row> busyBeside(CellReading reading) {
        List<Caption.Row> rows = new ArrayList<>();
        rows.add(name());
        rows.add(Caption.Row.of(rest(reading)));
        rows.add(Caption.Row.of(volts(reading.terminalV())));
        rows.add(Caption.Row.of(sag(reading)));
        rows.add(Caption.Row.of(amps(reading), limit(reading)));
        state().ifPresent(rows::add);
        return rows;
    }

    private List<Caption.Row> idleAcross(CellReading reading) {
        List<Caption.Piece> second = new ArrayList<>();
        second.add(volts(reading.restV()));
        second.add(resting(reading));
        state().ifPresent(row -> second.addAll(row.pieces()));
        return List.of(name(), new Caption.Row(second));
    }

    private List<Caption.Row> busyAcross(CellReading reading) {
        List<Caption.Piece> first = new ArrayList<>(name().pieces());
        first.add(volts(reading.terminalV()));
        first.add(sag(reading));
        return List.of(new Caption.Row(first), Caption.Row.of(amps(reading), limit(reading), rest(reading)));
    }

    private Caption.Piece resting(CellReading reading) {
        return plain(
                figures.texts().say(Double.isNaN(reading.currentA()) ? Captions.unknownKey(scene) : "cell.resting"));
    }

    private Caption.Piece rest(CellReading reading) {
        return plain(figures.say("cell.rest", reading.restV(), Unit.VOLT));
    }

    private static Caption.Piece plain(String text) {
        return new Caption.Piece(text, TextStyle.SMALL, Tone.MUTED);
    }

    private Caption.Piece volts(double volts) {
        return new Caption.Piece(figures.print(volts, Unit.VOLT), TextStyle.FIGURE, Tone.INK);
    }

    private Caption.Piece sag(CellReading reading) {
        double volts = Math.abs(reading.sagV()) < LEAST_SAG_V ? 0 : reading.sagV();
        String key = volts < 0 ? "cell.raised" : "cell.sag";
        return new Caption.Piece(figures.say(key, Math.abs(volts), Unit.VOLT), TextStyle.SMALL_BOLD, Tone.SAG);
    }

    private Caption.Piece amps(CellReading reading) {
        boolean over = reading.loadFraction() > 1;
        return new Caption.Piece(
                figures.print(reading.currentA(), Unit.AMPERE), TextStyle.FIGURE, over ? Tone.FLAG : Tone.INK);
    }

    private Caption.Piece limit(CellReading reading) {
        if (Double.isNaN(reading.limitA())) {
            return plain(figures.texts().say("cell.no-limit"));
        }
        String limit = figures.numbers().print(reading.limitA(), Unit.AMPERE.base(), Digits.atMostSignificant(3));
        return plain(figures.texts().say("cell.of", limit));
    }

    /** Charge where it is not full, and temperature where it differs from the room's. */
    private Optional<Caption.Row> state() {
        CellState state = scene.states().cells().get(box.id());
        if (state == null) {
            return Optional.empty();
        }
        List<Caption.Piece> pieces = new ArrayList<>();
        if (state.charge() < FULL) {
            pieces.add(plain(figures.print(state.charge(), Unit.FRACTION)));
        }
        if (Math.abs(state.temperatureC() - scene.scenario().ambientC()) >= WARM_K) {
            pieces.add(plain(figures.print(state.temperatureC(), Unit.CELSIUS)));
        }
        return pieces.isEmpty() ? Optional.empty() : Optional.of(new Caption.Row(pieces));
    }
}
