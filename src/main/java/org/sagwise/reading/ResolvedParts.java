package org.sagwise.reading;

import java.util.Optional;
import java.util.function.Supplier;
import org.sagwise.part.BoardSpec;
import org.sagwise.part.Catalogue;
import org.sagwise.part.ChargerSpec;
import org.sagwise.part.FuseSpec;
import org.sagwise.scenario.Part;

/** Numbers of the parts that are neither cell nor coil: their own keys laid over their model. */
public final class ResolvedParts {

    private static final double MILLI = 1e-3;

    private ResolvedParts() {}

    /**
     * A fuse as the network sees it.
     *
     * @param ratingA rated current, A
     * @param ohm resistance, Ω
     * @param i2tA2s melting integral, A²s, if known
     */
    public record Fuse(double ratingA, double ohm, Optional<Double> i2tA2s) {}

    /**
     * A regulated board as the network sees it. A limit that nobody gave does not bind.
     *
     * @param powerW power it is set to, W
     * @param efficiency share of the input power that comes out
     * @param cutoffV input voltage below which it stops, V
     * @param maxInputA largest input current, A
     * @param outMinV lowest output voltage, V
     * @param outMaxV highest output voltage, V
     */
    public record Board(
            double powerW, double efficiency, double cutoffV, double maxInputA, double outMinV, double outMaxV) {}

    /**
     * A charger as the network sees it.
     *
     * @param currentA current it holds first, A
     * @param limitV voltage it holds then, V
     * @param taperA current at which it stops, A; 0 if it never does
     */
    public record Charger(double currentA, double limitV, double taperA) {}

    /** Largest value taken where a board's limit is not given: beyond any bench. */
    private static final double UNBOUND = 1e6;

    public static Fuse fuse(Part part, Catalogue catalogue) {
        Optional<FuseSpec> model = part.model().flatMap(catalogue.fuses()::find);
        double ohm = part.keys().has("mohm") || model.isEmpty()
                ? part.numberOrDefault("mohm") * MILLI
                : model.get().ohm();
        Optional<Double> own = boxed(part, "i2t_A2s");
        return new Fuse(
                number(part, "rating_A", model.map(FuseSpec::ratingA)),
                ohm,
                own.or(() -> model.map(FuseSpec::meltingA2s)));
    }

    public static Board board(Part part, Catalogue catalogue) {
        Optional<BoardSpec> model = part.model().flatMap(catalogue.boards()::find);
        double efficiency = part.keys().has("efficiency") || model.isEmpty()
                ? part.numberOrDefault("efficiency")
                : model.get().efficiency();
        double outMinV = number(part, "out_min_V", model.map(BoardSpec::outMinV).or(bound(0)));
        return new Board(
                number(part, "power_W", model.map(BoardSpec::powerW)),
                efficiency,
                number(part, "cutoff_V", model.map(BoardSpec::cutoffV).or(bound(0))),
                number(part, "max_input_A", model.map(BoardSpec::maxInputA).or(bound(UNBOUND))),
                outMinV,
                Math.max(
                        outMinV,
                        number(part, "out_max_V", model.map(BoardSpec::outMaxV).or(bound(UNBOUND)))));
    }

    public static Charger charger(Part part, Catalogue catalogue) {
        Optional<ChargerSpec> model = part.model().flatMap(catalogue.chargers()::find);
        double limitV = part.keys().has("limit_V") || model.isEmpty()
                ? part.numberOrDefault("limit_V")
                : model.get().limitV();
        double currentA = number(part, "current_A", model.map(ChargerSpec::currentA));
        return new Charger(
                currentA,
                limitV,
                number(part, "taper_A", model.map(ChargerSpec::taperA).or(bound(currentA * USUAL_TAPER))));
    }

    /** Share of the charging current at which a charger usually stops: common practice. */
    private static final double USUAL_TAPER = 0.1;

    private static Supplier<Optional<Double>> bound(double value) {
        return () -> Optional.of(value);
    }

    private static Optional<Double> boxed(Part part, String name) {
        return part.keys().has(name) ? Optional.of(part.keys().number(name, 0)) : Optional.empty();
    }

    private static double number(Part part, String name, Optional<Double> otherwise) {
        return boxed(part, name).or(() -> otherwise).orElseThrow();
    }
}
