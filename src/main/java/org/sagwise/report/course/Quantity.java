package org.sagwise.report.course;

import java.util.Locale;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.sagwise.quantity.Digits;
import org.sagwise.quantity.QuantityFormat;
import org.sagwise.quantity.Scale;
import org.sagwise.quantity.Unit;
import org.sagwise.run.CellMoment;
import org.sagwise.run.CoilMoment;

/** What has curves: of each cell, and of coils what a coil has of it. */
public enum Quantity {
    /** Of cells only: beside the whole volts of a coil their sag would not be seen. */
    VOLTS(Unit.VOLT, Unit.VOLT.base(), 0.05, CellMoment::terminalV, null),
    AMPS(Unit.AMPERE, Unit.AMPERE.base(), 0.1, CellMoment::currentA, CoilMoment::currentA),
    CHARGE(Unit.FRACTION, Unit.FRACTION.scale("%"), 0.01, CellMoment::charge, null),
    TEMPERATURE(Unit.CELSIUS, Unit.CELSIUS.base(), 1, CellMoment::temperatureC, CoilMoment::temperatureC);

    private final Unit unit;
    private final Scale scale;
    private final double leastSpan;
    private final ToDoubleFunction<CellMoment> ofCell;
    private final ToDoubleFunction<CoilMoment> ofCoil;

    Quantity(
            Unit unit,
            Scale scale,
            double leastSpan,
            ToDoubleFunction<CellMoment> ofCell,
            ToDoubleFunction<CoilMoment> ofCoil) {
        this.unit = unit;
        this.scale = scale;
        this.leastSpan = leastSpan;
        this.ofCell = ofCell;
        this.ofCoil = ofCoil;
    }

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** What the axis spans at least, in the unit of SI. */
    public double leastSpan() {
        return leastSpan;
    }

    /** Share of the drawer's width that its chart takes, percent. */
    public double widthPercent() {
        return this == VOLTS ? 34 : 22;
    }

    public double of(CellMoment cell) {
        return ofCell.applyAsDouble(cell);
    }

    /** What is read of a coil; empty where a coil has no such thing. */
    public Optional<ToDoubleFunction<CoilMoment>> ofCoil() {
        return Optional.ofNullable(ofCoil);
    }

    /** A value as it is read off. */
    String print(double value, QuantityFormat format) {
        return format.print(value, unit);
    }

    /** A round value at an axis. */
    String tick(double value, QuantityFormat format) {
        return format.print(value, scale, Digits.atMostDecimals(2));
    }
}
