package org.sagwise.picture.bench;

import org.sagwise.picture.layout.Conductor;
import org.sagwise.scenario.Joint;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Scenario;

/** How thick and how round conductors are drawn. */
final class ConductorLook {

    private static final double THINNEST = 4;
    private static final double THICKEST = 15;
    private static final double PLATE = 11;
    private static final double IDEAL = 8;

    private ConductorLook() {}

    /**
     * Width of a conductor's coloured core. A wire's grows with its diameter, so that a thin one
     * looks thin beside a thick one; true to scale neither could be told from the other.
     */
    static double width(Conductor conductor, Scenario scenario) {
        Link link = scenario.links().get(conductor.shares().get(0).link());
        if (link.joint() instanceof Joint.Jumper jumper) {
            double diameterMm = jumper.width().size().diameterMm();
            return Math.max(THINNEST, Math.min(THICKEST, 2.5 + 6 * diameterMm));
        }
        return isMetal(conductor, scenario) ? PLATE : IDEAL;
    }

    /** Whether it is a plate that touches parts, and no ideal joint. */
    static boolean isMetal(Conductor conductor, Scenario scenario) {
        return conductor.shares().stream()
                .map(share -> scenario.links().get(share.link()).joint())
                .anyMatch(Joint.Touch.class::isInstance);
    }

    static double radius(Conductor conductor) {
        return conductor.isWire() ? 18 : 8;
    }
}
