package org.sagwise.reading;

import java.util.Locale;
import java.util.Optional;
import org.sagwise.quantity.QuantityFormat;
import org.sagwise.quantity.Unit;
import org.sagwise.scenario.Names;
import org.sagwise.scenario.Scenario;
import org.sagwise.text.Texts;

/** What the meter in the hand shows, in words: on its display, and explained. */
public final class MeterTexts {

    private final Texts texts;
    private final QuantityFormat format;
    private final Names names;

    private MeterTexts(Locale locale) {
        this.texts = Texts.in("meter", locale);
        this.format = QuantityFormat.forPeople(locale);
        this.names = Names.in(locale);
    }

    public static MeterTexts in(Locale locale) {
        return new MeterTexts(locale);
    }

    /** What stands large on the display. */
    public String figure(MeterDisplay display) {
        if (display instanceof MeterDisplay.Volts volts) {
            return format.print(volts.volts(), Unit.VOLT);
        } else if (display instanceof MeterDisplay.Amps amps) {
            return format.print(amps.currentA(), Unit.AMPERE);
        } else if (display instanceof MeterDisplay.Ohms ohms) {
            return Double.isInfinite(ohms.ohm()) ? texts.say("ohms.open.figure") : format.print(ohms.ohm(), Unit.OHM);
        }
        return format.print(Double.NaN, Unit.VOLT);
    }

    /** A word or two under the figure; empty where the figure says all. */
    public String caption(MeterDisplay display) {
        return key(display).map(key -> texts.say(key + ".caption")).orElse("");
    }

    /**
     * What that means and, where the meter refuses, what to do; empty if there is nothing to say.
     */
    public String sentence(MeterDisplay display, Scenario scenario) {
        if (display instanceof MeterDisplay.Refused refused) {
            return Names.capital(
                    texts.say(
                            key(display).orElseThrow() + ".text",
                            scenario.part(refused.part()).map(names::part).orElse(""),
                            format.print(refused.currentA(), Unit.AMPERE),
                            format.print(Ammeter.FUSE_A, Unit.AMPERE)),
                    texts.locale());
        }
        return key(display)
                .map(key -> texts.say(key + ".text", format.print(MeterInput.handShuntOhm(), Unit.OHM)))
                .orElse("");
    }

    private static Optional<String> key(MeterDisplay display) {
        if (display instanceof MeterDisplay.Refused refused) {
            return Optional.of(word(refused.why()));
        } else if (display instanceof MeterDisplay.Amps amps) {
            return Optional.of("amps." + word(amps.place()));
        } else if (display instanceof MeterDisplay.Volts volts && Double.isNaN(volts.volts())) {
            return Optional.of("volts.none");
        }
        return display instanceof MeterDisplay.Ohms ohms && Double.isInfinite(ohms.ohm())
                ? Optional.of("ohms.open")
                : Optional.empty();
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
