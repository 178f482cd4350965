package org.sagwise.report.explain;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.sagwise.assessment.Assessment;
import org.sagwise.hazard.Caution;
import org.sagwise.quantity.Unit;
import org.sagwise.reading.CellReading;
import org.sagwise.reading.LinkReading;
import org.sagwise.reading.Readings;
import org.sagwise.scenario.Joint;

/** The sum behind a caution, with the numbers of this very circuit, as far as one line tells it. */
final class WhyWords {

    private static final double LEAST_A = 0.01;

    private final Speech speech;
    private final Assessment assessment;

    WhyWords(Speech speech, Assessment assessment) {
        this.speech = speech;
        this.assessment = assessment;
    }

    Optional<String> of(Caution caution) {
        return switch (caution.id()) {
            case "reversed-in-parallel" -> ring(caution, 1);
            case "unequal-charge-in-parallel" -> ring(caution, -1);
            case "jumper-over-ampacity", "jumper-over-fusing" -> wire(caution);
            case "cell-over-limit", "pulse-as-continuous", "pack-shorted" -> cellHeat(caution);
            case "coil-over-limit" -> coil(caution);
            default -> Optional.empty();
        };
    }

    private Readings readings(Caution caution) {
        return caution.when() == Caution.When.FIRED
                ? assessment.bench().fired()
                : assessment.bench().rest();
    }

    /** Two cells in a ring of their own: (E1 ± E2) / R = I. */
    private Optional<String> ring(Caution caution, int sign) {
        List<CellReading> cells = readings(caution).cells();
        if (caution.when() != Caution.When.AT_REST || cells.size() != 2) {
            return Optional.empty();
        }
        double high = Math.max(cells.get(0).restV(), cells.get(1).restV());
        double low = Math.min(cells.get(0).restV(), cells.get(1).restV());
        double currentA = Math.abs(cells.get(0).currentA());
        if (!(currentA > LEAST_A) || Double.isInfinite(currentA)) {
            return Optional.empty();
        }
        double ohm = (high + sign * low) / currentA;
        return Optional.of(speech.say(
                sign > 0 ? "why.reversed" : "why.unequal",
                speech.print(high, Unit.VOLT),
                speech.print(low, Unit.VOLT),
                speech.print(ohm, Unit.OHM),
                speech.print(currentA, Unit.AMPERE)));
    }

    private Optional<String> wire(Caution caution) {
        Optional<LinkReading> worst = readings(caution).links().stream()
                .filter(link -> caution.links().contains(link.index()))
                .filter(link -> Double.isFinite(link.currentA()))
                .max(Comparator.comparingDouble(LinkReading::heatW));
        return worst.map(link -> {
            double currentA = Math.abs(link.currentA());
            Joint.Jumper jumper =
                    (Joint.Jumper) speech.scenario().links().get(link.index()).joint();
            double ohm = link.ohm() - jumper.contactsMohm() / 1000;
            return speech.say(
                    "why.wire",
                    speech.print(currentA, Unit.AMPERE),
                    speech.print(ohm, Unit.OHM),
                    speech.print(currentA * currentA * ohm, Unit.WATT),
                    speech.millimetres(jumper.lengthMm()));
        });
    }

    private Optional<String> cellHeat(Caution caution) {
        return readings(caution).cells().stream()
                .filter(cell -> caution.parts().contains(cell.id()))
                .filter(cell -> Double.isFinite(cell.heatW()))
                .max(Comparator.comparingDouble(CellReading::heatW))
                .filter(cell -> cell.heatW() > 0)
                .map(cell -> speech.say(
                        "why.cell",
                        speech.print(Math.abs(cell.currentA()), Unit.AMPERE),
                        speech.print(cell.internalOhm(), Unit.OHM),
                        speech.print(cell.heatW(), Unit.WATT),
                        speech.name(cell.id())));
    }

    private Optional<String> coil(Caution caution) {
        return readings(caution)
                .coil(caution.parts().get(0))
                .map(coil -> speech.say(
                        "why.coil",
                        speech.print(Math.abs(coil.voltsV()), Unit.VOLT),
                        speech.print(coil.ohm(), Unit.OHM),
                        speech.print(coil.powerW(), Unit.WATT)));
    }
}
