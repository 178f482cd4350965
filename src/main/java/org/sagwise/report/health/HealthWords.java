package org.sagwise.report.health;

import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.sagwise.quantity.QuantityFormat;
import org.sagwise.quantity.Unit;
import org.sagwise.reading.Bench;
import org.sagwise.scenario.Joint;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Names;
import org.sagwise.scenario.PartName;
import org.sagwise.text.Signs;
import org.sagwise.text.Texts;

/** Judged resistances in words, a row for each: what, ohms, what is usual, verdict. */
public final class HealthWords {

    private final Bench bench;
    private final Texts texts;
    private final QuantityFormat format;

    public HealthWords(Bench bench, Locale locale, Signs signs) {
        this.bench = bench;
        this.texts = Texts.in("health", locale);
        this.format = new QuantityFormat(locale, signs);
    }

    /** What stands over the columns. */
    public List<String> heads() {
        return List.of(
                texts.say("head.what"), texts.say("head.ohm"), texts.say("head.usual"), texts.say("head.verdict"));
    }

    /** A row for each resistance, in the order of the bench. */
    public List<List<String>> rows() {
        return Health.of(bench).stream().map(this::row).toList();
    }

    /** What a mark at a number means; empty if nothing is marked. */
    public List<String> marks() {
        return marks(Health.of(bench));
    }

    /** The row of one part as lines of its own, what its mark means below it; empty where nothing is judged. */
    public List<String> ofPart(String id) {
        return lines("line.part", health -> health.part().equals(id));
    }

    /** The row of the link at this place as lines of its own; empty where nothing is judged. */
    public List<String> ofLink(int place) {
        boolean isWire = bench.scenario().links().stream()
                .skip(place)
                .limit(1)
                .anyMatch(link -> link.joint() instanceof Joint.Jumper);
        return lines(
                isWire ? "line.wire" : "line.touch", health -> health.links().contains(place));
    }

    private List<String> lines(String key, Predicate<Health> about) {
        List<Health> all = Health.of(bench).stream().filter(about).toList();
        Stream<String> judged = all.stream().map(health -> texts.say(key, ohm(health), usual(health), verdict(health)));
        return Stream.concat(judged, marks(all).stream()).toList();
    }

    private List<String> marks(List<Health> all) {
        return Stream.of(Health.Origin.CATALOGUE, Health.Origin.ASSUMED)
                .filter(origin -> all.stream().anyMatch(health -> health.origin() == origin))
                .map(origin -> texts.say("mark." + word(origin)))
                .toList();
    }

    private List<String> row(Health health) {
        return List.of(Names.capital(what(health), texts.locale()), ohm(health), usual(health), verdict(health));
    }

    private String ohm(Health health) {
        String mark = switch (health.origin()) {
            case GIVEN -> "";
            case CATALOGUE -> " °";
            case ASSUMED -> " *";
        };
        return format.print(health.ohm(), Unit.OHM) + mark;
    }

    /** What the catalogue says of a new cell is no news about this one. */
    private String verdict(Health health) {
        if (health.isHighForNow()) {
            return texts.say("cell.for-now");
        }
        if (health.origin() == Health.Origin.CATALOGUE && health.verdict() == Health.Verdict.USUAL) {
            return texts.say("not-measured");
        }
        String what = health.part().isEmpty() ? "joint" : kind(health);
        return texts.say(what + "." + word(health.verdict()));
    }

    private String kind(Health health) {
        return bench.part(health.part()).kind().word();
    }

    private String what(Health health) {
        Names names = Names.in(texts.locale());
        if (!health.part().isEmpty()) {
            return names.part(PartName.of(bench.scenario(), health.part()));
        }
        if (health.link().isEmpty()) {
            return texts.say("joints", health.links().size());
        }
        Link link = bench.scenario().links().get(health.link().getAsInt());
        return names.brief(bench.scenario(), link.from()) + " › " + names.brief(bench.scenario(), link.to());
    }

    private String usual(Health health) {
        double from = health.usual().from();
        double to = health.usual().to();
        if (health.part().isEmpty() || kind(health).equals("switch")) {
            return texts.say("at-most", format.print(to, Unit.OHM));
        }
        return from == to
                ? format.print(to, Unit.OHM)
                : texts.say("span", format.print(from, Unit.OHM), format.print(to, Unit.OHM));
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }
}
