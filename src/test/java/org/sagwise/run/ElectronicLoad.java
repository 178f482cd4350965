package org.sagwise.run;

import java.util.List;
import org.sagwise.fixture.Circuits;
import org.sagwise.part.PartKind;
import org.sagwise.reading.Bench;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;

/** A cell on a load that draws a constant current: a charger the wrong way round. */
final class ElectronicLoad {

    private ElectronicLoad() {}

    static Bench on(Part cell, double ampere, double ambientC) {
        Part load = Part.of("load", PartKind.CHARGER, "current_A", ampere, "limit_V", 100, "taper_A", 0);
        Scenario scenario = Scenario.of(
                "Constant current",
                List.of(cell, load),
                List.of(Circuits.ideal("load.+", cell.id() + ".-"), Circuits.ideal("load.-", cell.id() + ".+")));
        return Bench.of(scenario.withAmbientC(ambientC), Circuits.NOTHING);
    }
}
