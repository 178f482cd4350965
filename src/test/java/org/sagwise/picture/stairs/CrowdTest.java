package org.sagwise.picture.stairs;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.sagwise.part.PartKind;
import org.sagwise.reading.Staircase.Kind;
import org.sagwise.reading.Staircase.Lane;
import org.sagwise.reading.Staircase.Step;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;

class CrowdTest {

    private static final int CELLS = 60;
    private static final int ODD = 37;

    @Test
    void telling_fewLanes_areAllDrawn() {
        List<Lane> lanes = lanes(0, 1);
        assertThat(Crowd.telling(lanes, CELLS, bench())).isEqualTo(lanes);
    }

    @Test
    void telling_manyAlikeAndOneOdd_keepsTheOddOneInItsPlace() {
        List<Lane> told = Crowd.telling(lanes(0, 1), 8, bench());
        assertThat(told).hasSize(8).extracting(CrowdTest::part).contains("C" + ODD);
        assertThat(told).isSubsetOf(lanes(0, 1)).isSortedAccordingTo((a, b) -> number(a) - number(b));
    }

    @Test
    void telling_oneTurnedRound_isDrawn() {
        assertThat(Crowd.telling(lanes(5, -1), 4, bench()))
                .extracting(CrowdTest::part)
                .contains("C5", "C" + ODD);
    }

    @Test
    void telling_otherCurrents_choosesTheSame() {
        List<String> rest = Crowd.telling(lanes(0, 1), 8, bench()).stream()
                .map(CrowdTest::part)
                .toList();
        List<Lane> pressed = lanes(0, 1).stream()
                .map(lane -> new Lane(
                        lane.steps().stream()
                                .map(step -> new Step(
                                        step.kind(), step.part(), step.link(), step.fromV(), step.toV(), number(lane)))
                                .toList(),
                        lane.afterStep(),
                        lane.untilStep()))
                .toList();
        assertThat(Crowd.telling(pressed, 8, bench()))
                .extracting(CrowdTest::part)
                .isEqualTo(rest);
    }

    /** One cell a lane; that of a place goes up or down. */
    private static List<Lane> lanes(int place, int sense) {
        return IntStream.range(0, CELLS)
                .mapToObj(i -> new Lane(
                        List.of(new Step(
                                Kind.CELL, "C" + i, OptionalInt.empty(), 0, i == place ? sense * 4.2 : 4.2, 0)),
                        0,
                        1))
                .toList();
    }

    private static Scenario bench() {
        return Scenario.empty()
                .withParts(IntStream.range(0, CELLS)
                        .mapToObj(i -> Part.of("C" + i, PartKind.CELL, "internal_mohm", i == ODD ? 60 : 22))
                        .toList());
    }

    private static String part(Lane lane) {
        return lane.steps().get(0).part();
    }

    private static int number(Lane lane) {
        return Integer.parseInt(part(lane).substring(1));
    }
}
