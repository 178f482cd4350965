package org.sagwise.ui.inspector;

import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;
import org.sagwise.part.BoardSpec;
import org.sagwise.part.Catalogue;
import org.sagwise.part.CellSpec;
import org.sagwise.part.ChargerSpec;
import org.sagwise.part.FuseSpec;
import org.sagwise.part.key.KeySpec;
import org.sagwise.quantity.Measure;
import org.sagwise.reading.Bench;
import org.sagwise.reading.ResolvedCell;
import org.sagwise.scenario.Part;

/** What holds for a part where it says nothing itself: its model's values, or defaults. */
final class InEffect {

    private final Map<String, Double> values = new HashMap<>();

    private InEffect() {}

    /** Nothing but the defaults of the format. */
    static InEffect none() {
        return new InEffect();
    }

    static InEffect of(Bench bench, Part part) {
        InEffect effect = new InEffect();
        Catalogue catalogue = bench.catalogue();
        String model = part.model().orElse("");
        switch (part.kind()) {
            case CELL -> effect.cell(bench.cells().get(part.id()));
            case FUSE -> catalogue.fuses().find(model).ifPresent(effect::fuse);
            case BOARD -> catalogue.boards().find(model).ifPresent(effect::board);
            case CHARGER -> catalogue.chargers().find(model).ifPresent(effect::charger);
            default -> {
                // Their defaults stand in the tables of the format.
            }
        }
        return effect;
    }

    /** The value under a key, in the unit that its ending names. */
    OptionalDouble number(KeySpec spec) {
        Double value = values.get(spec.name());
        if (value != null) {
            return OptionalDouble.of(value);
        }
        return spec.type() instanceof KeySpec.NumberType number
                        && number.defaultValue().isPresent()
                ? OptionalDouble.of(number.defaultValue().get())
                : OptionalDouble.empty();
    }

    private void put(String key, double value) {
        Measure measure = KeyNumbers.measure(key);
        values.put(key, measure.scale().fromUnit(value));
    }

    private void cell(ResolvedCell cell) {
        CellSpec spec = cell.spec();
        put("internal_mohm", spec.internalOhm());
        put("capacity_mAh", spec.capacityAh());
        put("limit_A", spec.limitA());
        put("charge_limit_A", spec.chargeLimitA());
        put("cutoff_V", spec.cutoffV());
        put("full_V", spec.fullV());
        put("charge", cell.start().charge());
        put("rest_V", cell.start().restV());
        put("temperature_C", cell.start().temperatureC());
        spec.pulse().ifPresent(pulse -> put("pulse_A", pulse.currentA()));
        spec.pulse().ifPresent(pulse -> put("pulse_s", pulse.durationS()));
    }

    private void fuse(FuseSpec spec) {
        put("rating_A", spec.ratingA());
        put("mohm", spec.ohm());
        put("i2t_A2s", spec.meltingA2s());
    }

    private void board(BoardSpec spec) {
        put("power_W", spec.powerW());
        put("efficiency", spec.efficiency());
        put("cutoff_V", spec.cutoffV());
        put("max_input_A", spec.maxInputA());
        put("out_min_V", spec.outMinV());
        put("out_max_V", spec.outMaxV());
    }

    private void charger(ChargerSpec spec) {
        put("current_A", spec.currentA());
        put("limit_V", spec.limitV());
        put("taper_A", spec.taperA());
    }
}
