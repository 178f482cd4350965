package org.sagwise.plan.drawer;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.sagwise.part.Catalogue;
import org.sagwise.part.PartKind;
import org.sagwise.part.key.EffectiveKeys;
import org.sagwise.part.key.Keys;

/**
 * One cell of a drawer.
 *
 * @param mark what is written on it, and by which it is found; unique in its drawer
 * @param name further words; may be empty
 * @param model its model in the catalogue
 * @param figures what its label or data sheet says beside or instead of a model, as keys of a
 *     scenario's cell: {@link DrawerKeys#FIGURES}
 * @param bought the day on which it was bought
 * @param measurements what was measured, the oldest first
 * @param marriage to which set it belongs
 * @param retirement that it is used no more
 * @param note a person's remark; may be empty
 * @param foreign what other tools left under {@code x}
 */
public record OwnCell(
        String mark,
        String name,
        Optional<String> model,
        Keys figures,
        Optional<LocalDate> bought,
        List<CellMeasurement> measurements,
        Optional<Marriage> marriage,
        Optional<Retirement> retirement,
        String note,
        Optional<Object> foreign) {

    private static final double MILLI = 1e-3;

    public OwnCell {
        measurements = measurements.stream()
                .sorted(Comparator.comparing(CellMeasurement::on))
                .toList();
    }

    /** A cell of a model, of which nothing else is known yet. */
    public static OwnCell of(String mark, String model) {
        return of(Keys.of("mark", mark, "model", model), List.of());
    }

    /**
     * What keys that keep to {@link DrawerKeys#CELL} say.
     *
     * @param measurements what was measured on it
     */
    public static OwnCell of(Keys keys, List<CellMeasurement> measurements) {
        Keys figures = Keys.NONE;
        for (String name : DrawerKeys.FIGURES) {
            if (keys.has(name)) {
                figures = figures.with(name, keys.values().get(name));
            }
        }
        return new OwnCell(
                keys.text("mark").orElseThrow(),
                keys.text("name").orElse(""),
                keys.text("model"),
                figures,
                DrawerKeys.date(keys, "bought"),
                measurements,
                keys.group("married")
                        .map(it -> new Marriage(it.text("set").orElseThrow(), DrawerKeys.date(it, "since"))),
                keys.group("retired")
                        .map(it -> new Retirement(
                                DrawerKeys.date(it, "on"), it.text("why").orElse(""))),
                keys.text("note").orElse(""),
                keys.foreign());
    }

    /** The same as keys of a file, without its measurements. */
    public Keys keys() {
        Map<String, Object> keys = new LinkedHashMap<>();
        keys.put("mark", mark);
        put(keys, "name", name);
        model.ifPresent(id -> keys.put("model", id));
        keys.putAll(figures.values());
        bought.ifPresent(day -> keys.put("bought", day.toString()));
        marriage.ifPresent(it -> {
            Keys inner = Keys.of("set", it.set());
            keys.put(
                    "married",
                    it.since().map(day -> inner.with("since", day.toString())).orElse(inner));
        });
        retirement.ifPresent(it -> {
            Map<String, Object> inner = new LinkedHashMap<>();
            it.on().ifPresent(day -> inner.put("on", day.toString()));
            put(inner, "why", it.why());
            keys.put("retired", new Keys(inner));
        });
        put(keys, "note", note);
        foreign.ifPresent(other -> keys.put(Keys.FOREIGN, other));
        return new Keys(keys);
    }

    private static void put(Map<String, Object> keys, String name, String text) {
        if (!text.isEmpty()) {
            keys.put(name, text);
        }
    }

    /** Whether it is still used. */
    public boolean isInUse() {
        return retirement.isEmpty();
    }

    /** What holds of its make: its own figures, else those of its model. */
    public EffectiveKeys make(Catalogue catalogue) {
        Keys known = model.flatMap(id -> catalogue.models(PartKind.CELL).find(id))
                .map(it -> it.keys())
                .orElse(Keys.NONE);
        return PartKind.CELL.effective(figures, known, Keys.NONE);
    }

    /** Capacity when new, by its label or data sheet (Ah); empty where nobody says it. */
    public OptionalDouble ratedAh(Catalogue catalogue) {
        return milli(make(catalogue).number("capacity_mAh"));
    }

    private static OptionalDouble milli(OptionalDouble number) {
        return number.isPresent() ? OptionalDouble.of(number.getAsDouble() * MILLI) : number;
    }

    /** The capacity that was measured last (Ah). */
    public OptionalDouble capacityAh() {
        return last(CellMeasurement::capacityAh);
    }

    /** The internal resistance that was measured last, a protected cell's board included (Ω). */
    public OptionalDouble resistanceOhm() {
        return last(CellMeasurement::resistanceOhm);
    }

    /** The rest voltage that was measured last (V). */
    public OptionalDouble restV() {
        return last(CellMeasurement::restV);
    }

    /** What it lost by lying for a week, as it was measured last (V). */
    public OptionalDouble lostV() {
        return last(CellMeasurement::lostV);
    }

    /** The day on which anything was measured last. */
    public Optional<LocalDate> measuredOn() {
        return measurements.isEmpty()
                ? Optional.empty()
                : Optional.of(measurements.get(measurements.size() - 1).on());
    }

    private OptionalDouble last(Function<CellMeasurement, OptionalDouble> quantity) {
        OptionalDouble last = OptionalDouble.empty();
        for (CellMeasurement each : measurements) {
            OptionalDouble value = quantity.apply(each);
            last = value.isPresent() ? value : last;
        }
        return last;
    }

    /** This cell with one more measurement. */
    public OwnCell with(CellMeasurement more) {
        List<CellMeasurement> all = new ArrayList<>(measurements);
        all.add(more);
        return withMeasurements(all);
    }

    public OwnCell withMeasurements(List<CellMeasurement> all) {
        return copy(all, marriage, retirement);
    }

    public OwnCell withMarriage(Optional<Marriage> now) {
        return copy(measurements, now, retirement);
    }

    public OwnCell withRetirement(Optional<Retirement> now) {
        return copy(measurements, marriage, now);
    }

    private OwnCell copy(List<CellMeasurement> all, Optional<Marriage> married, Optional<Retirement> retired) {
        return new OwnCell(mark, name, model, figures, bought, all, married, retired, note, foreign);
    }
}
