package org.sagwise.run;

import org.sagwise.quantity.QuantityFormat;
import org.sagwise.quantity.Texts;
import org.sagwise.quantity.Unit;
import org.sagwise.reading.Bench;
import org.sagwise.run.RunEvent.Kind;
import org.sagwise.scenario.Part;

import java.util.Locale;

/** What happened in a run, in sentences. */
public final class RunTexts {

    private final Texts texts;
    private final QuantityFormat format;
    private final Bench bench;

    /** Sentences about a bench, in the language and with the signs of {@code format}. */
    public RunTexts(Bench bench, QuantityFormat format) {
        this.bench = bench;
        this.format = format;
        texts = Texts.in("run", format.locale());
    }

    /** What happened, with its numbers, as a sentence that names the part. */
    public String sentence(RunEvent event) {
        Unit unit = unit(event.kind());
        return texts.say(
                "event." + key(event.kind()),
                name(event.part()),
                format.print(event.measured(), unit),
                format.print(event.limit(), unit));
    }

    /** What a stage is, in few words. */
    public String stage(Kind kind) {
        return texts.say("stage." + key(kind));
    }

    /** What ended the run. */
    public String end(RunEnd end) {
        return texts.say("end." + end.word());
    }

    /** What a bystander does when a cell has vented or is about to. */
    public String standBack() {
        return texts.say("stand-back");
    }

    /** Label or id of a part; of a link its id or its ends. */
    public String name(String part) {
        return bench.scenario().part(part).map(Part::name).orElse(part);
    }

    private static String key(Kind kind) {
        return kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The unit in which an event of this kind is measured. */
    public static Unit unit(Kind kind) {
        return switch (kind) {
            case OVER_LIMIT, CHARGED_TOO_FAST, GUARD_CURRENT, FUSE_BLOWN, CHARGER_DONE ->
                    Unit.AMPERE;
            case TOO_WARM, LAYER_BREAKDOWN, VENTED, COIL_MELTED, WIRE_HOT, WIRE_MELTED ->
                    Unit.CELSIUS;
            case COIL_OVER_LIMIT -> Unit.WATT;
            case INTERRUPTED -> Unit.FRACTION;
            default -> Unit.VOLT;
        };
    }
}
