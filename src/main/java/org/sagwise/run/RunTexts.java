package org.sagwise.run;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.sagwise.quantity.QuantityFormat;
import org.sagwise.quantity.Unit;
import org.sagwise.reading.Bench;
import org.sagwise.run.RunEvent.Kind;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Names;
import org.sagwise.scenario.TerminalRef;
import org.sagwise.text.Texts;

/** What happened in a run, in sentences. */
public final class RunTexts {

    private final Texts texts;
    private final QuantityFormat format;
    private final Bench bench;
    private final Names names;

    /** Sentences about a bench, in the language and with the signs of {@code format}. */
    public RunTexts(Bench bench, QuantityFormat format) {
        this.bench = bench;
        this.format = format;
        texts = Texts.in("run", format.locale());
        names = Names.in(format.locale());
    }

    /** What happened, with its numbers, as a sentence that names the part. */
    public String sentence(RunEvent event) {
        Unit unit = unit(event.kind());
        return Names.capital(
                texts.say(
                        "event." + key(event.kind()),
                        spoken(event.part()),
                        format.print(event.measured(), unit),
                        format.print(event.limit(), unit)),
                texts.locale());
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

    /** Label or id of a part; of a link its ends. */
    public String name(String part) {
        return bench.scenario()
                .part(part)
                .map(names::label)
                .or(() -> ends(part, ref -> names.brief(bench.scenario(), ref)))
                .orElse(part);
    }

    /** What a sentence calls a part or a wire. */
    private String spoken(String part) {
        return bench.scenario()
                .part(part)
                .map(names::part)
                .or(() -> ends(part, ref -> names.terminal(bench.scenario(), ref)))
                .orElse(part);
    }

    private Optional<String> ends(String wire, Function<TerminalRef, String> name) {
        return link(bench, wire)
                .map(bench.scenario().links()::get)
                .map(link -> texts.say("wire.ends", name.apply(link.from()), name.apply(link.to())));
    }

    /** The place of the link that an event calls by this name; empty for the name of a part. */
    public static Optional<Integer> link(Bench bench, String part) {
        List<Link> links = bench.scenario().links();
        return IntStream.range(0, links.size())
                .filter(place -> RunModel.name(links.get(place)).equals(part))
                .boxed()
                .findFirst();
    }

    private static String key(Kind kind) {
        return kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The unit in which an event of this kind is measured. */
    public static Unit unit(Kind kind) {
        return switch (kind) {
            case OVER_LIMIT, CHARGED_TOO_FAST, GUARD_CURRENT, FUSE_BLOWN, PTC_TRIPPED, CELL_PTC_TRIPPED, CHARGER_DONE ->
                Unit.AMPERE;
            case TOO_WARM, LAYER_BREAKDOWN, VENTED, COIL_MELTED, WIRE_HOT, WIRE_MELTED, PTC_RESET -> Unit.CELSIUS;
            case COIL_OVER_LIMIT -> Unit.WATT;
            case INTERRUPTED, CID_OPENED, INTERNAL_SHORT -> Unit.FRACTION;
            default -> Unit.VOLT;
        };
    }
}
