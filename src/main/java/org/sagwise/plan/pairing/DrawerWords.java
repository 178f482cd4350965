package org.sagwise.plan.pairing;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.sagwise.part.Catalogue;
import org.sagwise.part.PartKind;
import org.sagwise.plan.drawer.OwnCell;
import org.sagwise.quantity.Digits;
import org.sagwise.quantity.Measure;
import org.sagwise.quantity.QuantityFormat;
import org.sagwise.quantity.Unit;
import org.sagwise.text.Texts;

/**
 * What is said of cells in a drawer and of sets of them, on the command line and in the window.
 *
 * @param format how numbers are written, and in which language
 */
public record DrawerWords(QuantityFormat format, Catalogue catalogue) {

    private static final Measure MILLIAMPERE_HOURS = Measure.of(Unit.AMPERE_HOUR, "mAh");
    private static final Measure MILLIOHMS = Measure.of(Unit.OHM, "mΩ");

    private Locale locale() {
        return format.locale();
    }

    public String say(String key, Object... words) {
        return Texts.in("drawer", locale()).say(key, words);
    }

    /** What a cell is: its model's title, or its size and chemistry. */
    public String make(OwnCell cell) {
        return cell.model()
                .flatMap(id -> catalogue.models(PartKind.CELL).find(id))
                .map(model -> model.card().title().in(locale()))
                .orElseGet(() -> cell.make(catalogue).word("chemistry").orElse("") + " "
                        + cell.make(catalogue).word("format").orElse(""));
    }

    public String capacity(OptionalDouble capacityAh) {
        return in(capacityAh, MILLIAMPERE_HOURS, Digits.decimals(0));
    }

    public String resistance(OptionalDouble ohm) {
        return in(ohm, MILLIOHMS, Digits.decimals(1));
    }

    public String volts(OptionalDouble volts) {
        return in(volts, Measure.of(Unit.VOLT), Digits.decimals(2));
    }

    /** A share in percent. */
    public String share(OptionalDouble share) {
        return format.print(share, Unit.FRACTION);
    }

    private String in(OptionalDouble value, Measure measure, Digits digits) {
        return format.print(value.orElse(Double.NaN), measure.scale(), digits);
    }

    /** Volts that were lost by lying for a week. */
    public String lost(OwnCell cell) {
        return in(cell.lostV(), Measure.of(Unit.VOLT, "mV"), Digits.decimals(0));
    }

    /** Whether it is used, married, retired, worn, leaking: a few words. */
    public String state(OwnCell cell) {
        if (cell.retirement().isPresent()) {
            String why = cell.retirement().get().why();
            return why.isEmpty() ? say("state.retired") : say("state.retired.why", why);
        }
        String state = cell.marriage().map(it -> say("state.married", it.set())).orElse(say("state.in-use"));
        return trouble(cell).map(why -> state + ", " + say("state." + key(why))).orElse(state);
    }

    /** What is wrong with a cell that is still used; empty if nothing is, as far as it was measured. */
    private Optional<Fitness> trouble(OwnCell cell) {
        if (!cell.isInUse()) {
            return Optional.empty();
        } else if (Fitness.losesCharge(cell)) {
            return Optional.of(Fitness.LOSES_CHARGE);
        }
        return Fitness.isWorn(cell, catalogue) ? Optional.of(Fitness.WORN) : Optional.empty();
    }

    /** What a competent person does about it; empty if there is nothing to do. */
    public Optional<String> advice(OwnCell cell) {
        return trouble(cell)
                .map(why -> why == Fitness.WORN
                        ? say("advice.worn", cell.mark(), share(Fitness.share(cell, catalogue)))
                        : say("advice.loses-charge", cell.mark(), lost(cell)));
    }

    /** Why a cell belongs into no new set. */
    public String unfit(OwnCell cell, Fitness why, PairingWish wish) {
        return say("unfit." + key(why), cell.mark(), wish.size());
    }

    private static String key(Fitness why) {
        return why.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** How much longer matched packs last, in a sentence. */
    public String life(PackLife life, PairingWish wish) {
        String more = life.gain() >= 0.005 ? "life.longer" : "life.same";
        return say(
                more,
                format.print(life.matchedS(), Unit.SECOND),
                format.print(life.drawnS(), Unit.SECOND),
                format.print(Math.abs(life.gain()), Unit.FRACTION),
                wish.size(),
                format.print(life.loadA(), Unit.AMPERE),
                life.draws());
    }

    /** By what sets were made. */
    public String how(PairingWish wish) {
        return say(
                wish.size() == 2 ? "pair.exact" : "pair.search",
                format.number(wish.capacityWeight(), Digits.all()),
                format.number(wish.resistanceWeight(), Digits.all()),
                wish.size());
    }
}
