package org.sagwise.report.health;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.sagwise.part.Band;
import org.sagwise.part.CellResistance;
import org.sagwise.part.PartKind;
import org.sagwise.part.PartModel;
import org.sagwise.part.key.EffectiveKeys;
import org.sagwise.reading.Bench;
import org.sagwise.reading.ResolvedCell;
import org.sagwise.scenario.Joint;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Part;

/**
 * A resistance beside what is usual.
 *
 * @param part id of the cell or switch; empty for joints
 * @param links places of the joints that have this resistance; empty for a part
 * @param ohm the resistance, Ω
 * @param usual what such a thing usually has, Ω: from the catalogue
 * @param verdict how it stands beside that
 * @param origin where the number is from
 */
public record Health(String part, List<Integer> links, double ohm, Band usual, Verdict verdict, Origin origin) {

    /** A sound cell's resistance grows to about this many times the new one before it is called worn. */
    private static final double STILL_LIKE_NEW = 1.5;

    /** A cell of more than that many times the usual resistance sags and heats so much that it is of no use. */
    private static final double PAST_USE = 3;

    /** What sound clips and springs have at most, Ω: the upper end of a sled clip in the catalogue. */
    private static final Band JOINT = new Band(0.0001, 0.010);

    /** What test clips have at most, Ω: from the catalogue. More is loose or dirty. */
    private static final double LOOSE_OHM = 0.030;

    /** What a push button or transistor that is sound has, Ω: three times the catalogue's at most, our choice. */
    private static final Band SWITCH = new Band(0.001, 0.010);

    public Health {
        links = List.copyOf(links);
    }

    /** How a resistance stands beside what is usual. */
    public enum Verdict {
        /** So low that a reading should be taken again. */
        LOW,
        USUAL,
        HIGH,
        /** So high that it should be replaced, or cleaned. */
        BAD
    }

    /** Where a number is from. */
    public enum Origin {
        /** Measured, or typed in. */
        GIVEN,
        /** The catalogue's value for the model. */
        CATALOGUE,
        /** Nobody said it: the usual value stands in. */
        ASSUMED
    }

    /** All resistances of a bench that can be judged: cells, switches, and joints, those that are alike together. */
    public static List<Health> of(Bench bench) {
        List<Health> all = new ArrayList<>();
        bench.cells().values().forEach(cell -> all.add(cell(bench, cell)));
        for (Part part : bench.scenario().partsOf(PartKind.SWITCH)) {
            all.add(button(part, bench.values(part.id())));
        }
        all.addAll(joints(bench));
        return List.copyOf(all);
    }

    private static Health cell(Bench bench, ResolvedCell cell) {
        EffectiveKeys values = bench.values(cell.id());
        Origin origin = origin(cell.part(), values, "internal_mohm");
        double ohm = cell.ohmAt(cell.start());
        Band usual = usual(bench, cell);
        return new Health(
                cell.id(), List.of(), ohm, usual, verdict(judged(cell, values.isOwn("internal_mohm")), usual), origin);
    }

    /** Wear alone is judged, Ω: cold, a low charge and a guard add to the resistance of a sound cell, too. */
    private static double judged(ResolvedCell cell, boolean measured) {
        double charge = measured ? cell.start().charge() : 1;
        return cell.resistance().ohmAt(CellResistance.REFERENCE_C, charge, cell.health());
    }

    private static Verdict verdict(double cellOhm, Band usual) {
        return cellOhm < usual.from() / 2
                ? Verdict.LOW
                : cellOhm <= usual.to() * STILL_LIKE_NEW
                        ? Verdict.USUAL
                        : cellOhm <= usual.to() * PAST_USE ? Verdict.HIGH : Verdict.BAD;
    }

    /** Whether a sound cell has more now than usual: it is cold, low or has a guard. */
    boolean isHighForNow() {
        return verdict == Verdict.USUAL && ohm > usual.to() * STILL_LIKE_NEW;
    }

    /** Of a model its own value; else the span of the sound cells of that size in the catalogue. */
    private static Band usual(Bench bench, ResolvedCell cell) {
        var models = bench.catalogue().models(PartKind.CELL);
        var own = cell.part().model().flatMap(models::find);
        if (own.isPresent()) {
            double ohm = own.get().values().need("internal_mohm") / 1000;
            return new Band(ohm, ohm);
        }
        double[] span = models.all().stream()
                .map(PartModel::values)
                .filter(values -> values.number("health").orElse(1) >= 1 && !values.isSaid("claimed_A"))
                .filter(values -> values.word("format")
                        .filter(cell.spec().format().trade()::equals)
                        .isPresent())
                .mapToDouble(values -> values.need("internal_mohm") / 1000)
                .sorted()
                .toArray();
        return span.length == 0 ? new Band(0.010, 0.065) : new Band(span[0], span[span.length - 1]);
    }

    private static Health button(Part part, EffectiveKeys values) {
        double ohm = values.need("closed_mohm") / 1000;
        Verdict verdict = ohm <= SWITCH.to() ? Verdict.USUAL : ohm <= LOOSE_OHM ? Verdict.HIGH : Verdict.BAD;
        return new Health(part.id(), List.of(), ohm, SWITCH, verdict, origin(part, values, "closed_mohm"));
    }

    private static Origin origin(Part part, EffectiveKeys values, String key) {
        if (values.isOwn(key)) {
            return Origin.GIVEN;
        }
        return part.model().isPresent() ? Origin.CATALOGUE : Origin.ASSUMED;
    }

    private static List<Health> joints(Bench bench) {
        Map<Alike, List<Integer>> alike = new LinkedHashMap<>();
        List<Link> links = bench.scenario().links();
        for (int place = 0; place < links.size(); place++) {
            double ohm = contactOhm(links.get(place).joint());
            if (ohm > 0) {
                Origin origin = links.get(place).model().isPresent() ? Origin.CATALOGUE : Origin.GIVEN;
                alike.computeIfAbsent(new Alike(ohm, origin), key -> new ArrayList<>())
                        .add(place);
            }
        }
        return alike.entrySet().stream()
                .map(same -> new Health(
                        "",
                        same.getValue(),
                        same.getKey().ohm(),
                        JOINT,
                        verdict(same.getKey().ohm()),
                        same.getKey().origin()))
                .toList();
    }

    /** What joints have in common that are told of together. */
    private record Alike(double ohm, Origin origin) {}

    private static Verdict verdict(double jointOhm) {
        return jointOhm <= JOINT.to() ? Verdict.USUAL : jointOhm <= LOOSE_OHM ? Verdict.HIGH : Verdict.BAD;
    }

    /** Resistance at each end; a wire's two ends share theirs. */
    private static double contactOhm(Joint joint) {
        if (joint instanceof Joint.Touch touch) {
            return touch.mohm() / 1000;
        }
        return joint instanceof Joint.Jumper jumper ? jumper.contactsMohm() / 2000 : 0;
    }

    /** The one joint that it is about; empty for several and for a part. */
    OptionalInt link() {
        return links.size() == 1 ? OptionalInt.of(links.get(0)) : OptionalInt.empty();
    }
}
