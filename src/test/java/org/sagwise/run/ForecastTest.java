package org.sagwise.run;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.sagwise.errand.Errand;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.fixture.Circuits;
import org.sagwise.part.PartKind;
import org.sagwise.reading.Bench;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Press;
import org.sagwise.scenario.Scenario;

class ForecastTest {

    /** An errand looks at its clock after so many steps; what is shown here is about two seconds' worth of them. */
    private static final long MOST_LOOKS = 6_000;

    /** A cell of hardly any ohms and charge across an ideal link takes steps without end, each ever so short. */
    @Test
    void of_cellThatTakesTheShortestSteps_isGivenUpInTime() {
        Part dead = Part.of("A", PartKind.CELL, "rest_V", -1, "internal_mohm", 0.001, "capacity_mAh", 1, "limit_A", 10);
        Bench bench = Bench.of(
                Scenario.of("Dead short", List.of(dead), List.of(Circuits.ideal("A.+", "A.-"))),
                CatalogueLoader.builtIn());
        AtomicLong looks = new AtomicLong();
        Forecast forecast = new Errand(looks::incrementAndGet, MOST_LOOKS)
                .run(() -> Forecast.of(bench, RunSettings.USUAL, Press.HELD));

        assertTrue(forecast.lookedS() < Forecast.LOOKED_S, String.valueOf(forecast.lookedS()));
        assertTrue(looks.get() > 100, "counts nothing");
    }
}
