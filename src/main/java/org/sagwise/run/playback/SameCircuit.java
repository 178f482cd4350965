package org.sagwise.run.playback;

import java.util.List;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;

/** Tells whether time can go on after a change of the document. */
public final class SameCircuit {

    private SameCircuit() {}

    /**
     * Whether two benches are one circuit, whatever their parts are called and wherever they lie.
     */
    public static boolean areSame(Scenario a, Scenario b) {
        return nameless(a).equals(nameless(b)) && a.links().equals(b.links()) && a.ambientC() == b.ambientC();
    }

    private static List<Part> nameless(Scenario bench) {
        return bench.parts().stream().map(part -> part.without("label")).toList();
    }
}
