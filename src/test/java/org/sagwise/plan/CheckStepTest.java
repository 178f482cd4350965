package org.sagwise.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.sagwise.fixture.Circuits.NOTHING;
import static org.sagwise.fixture.Circuits.cell;
import static org.sagwise.fixture.Circuits.single;
import static org.sagwise.fixture.Circuits.terminal;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.sagwise.part.MeterMode;
import org.sagwise.reading.Bench;
import org.sagwise.scenario.Probes;
import org.sagwise.scenario.Scenario;

/** Which reading of a bench check the meter shows. */
class CheckStepTest {

    private static final Scenario HELD = single(cell("A", 4.14, 30), 0.3);

    private static Optional<CheckStep> step(Scenario bench, MeterMode mode, String red, String black) {
        Probes probes = Probes.of(terminal(red), terminal(black)).turnedTo(mode);
        Scenario probed = bench.withProbes(Optional.of(probes));
        return CheckStep.of(Bench.of(probed, NOTHING).now(), probed);
    }

    @Test
    void of_volts_followsPartAndButton() {
        assertEquals(Optional.of(CheckStep.REST), step(HELD.released(), MeterMode.VOLTS, "A.+", "A.-"));
        assertEquals(Optional.of(CheckStep.CELL), step(HELD, MeterMode.VOLTS, "A.-", "A.+"));
        assertEquals(Optional.of(CheckStep.COIL), step(HELD, MeterMode.VOLTS, "coil.1", "coil.2"));
    }

    @Test
    void of_otherReadings_isNoStep() {
        assertEquals(Optional.empty(), step(HELD.released(), MeterMode.VOLTS, "coil.1", "coil.2"));
        assertEquals(Optional.empty(), step(HELD, MeterMode.VOLTS, "fire.1", "fire.2"));
        assertEquals(Optional.empty(), step(HELD, MeterMode.VOLTS, "A.+", "coil.2"));
        assertEquals(Optional.empty(), step(HELD, MeterMode.VOLTS, "A.+", "A.+"));
        assertEquals(Optional.empty(), step(HELD, MeterMode.AMPS, "A.+", "A.-"));
        assertEquals(Optional.empty(), step(HELD, MeterMode.OHMS, "coil.1", "coil.2"));
    }

    @Test
    void of_ohmsOfALooseCoil_isAStep() {
        Scenario loose = HELD.withLinks(List.of());
        assertEquals(Optional.of(CheckStep.OHM), step(loose, MeterMode.OHMS, "coil.1", "coil.2"));
    }
}
