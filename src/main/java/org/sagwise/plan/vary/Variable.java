package org.sagwise.plan.vary;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.sagwise.part.key.KeySpec;
import org.sagwise.part.key.KeySpec.GroupType;
import org.sagwise.part.key.KeySpec.NumberType;
import org.sagwise.part.key.Keys;
import org.sagwise.quantity.Digits;
import org.sagwise.quantity.Measure;
import org.sagwise.quantity.QuantityFormat;
import org.sagwise.quantity.Unit;
import org.sagwise.reading.Bench;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.ScenarioKeys;
import org.sagwise.scenario.edit.Edit;
import org.sagwise.scenario.edit.SetAmbient;
import org.sagwise.scenario.edit.SetLinkKeys;
import org.sagwise.scenario.edit.SetPartKeys;

/**
 * A number of a bench that can be another, by the words of the scenario file: {@code coil.ohm},
 * {@code A.internal_mohm}, {@code coil.wraps}, {@code #3.contact_mohm} (the third link) or {@code
 * ambient_C}. Its values are numbers as the file writes them, in the unit of the key's ending.
 *
 * @param owner id of a part, name of a link, or empty for the bench
 * @param group the object within which the key stands, such as {@code wire}; empty for none
 * @param key as in the file
 * @param allowed which numbers the format allows
 */
public record Variable(String owner, String group, String key, NumberType allowed) {

    private static final String AMBIENT = "ambient_C";

    /** The variable of this name; the key may be cut off before its unit. */
    public static Optional<Variable> of(Scenario scenario, String text) {
        List<Variable> all = all(scenario);
        Optional<Variable> exact =
                all.stream().filter(it -> it.toString().equals(text)).findFirst();
        List<Variable> cut =
                all.stream().filter(it -> it.toString().startsWith(text + "_")).toList();
        return exact.isPresent() || cut.size() != 1 ? exact : Optional.of(cut.get(0));
    }

    /** Every number of a bench that can be another, in file order. */
    public static List<Variable> all(Scenario scenario) {
        List<Variable> all = new ArrayList<>();
        scenario.parts()
                .forEach(part -> add(all, part.id(), part.keys(), part.kind().keys()));
        List<Link> links = scenario.links();
        for (int i = 0; i < links.size(); i++) {
            Keys keys = links.get(i).keys();
            String name = Link.nameOf(links, i);
            add(
                    all,
                    name,
                    keys,
                    ScenarioKeys.LINK.stream()
                            .filter(spec -> keys.has(spec.name()))
                            .toList());
        }
        all.add(new Variable("", "", AMBIENT, ScenarioKeys.AMBIENT));
        return all;
    }

    private static void add(List<Variable> all, String owner, Keys keys, List<KeySpec> specs) {
        for (KeySpec spec : specs) {
            if (spec.type() instanceof NumberType number) {
                all.add(new Variable(owner, "", spec.name(), number));
            } else if (spec.type() instanceof GroupType type) {
                keys.group(spec.name())
                        .ifPresent(inner -> type.keys().stream()
                                .filter(each -> inner.has(each.name()) && each.type() instanceof NumberType)
                                .forEach(each -> all.add(
                                        new Variable(owner, spec.name(), each.name(), (NumberType) each.type()))));
            }
        }
    }

    /** Its unit and the scale in which the file writes it. */
    public Measure measure() {
        return switch (key) {
            case "charge", "health" -> Measure.of(Unit.FRACTION, "%");
            default -> Measure.ofKey(key).orElse(Measure.of(Unit.FRACTION));
        };
    }

    /** A written number in SI units; a share or a count stays what it is. */
    public double si(double written) {
        return Measure.ofKey(key).map(it -> it.scale().toUnit(written)).orElse(written);
    }

    /** The number to write for a value in SI units. */
    public double written(double si) {
        return Measure.ofKey(key).map(it -> it.scale().fromUnit(si)).orElse(si);
    }

    /** A written number for people, with its unit. */
    public String print(double written, QuantityFormat format) {
        boolean isCount =
                measure().unit() == Unit.FRACTION && measure().scale().symbol().isEmpty();
        return isCount
                ? format.print(written, measure().scale(), Digits.atMostSignificant(4))
                : format.print(si(written), measure().unit());
    }

    /** What it is now, or what holds where nothing is written; empty where nothing does. */
    public OptionalDouble present(Bench bench) {
        Scenario scenario = bench.scenario();
        if (owner.isEmpty()) {
            return OptionalDouble.of(scenario.ambientC());
        }
        int link = Link.placeOf(scenario.links(), owner);
        Optional<Part> part = scenario.part(owner);
        Keys keys = part.map(Part::keys)
                .orElseGet(
                        () -> link < 0 ? Keys.NONE : scenario.links().get(link).keys());
        if (!group.isEmpty()) {
            return keys.group(group).map(it -> it.number(key)).orElse(OptionalDouble.empty());
        }
        if (part.isEmpty()) {
            return keys.number(key);
        }
        OptionalDouble said = bench.values(owner).number(key);
        return said.isPresent()
                ? said
                : part.get().kind().keys().stream()
                        .filter(spec -> spec.name().equals(key))
                        .map(spec -> bench.values(owner).usual(spec))
                        .findFirst()
                        .orElse(OptionalDouble.empty());
    }

    /** The edit that gives it another number. */
    public Edit edit(Scenario scenario, double written) {
        double number = allowed.grain() == KeySpec.Grain.WHOLE ? Math.rint(written) : written;
        if (owner.isEmpty()) {
            return new SetAmbient(number);
        }
        int link = Link.placeOf(scenario.links(), owner);
        Keys old = scenario.part(owner)
                .map(Part::keys)
                .orElseGet(
                        () -> link < 0 ? Keys.NONE : scenario.links().get(link).keys());
        Keys changed = group.isEmpty()
                ? Keys.of(key, number)
                : Keys.of(group, old.group(group).orElse(Keys.NONE).with(key, number));
        return scenario.part(owner).isPresent()
                ? new SetPartKeys(owner, changed, Set.of())
                : new SetLinkKeys(link, changed);
    }

    /** A bench in which it is another number. */
    public Scenario with(Scenario scenario, double written) {
        return edit(scenario, written).apply(scenario);
    }

    /** A range that shows something, around what it is now. */
    public Range usualRange(Bench bench) {
        double now = present(bench).orElse(0);
        if (key.equals("charge") || key.equals("health")) {
            return new Range(Math.max(allowed.least(), 0), 1);
        }
        if (measure().unit() == Unit.CELSIUS) {
            return within(now - 30, now + 30);
        }
        if (measure().unit() == Unit.VOLT && now > 1) {
            return within(now * 0.75, now * 1.05);
        }
        return now == 0
                ? within(0, key.endsWith("_mohm") ? 20 : 1)
                : within(Math.min(now / 2, now * 2), Math.max(now / 2, now * 2));
    }

    private Range within(double from, double to) {
        double least = allowed.bound() == KeySpec.Bound.INCLUDED
                ? allowed.least()
                : allowed.least() + Math.min(1e-6, (allowed.most() - allowed.least()) / 1e6);
        double low = Math.max(least, from);
        return new Range(low, Math.max(Math.min(allowed.most(), to), Math.nextUp(low)));
    }

    @Override
    public String toString() {
        return owner.isEmpty() ? key : owner + "." + key;
    }
}
