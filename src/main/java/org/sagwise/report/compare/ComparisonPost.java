package org.sagwise.report.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.sagwise.assessment.Assessment;
import org.sagwise.hazard.Caution;
import org.sagwise.hazard.CautionTexts;
import org.sagwise.quantity.Measure;
import org.sagwise.quantity.QuantityFormat;
import org.sagwise.quantity.Unit;
import org.sagwise.report.explain.BuildWords;
import org.sagwise.report.post.Block;
import org.sagwise.run.RunTexts;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;
import org.sagwise.text.Signs;

/** A comparison as blocks that any format can hold. */
public final class ComparisonPost {

    private final Comparison comparison;
    private final BuildWords first;
    private final BuildWords second;
    private final Locale locale;
    private final String sides;
    private final List<Block> post = new ArrayList<>();

    private ComparisonPost(Comparison comparison, String sides, Locale locale, Signs signs) {
        this.sides = sides;
        this.comparison = comparison;
        this.locale = locale;
        this.first = BuildWords.of(comparison.first().scenario(), locale, signs);
        this.second = BuildWords.of(comparison.second().scenario(), locale, signs);
    }

    public static List<Block> of(Comparison comparison, Locale locale, Signs signs) {
        return of(comparison, List.of(), locale, signs);
    }

    /**
     * The same with the names of the files.
     *
     * @param names of the first and of the second; or none
     */
    public static List<Block> of(Comparison comparison, List<String> names, Locale locale, Signs signs) {
        ComparisonPost made = new ComparisonPost(comparison, "compare", locale, signs);
        made.titles(names);
        made.build();
        made.outcome();
        made.courses();
        return List.copyOf(made.post);
    }

    /** What differs between two benches, without titles and without what only time tells. */
    public static List<Block> differences(Comparison comparison, Locale locale, Signs signs) {
        return differences(comparison, "compare", locale, signs);
    }

    /** The same where the second is what somebody has made of the first. */
    public static List<Block> changes(Comparison comparison, Locale locale, Signs signs) {
        return differences(comparison, "change", locale, signs);
    }

    private static List<Block> differences(Comparison comparison, String sides, Locale locale, Signs signs) {
        ComparisonPost made = new ComparisonPost(comparison, sides, locale, signs);
        made.build();
        made.outcome();
        return List.copyOf(made.post);
    }

    private void titles(List<String> names) {
        post.add(new Block.Title(say(
                "compare.title",
                title(comparison.first().scenario()),
                title(comparison.second().scenario()))));
        post.add(new Block.Bullets(List.of(
                side("compare.is-first", names, 0, comparison.first()),
                side("compare.is-second", names, 1, comparison.second()))));
    }

    private void build() {
        post.add(new Block.Heading(say(of("build"))));
        if (comparison.build().isEmpty()) {
            post.add(new Block.Paragraph(say(of("same-build"))));
        } else {
            post.add(new Block.Bullets(
                    comparison.build().stream().map(this::sentence).toList()));
        }
    }

    private void outcome() {
        post.add(new Block.Heading(say(of("outcome"))));
        cautions(of("gone"), comparison.outcome().gone());
        cautions(of("come"), comparison.outcome().come());
        if (!comparison.outcome().differs()) {
            post.add(new Block.Paragraph(say(of("same-outcome"))));
        }
        post.add(new Block.Table(
                List.of("", say(of("first")), say(of("second"))),
                comparison.outcome().rows().stream().map(this::row).toList()));
    }

    /** The key of a sentence that speaks of one side or the other. */
    private String of(String key) {
        return sides + "." + key;
    }

    private String side(String key, List<String> names, int place, Assessment bench) {
        String title = title(bench.scenario());
        boolean named = place < names.size() && !names.get(place).equals(title);
        return say(key, named ? say("compare.named", title, names.get(place)) : title);
    }

    /** What ends each run, and what the owner of each would write. */
    private void courses() {
        List<String> items = new ArrayList<>();
        course("compare.course-first", comparison.first(), comparison.outcome().was())
                .ifPresent(items::add);
        course(
                        "compare.course-second",
                        comparison.second(),
                        comparison.outcome().is())
                .ifPresent(items::add);
        items.add(symptoms("compare.symptoms-first", comparison.outcome().was()));
        items.add(symptoms("compare.symptoms-second", comparison.outcome().is()));
        post.add(new Block.Heading(say("compare.course")));
        post.add(new Block.Bullets(items));
    }

