package org.sagwise.part;

import static org.sagwise.part.KeyBounds.LEAST_A;
import static org.sagwise.part.KeyBounds.MODEL;
import static org.sagwise.part.KeyBounds.MOST_A;
import static org.sagwise.part.key.KeySpec.choiceElse;
import static org.sagwise.part.key.KeySpec.from;
import static org.sagwise.part.key.KeySpec.group;
import static org.sagwise.part.key.KeySpec.optional;
import static org.sagwise.part.key.KeySpec.required;
import static org.sagwise.part.key.KeySpec.whole;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.sagwise.part.key.EffectiveKeys;
import org.sagwise.part.key.KeyRule;
import org.sagwise.part.key.KeySpec;
import org.sagwise.part.key.KeySpec.FlagType;
import org.sagwise.part.key.KeySpec.TextType;
import org.sagwise.part.key.KeyTable;

/** A round cell. */
final class CellKind {

    /** A cell of next to no capacity is empty within a step of any run. */
    private static final double LEAST_MAH = 0.01;

    private static final double LEAST_HEALTH = 0.001;

    /**
     * Charging current (A) over capacity (Ah) where nobody says one: the standard charge on the data
     * sheet of a 2.5 Ah high-drain 18650.
     */
    private static final double USUAL_CHARGE_RATE = 0.5;

    /** What somebody wrote on a cell, or calls a set of married ones. */
    private static final TextType MARK = new TextType(32);

    private static final KeyTable KEYS = KeyTable.of(
                    MODEL,
                    optional("chemistry", choiceElse(Chemistry.INR.name(), chemistries())),
                    optional("format", choiceElse(CellFormat.USUAL.trade(), formats())),
                    optional("charge", from(0, 1)).ofPiece().usually(CellKind::charge),
                    optional("rest_V", from(-1, 6)).ofPiece().usually(CellKind::restV),
                    optional("internal_mohm", from(0, 100_000)),
                    optional("capacity_mAh", from(LEAST_MAH, 1_000_000)),
                    optional("limit_A", from(LEAST_A, MOST_A)),
                    optional("temperature_C", from(-60, 1_000)).ofPiece(),
                    optional("health", from(LEAST_HEALTH, 1, 1)).ofPiece(),
                    optional("wrap", choiceElse("sound", "sound", "torn")).ofPiece(),
                    optional("cooling", choiceElse(Cooling.STILL_AIR.word(), Cooling.words()))
                            .ofPiece(),
                    optional("polarisation_V", from(-5, 5, 0)).ofPiece(),
                    optional("pulse_A", from(LEAST_A, MOST_A)),
                    optional("pulse_s", from(0.001, 3_600)),
                    optional("charge_limit_A", from(LEAST_A, MOST_A)).usually(CellKind::chargeLimitA),
                    optional("cutoff_V", from(0, 6)).fallsWith("chemistry").usually(CellKind::cutoffV),
                    optional("full_V", from(0.1, 6)).fallsWith("chemistry").usually(CellKind::fullV),
                    optional(
                            "guard",
                            group(
                                    List.of(
                                            new KeyRule.Together("under_V", "over_V"),
                                            new KeyRule.Ordered("under_V", "over_V")),
                                    required("trip_A", from(LEAST_A, MOST_A)),
                                    required("trip_s", from(0, 3_600)),
                                    required("mohm", from(0, 100_000)),
                                    limit("under_V"),
                                    limit("over_V"))),
                    optional("ptc", new FlagType(Optional.of(false))),
                    optional("cid", new FlagType(Optional.of(false))),
                    optional("claimed_A", from(LEAST_A, MOST_A)),
                    optional("claimed_mAh", from(LEAST_MAH, 1_000_000)),
                    optional("mark", MARK).ofPiece(),
                    optional("married", MARK).ofPiece(),
                    optional("married_cells", whole(2, 100)).ofPiece())
            .with(
                    KeyRule.modelOr("internal_mohm", "capacity_mAh"),
                    KeyRule.exactlyOne("charge", "rest_V"),
                    new KeyRule.Together("pulse_A", "pulse_s"),
                    new KeyRule.Ordered("cutoff_V", "full_V"),
                    new KeyRule.OrderedInCatalogue("limit_A", "pulse_A"));

    /** Full, as it comes from the charger. */
    static final KindDescriptor DESCRIPTOR = KindDescriptor.of(Role.SOURCE, Ends.DIFFERENT, KEYS, "+", "-", "can")
            .inCatalogue("cells", "chemistry", "format", "internal_mohm", "capacity_mAh", "limit_A", "charge_limit_A")
            .fresh("charge", 1)
            .called(KindDescriptor.LETTER)
            .computedBy((values, catalogue) -> CellSpec.of(values));

    private CellKind() {}

    private static String[] chemistries() {
        return Stream.of(Chemistry.values()).map(Chemistry::name).toArray(String[]::new);
    }

    private static String[] formats() {
        return Stream.of(CellFormat.values()).map(CellFormat::trade).toArray(String[]::new);
    }

    /** A voltage at which a guard opens: what is usual for the chemistry unless somebody says it. */
    private static KeySpec limit(String name) {
        return optional(name, from(0.1, 6)).usually(cell -> {
            Guard usual = Guard.usual(chemistry(cell), 1, 0, 0);
            return OptionalDouble.of(name.equals("under_V") ? usual.underVoltageV() : usual.overVoltageV());
        });
    }

    static Chemistry chemistry(EffectiveKeys cell) {
        return Chemistry.valueOf(cell.word("chemistry").orElseThrow());
    }

    /** Rest voltage against charge: the chemistry's curve, ending at the cell's own full voltage. */
    static RestVoltageCurve restCurve(EffectiveKeys cell) {
        return chemistry(cell).restCurve(cell.need("full_V"));
    }

    private static OptionalDouble charge(EffectiveKeys cell) {
        return cell.isSaid("rest_V")
                ? OptionalDouble.of(restCurve(cell).chargeAt(cell.need("rest_V")))
                : OptionalDouble.empty();
    }

    private static OptionalDouble restV(EffectiveKeys cell) {
        return cell.isSaid("charge")
                ? OptionalDouble.of(restCurve(cell).voltsAt(cell.need("charge")))
                : OptionalDouble.empty();
    }

    private static OptionalDouble chargeLimitA(EffectiveKeys cell) {
        return cell.isSaid("capacity_mAh")
                ? OptionalDouble.of(USUAL_CHARGE_RATE * cell.milli("capacity_mAh"))
                : OptionalDouble.empty();
    }

    private static OptionalDouble fullV(EffectiveKeys cell) {
        return OptionalDouble.of(chemistry(cell).fullV());
    }

    /** The chemistry's, or in proportion less where the cell is full below its chemistry's full. */
    private static OptionalDouble cutoffV(EffectiveKeys cell) {
        Chemistry chemistry = chemistry(cell);
        return OptionalDouble.of(chemistry.useCutoffV() * Math.min(1, cell.need("full_V") / chemistry.fullV()));
    }
}
