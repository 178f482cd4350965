package org.sagwise.report.vary;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.sagwise.hazard.Caution;
import org.sagwise.hazard.CautionTexts;
import org.sagwise.plan.vary.BuildSpread;
import org.sagwise.plan.vary.CautionSpan;
import org.sagwise.plan.vary.Tolerance;
import org.sagwise.plan.vary.Variable;
import org.sagwise.plan.vary.VariedCurve;
import org.sagwise.quantity.Digits;
import org.sagwise.quantity.QuantityFormat;
import org.sagwise.quantity.Unit;
import org.sagwise.reading.NamedReading;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Names;
import org.sagwise.scenario.Scenario;
import org.sagwise.text.Texts;

/** Says what varying a bench shows: names of values and readings, and sentences about them. */
public final class VaryWords {

    private static final double RARE = 0.01;
    private static final int MOST_NAMED = 3;

    private final Scenario scenario;
    private final QuantityFormat format;
    private final Texts texts;
    private final Texts kinds;
    private final Names names;

    public VaryWords(Scenario scenario, QuantityFormat format) {
        this.scenario = scenario;
        this.format = format;
        this.texts = Texts.in("vary", format.locale());
        this.kinds = Texts.in("kinds", format.locale());
        this.names = Names.in(format.locale());
    }

    /** A text of the bundle. */
    public String word(String key, Object... words) {
        return texts.say(key, words);
    }

    public QuantityFormat format() {
        return format;
    }

    private Locale locale() {
        return format.locale();
    }

    /** What a value is called, with whose it is. */
    public String name(Variable variable) {
        if (variable.owner().isEmpty()) {
            return texts.say("ambient");
        }
        String own = "key." + variable.key();
        String key = texts.has(own) ? texts.say(own) : kinds.say(own);
        return texts.say("owned", owner(variable.owner()), key);
    }

    /** What a reading is called, with whose it is. */
    public String name(NamedReading reading) {
        String own = "reading." + reading.quantity();
        String quantity = texts.has(own) ? texts.say(own) : reading.quantity();
        String whole = texts.say("owned", owner(reading.part()), quantity);
        return reading.press().isHeld() ? whole : texts.say("at-rest", whole);
    }

    private String owner(String id) {
        if (id.equals(NamedReading.PACK) || id.equals(NamedReading.PROBES)) {
            return texts.say(id);
        }
        int place = Link.placeOf(scenario.links(), id);
        return scenario.part(id)
                .map(names::part)
                .orElseGet(() -> place < 0 ? id : joint(scenario.links().get(place)));
    }

    private String joint(Link link) {
        return names.brief(scenario, link.from()) + " – " + names.brief(scenario, link.to());
    }

    /** A reading with its unit. */
    public String print(NamedReading reading, double value) {
        return format.print(value, reading.unit());
    }

    /** What stands above it all. */
    public String title(VariedCurve curve) {
        return texts.say("over", name(curve.reading()), name(curve.variable()));
    }

    /** Where the bench stands, and the limit; where no reading is and why; where each caution holds. */
    public List<String> sentences(VariedCurve curve, double present) {
        List<String> lines = new ArrayList<>();
        curve.now()
                .ifPresent(now -> lines.add(
                        texts.say("now", curve.variable().print(now, format), print(curve.reading(), present))));
        curve.limit().ifPresent(limit -> lines.add(texts.say("limit", print(curve.reading(), limit))));
        curve.points().stream()
                .filter(point -> Double.isNaN(point.reading()))
                .findFirst()
                .ifPresent(point ->
                        lines.add(texts.say("gap", curve.variable().print(point.at(), format), why(point))));
        return lines;
    }

    private String why(VariedCurve.Point point) {
        if (!point.refused().isEmpty()) {
            return point.refused().get(0).text(locale());
        }
        return texts.say(point.notices().isEmpty() ? "gap.nothing" : "gap.notice");
    }

    /** Where a caution holds, with its title. */
    public String span(Variable variable, CautionSpan span) {
        String title = CautionTexts.title(span.caution(), locale()) + where(span.caution());
        String from = variable.print(span.from(), format);
        String to = variable.print(span.to(), format);
        if (span.beginsWithin()) {
            return span.endsWithin()
                    ? texts.say("caution.within", title, from, to)
                    : texts.say("caution.from", title, from);
        }
        return span.endsWithin() ? texts.say("caution.until", title, to) : texts.say("caution.all", title);
    }

    /** Whose caution it is, by their short names; nothing where that would be a crowd. */
    private String where(Caution caution) {
        List<String> parts = caution.parts().stream()
                .flatMap(id -> scenario.part(id).stream())
                .map(names::label)
                .toList();
        return parts.isEmpty() || parts.size() > MOST_NAMED ? "" : " (" + String.join(", ", parts) + ")";
    }

    /** A share of builds; one that is small but not none is not told as zero. */
    public String share(double share) {
        return share > 0 && share < RARE
                ? texts.say("rarely")
                : format.print(share, Unit.FRACTION.scale("%"), Digits.decimals(0));
    }

    /** What a spread says, in plain words. */
    public List<String> sentences(BuildSpread spread) {
        NamedReading reading = spread.reading();
        List<String> lines = new ArrayList<>();
        lines.add(texts.say("spread.head", spread.builds()));
        if (!(spread.deviation() > 1e-9 * Math.abs(spread.mean()))) {
            lines.add(texts.say("spread.even", name(reading), print(reading, spread.printed())));
        } else {
            lines.add(texts.say(
                    "spread.range",
                    name(reading),
                    print(reading, spread.range().low()),
                    print(reading, spread.range().high()),
                    print(reading, spread.range().middle()),
                    print(reading, spread.printed())));
            matters(spread).ifPresent(lines::add);
        }
        spread.overLimit()
                .ifPresent(share -> lines.add(
                        share == 0 ? texts.say("spread.over.never") : texts.say("spread.over", share(share))));
        lines.add(texts.say("note"));
        return lines;
    }

    private Optional<String> matters(BuildSpread spread) {
        return spread.ranking().stream()
                .findFirst()
                .map(rank -> texts.say("spread.matters", name(rank.variable()), share(rank.total())));
    }

    /** How often a caution stands. */
    public String odds(BuildSpread.Odds odds, int judged) {
        return texts.say("spread.odds.row", CautionTexts.title(odds.caution(), locale()), share(odds.share()), judged);
    }

    /** How far a number is commonly off, and on what that rests. */
    public String off(BuildSpread.Rank rank) {
        Tolerance tolerance = rank.tolerance();
        String amount = switch (tolerance.shape()) {
            case SHARE -> texts.say("off.share", percent(tolerance.within()));
            case DISTANCE -> texts.say("off.distance", rank.variable().print(tolerance.within(), format));
            case FACTOR ->
                texts.say(
                        "off.factor", format.print(tolerance.within(), Unit.FRACTION.base(), Digits.atMostDecimals(1)));
        };
        return texts.say(
                "off.basis", amount, texts.say("basis." + tolerance.basis().word()));
    }

    private String percent(double share) {
        return format.print(share, Unit.FRACTION.scale("%"), Digits.atMostDecimals(1));
    }
}
