package org.sagwise.run;

import org.sagwise.part.CellPolarisation;
import org.sagwise.part.CellThermal;
import org.sagwise.part.Guard;
import org.sagwise.part.PtcSpec;
import org.sagwise.part.RestVoltageCurve;
import org.sagwise.reading.ResolvedCell;

/** What does not change about a cell during a run. */
final class CellModel {

    private static final double S_PER_H = 3600;

    final ResolvedCell cell;
    final RestVoltageCurve curve;
    final double capacityAh;
    final double capacityAs;
    final double heatCapacityJPerK;
    final double lossWPerK;
    final double guardOhm;

    /** The cell's own PTC, or null. */
    final PtcSpec ptc;

    private final double resistanceFactor;

    CellModel(ResolvedCell cell, Spread spread) {
        this.cell = cell;
        curve = cell.spec().restCurve();
        capacityAh = cell.capacityAh();
        capacityAs = capacityAh * S_PER_H;
        CellThermal thermal = cell.thermal();
        heatCapacityJPerK = thermal.heatCapacityJPerK() * spread.heatCapacity();
        lossWPerK = thermal.lossWPerK() * spread.heatLoss();
        guardOhm = cell.spec().guardOhm();
        ptc = cell.spec().ptc().orElse(null);
        resistanceFactor = spread.resistance();
    }

    String id() {
        return cell.id();
    }

    /** R₀ without guard, Ω. */
    double ohmicOhm(double temperatureC, double charge) {
        return resistanceFactor * cell.resistance().ohmAt(temperatureC, charge, cell.health());
    }

    /** What the cell's own PTC at this temperature (°C) adds to that, Ω; 0 where there is none. */
    double ptcOhm(double ptcC) {
        return ptcC == StateLayout.NO_PTC_C ? 0 : ptc.ohmAt(ptcC) - ptc.ohm();
    }

    /** The quicker part of the slow sag. */
    CellPolarisation quick(double temperatureC, double charge, double currentA) {
        return cell.resistance()
                .quick(temperatureC, charge, cell.health(), currentA)
                .times(resistanceFactor);
    }

    /** The slower part of the slow sag. */
    CellPolarisation slow(double temperatureC, double charge, double currentA) {
        return cell.resistance()
                .slow(temperatureC, charge, cell.health(), currentA)
                .times(resistanceFactor);
    }

    /** Temperature after constant heat: exact, however long the step. */
    double warmed(double temperatureC, double heatW, double ambientC, double seconds) {
        double settled = ambientC + heatW / lossWPerK;
        return settled + (temperatureC - settled) * Math.exp(-seconds * lossWPerK / heatCapacityJPerK);
    }

    /** The guard of a protected cell, or null. */
    Guard guard() {
        return cell.spec().guard().orElse(null);
    }
}
