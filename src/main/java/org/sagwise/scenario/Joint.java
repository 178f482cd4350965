package org.sagwise.scenario;

import java.util.Optional;
import org.sagwise.part.Gauge;
import org.sagwise.part.JumperWire;
import org.sagwise.part.WireSize;
import org.sagwise.part.key.Keys;

/** How two terminals are joined. */
public sealed interface Joint {

    /** No resistance at all. */
    record Ideal() implements Joint {}

    /**
     * Two parts touch.
     *
     * @param mohm contact resistance, mΩ, 0 or more
     */
    record Touch(double mohm) implements Joint {}

    /**
     * A copper wire.
     *
     * @param width how thick the bare conductor is, as written
     * @param lengthMm length, mm
     * @param contactsMohm resistance of both its ends together, mΩ
     */
    record Jumper(Width width, double lengthMm, double contactsMohm) implements Joint {

        /** A shorter wire counts as none, mm. */
        private static final double LEAST_LENGTH_MM = 1e-9;

        /** The wire; empty where it has no length and so is nothing but its contacts. */
        public Optional<JumperWire> wire() {
            return lengthMm >= LEAST_LENGTH_MM
                    ? Optional.of(new JumperWire(width.size(), lengthMm / 1000))
                    : Optional.empty();
        }

        /** Resistance of wire and contacts at this temperature (°C), Ω. */
        public double ohmAt(double temperatureC) {
            return wire().map(wire -> wire.ohmAt(temperatureC)).orElse(0.0) + contactsMohm / 1000;
        }
    }

    /** How thick a wire is, in the words of the file. */
    sealed interface Width {

        /** The cross-section that these words mean. */
        WireSize size();
    }

    /** American wire gauge number. */
    record Awg(int number) implements Width {
        @Override
        public WireSize size() {
            return new Gauge(number).size();
        }
    }

    /** Diameter, mm. */
    record DiameterMm(double mm) implements Width {
        @Override
        public WireSize size() {
            return WireSize.ofDiameterMm(mm);
        }
    }

    /** Cross-section, mm². */
    record AreaMm2(double mm2) implements Width {
        @Override
        public WireSize size() {
            return WireSize.ofAreaMm2(mm2);
        }
    }

    /** Reads a joint from the keys of a link that the rules have found sound. */
    static Joint of(Keys link) {
        if (link.group("jumper").isPresent()) {
            Keys jumper = link.group("jumper").get();
            return new Jumper(widthOf(jumper), jumper.number("length_mm", 0), jumper.number("contacts_mohm", 0));
        }
        return link.number("contact_mohm").isPresent() ? new Touch(link.number("contact_mohm", 0)) : new Ideal();
    }

    private static Width widthOf(Keys jumper) {
        if (jumper.has("awg")) {
            return new Awg((int) jumper.number("awg", 0));
        }
        return jumper.has("diameter_mm")
                ? new DiameterMm(jumper.number("diameter_mm", 0))
                : new AreaMm2(jumper.number("area_mm2", 0));
    }
}