    private Optional<String> course(String key, Assessment bench, Outcome.Course course) {
        RunTexts texts = new RunTexts(bench.bench(), QuantityFormat.forPeople(locale));
        return course.end()
                .map(end -> Double.isNaN(course.timeS())
                        ? say(key + "-untold", texts.end(end))
                        : say(key, first.print(course.timeS(), Unit.SECOND), texts.end(end)));
    }

    private String symptoms(String key, Outcome.Course course) {
        return course.symptoms().isEmpty()
                ? say(key + "-none")
                : say(
                        key,
                        String.join(
                                "; ",
                                course.symptoms().stream()
                                        .map(symptom -> symptom.title(locale))
                                        .toList()));
    }

    private String title(Scenario scenario) {
        return scenario.title().isBlank() ? say("untitled") : scenario.title();
    }

    private void cautions(String key, List<Caution> cautions) {
        if (!cautions.isEmpty()) {
            post.add(new Block.Paragraph(say(key)));
            post.add(new Block.Bullets(cautions.stream()
                    .map(caution ->
                            CautionTexts.signal(caution.signal(), locale) + ": " + CautionTexts.title(caution, locale))
                    .toList()));
        }
    }

    private List<String> row(Outcome.Row row) {
        String part = row.first().isEmpty() ? second.name(row.second()) : first.name(row.first());
        String key = row.quantity().name().toLowerCase(Locale.ROOT).replace('_', '-');
        return List.of(first.sentence("compare.row." + key, part), value(row, row.was()), value(row, row.is()));
    }

    private String value(Outcome.Row row, double value) {
        return first.print(
                value,
                switch (row.quantity().unit()) {
                    case "A" -> Unit.AMPERE;
                    case "V" -> Unit.VOLT;
                    case "W" -> Unit.WATT;
                    case "s" -> Unit.SECOND;
                    default -> Unit.FRACTION;
                });
    }

    private String sentence(BuildDifference difference) {
        if (difference instanceof BuildDifference.PartOnly only) {
            return words(only.side()).partOnly(key("part", only.side()), only.part());
        } else if (difference instanceof BuildDifference.Turned turned) {
            return first.sentence(of("turned"), first.name(turned.first().id()));
        } else if (difference instanceof BuildDifference.KeyChanged changed) {
            return first.sentence(
                    of("key"),
                    both(changed.first(), changed.second()),
                    keyName(changed.key()),
                    written(changed.key(), changed.was()),
                    written(changed.key(), changed.is()));
        } else if (difference instanceof BuildDifference.JointOnly only) {
            String joint = words(only.side()).joint(only.link());
            return first.sentence(key("joint", only.side()), joint);
        } else if (difference instanceof BuildDifference.JointChanged changed) {
            return first.sentence(of("joint"), first.joint(changed.first()), second.joint(changed.second()));
        }
        BuildDifference.Ambient ambient = (BuildDifference.Ambient) difference;
        return first.sentence(
                of("ambient"), first.print(ambient.wasC(), Unit.CELSIUS), first.print(ambient.isC(), Unit.CELSIUS));
    }

    private BuildWords words(BuildDifference.Side side) {
        return side == BuildDifference.Side.FIRST ? first : second;
    }

    private String key(String what, BuildDifference.Side side) {
        String where = side == BuildDifference.Side.FIRST ? "first" : "second";
        return of(what + "-only-" + where);
    }

    private String both(Part one, Part other) {
        String name = first.name(one.id());
        String mate = second.name(other.id());
        return name.equals(mate) ? name : say(of("both"), name, mate);
    }

    /** A key as a person reads it; its unit stands with the value. */
    private String keyName(String key) {
        if (first.has("key." + key)) {
            return say("key." + key);
        }
        String unit = Measure.ofKey(key).isPresent() ? key.replaceFirst("_[^_]+$", "") : key;
        return unit.replace('_', ' ');
    }

    private String written(String key, String value) {
        if (value.isEmpty()) {
            return say("compare.not-said");
        }
        String word = "value." + value;
        return first.has(word) ? say(word) : number(key, value).orElse(value);
    }

    /** A number as the language writes it, with as many digits as it was written with. */
    private Optional<String> number(String key, String value) {
        try {
            String number = first.printAll(Double.parseDouble(value));
            String symbol =
                    Measure.ofKey(key).map(it -> " " + it.scale().symbol()).orElse("");
            return Optional.of(number + symbol);
        } catch (NumberFormatException notOne) {
            return Optional.empty();
        }
    }

    private String say(String key, Object... words) {
        return first.say(key, words);
    }
}
