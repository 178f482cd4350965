package org.sagwise.report.compare;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.sagwise.part.CellSpec;
import org.sagwise.part.Guard;
import org.sagwise.part.key.KeySpec;
import org.sagwise.part.key.Keys;
import org.sagwise.reading.Bench;
import org.sagwise.reading.ResolvedCell;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;

/**
 * A scenario with every value said: those of models and those that go without saying. Two parts
 * that are alike then say the same, however they were written.
 */
final class Plain {

    private static final MathContext DIGITS = new MathContext(9);

    private final Bench bench;

    private Plain(Bench bench) {
        this.bench = bench;
    }

    static Scenario of(Bench bench) {
        Plain plain = new Plain(bench);
        return bench.scenario()
                .withParts(bench.scenario().parts().stream().map(plain::part).toList());
    }

    private Part part(Part part) {
        Map<String, Object> said = new TreeMap<>(part.keys().values());
        said.remove(Keys.FOREIGN);
        said.remove("model");
        switch (part.kind()) {
            case CELL -> cell(bench.cells().get(part.id()), said);
            case FUSE ->
                model(part, bench.catalogue().fuses()::find).ifPresent(fuse -> {
                    put(said, "rating_A", fuse.ratingA());
                    put(said, "mohm", fuse.ohm() * 1000);
                });
            case BOARD ->
                model(part, bench.catalogue().boards()::find).ifPresent(board -> {
                    put(said, "power_W", board.powerW());
                    put(said, "efficiency", board.efficiency());
                    put(said, "cutoff_V", board.cutoffV());
                    put(said, "max_input_A", board.maxInputA());
                    put(said, "out_min_V", board.outMinV());
                    put(said, "out_max_V", board.outMaxV());
                });
            case CHARGER ->
                model(part, bench.catalogue().chargers()::find).ifPresent(charger -> {
                    put(said, "current_A", charger.currentA());
                    put(said, "limit_V", charger.limitV());
                    put(said, "taper_A", charger.taperA());
                });
            default -> {}
        }
        part.kind().keys().forEach(spec -> usual(spec, said));
        Keys keys = Keys.NONE;
        for (var entry : said.entrySet()) {
            keys = keys.with(entry.getKey(), entry.getValue());
        }
        return Part.of(keys);
    }

    private interface Shelf<T> {
        Optional<T> find(String id);
    }

    private static <T> Optional<T> model(Part part, Shelf<T> shelf) {
        return part.model().flatMap(shelf::find);
    }

    private static void cell(ResolvedCell cell, Map<String, Object> said) {
        CellSpec spec = cell.spec();
        said.remove("charge");
        said.put("format", spec.format().trade());
        said.put("chemistry", spec.chemistry().name());
        said.put("rest_V", rounded(cell.start().restV()));
        said.put("temperature_C", rounded(cell.start().temperatureC()));
        put(said, "capacity_mAh", spec.capacityAh() * 1000);
        put(said, "limit_A", spec.limitA());
        put(said, "internal_mohm", spec.internalOhm() * 1000);
        put(said, "charge_limit_A", spec.chargeLimitA());
        put(said, "cutoff_V", spec.cutoffV());
        put(said, "full_V", spec.fullV());
        spec.pulse().ifPresent(pulse -> {
            put(said, "pulse_A", pulse.currentA());
            put(said, "pulse_s", pulse.durationS());
        });
        spec.guard().ifPresent(guard -> said.putIfAbsent("guard", guard(guard)));
    }

    private static Keys guard(Guard guard) {
        return Keys.of(
                "trip_A",
                rounded(guard.tripA()),
                "trip_s",
                rounded(guard.tripS()),
                "mohm",
                rounded(guard.ohm() * 1000));
    }

    private static void usual(KeySpec spec, Map<String, Object> said) {
        if (spec.type() instanceof KeySpec.NumberType number) {
            number.defaultValue().ifPresent(value -> said.putIfAbsent(spec.name(), value));
        } else if (spec.type() instanceof KeySpec.ChoiceType choice) {
            choice.defaultValue().ifPresent(value -> said.putIfAbsent(spec.name(), value));
        }
    }

    private static void put(Map<String, Object> said, String key, double value) {
        said.putIfAbsent(key, rounded(value));
    }

    /** Without the last digits that binary numbers leave behind. */
    private static double rounded(double value) {
        return BigDecimal.valueOf(value).round(DIGITS).doubleValue();
    }
}
