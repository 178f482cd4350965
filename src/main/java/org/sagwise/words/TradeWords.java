package org.sagwise.words;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.sagwise.part.Catalogue;
import org.sagwise.scenario.Draft;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.ScenarioRules;
import org.sagwise.text.Languages;
import org.sagwise.text.Texts;

/** Makes a bench of a line of trade words, and a line of a bench. */
public final class TradeWords {

    /** A longer line is none. */
    public static final int LONGEST = 2_000;

    private static final int MOST_COMPLAINTS = 20;

    /** The line in the text of a bench that was made of it: the first that is set as code. */
    private static final Pattern LINE = Pattern.compile("\\A[^`]*`([^`]+)`");

    private TradeWords() {}

    /**
     * Reads a line. Its words may be of any language of the program, and of several.
     *
     * @param locale language of the bench's title and text, and whose thousands mark is watched for
     */
    public static WordsBench read(String line, Catalogue catalogue, Locale locale) {
        if (line.isBlank()) {
            return refused(Complaint.of(new Span(0, 0), WordsFault.EMPTY));
        }
        if (line.length() > LONGEST) {
            return refused(
                    Complaint.of(new Span(LONGEST, line.length()), WordsFault.TOO_LONG, String.valueOf(LONGEST)));
        }
        LineReader reader = new LineReader(catalogue);
        Recipe recipe = reader.read(line, locale);
        List<Complaint> complaints = new ArrayList<>(reader.notes().complaints());
        if (!complaints.isEmpty()) {
            return new WordsBench.Refused(inOrder(complaints));
        }
        BenchBuilder builder = new BenchBuilder(recipe, catalogue, locale);
        Scenario bench = builder.build();
        for (Finding finding : new ScenarioRules(catalogue).check(Draft.of(bench))) {
            complaints.add(new Complaint(place(finding, bench, reader.notes().places(), line), finding));
        }
        return complaints.isEmpty()
                ? new WordsBench.Built(told(bench, line, builder.assumed(), recipe, locale), builder.assumed())
                : new WordsBench.Refused(inOrder(complaints));
    }

    /** Says a bench in a line of which the same circuit can be made, or why it cannot be said. */
    public static SaidBench write(Scenario bench, Catalogue catalogue, Locale locale) {
        return BenchWords.say(bench, catalogue, locale);
    }

    /**
     * What was assumed when a bench was made of the line in its text, in whatever language. Nothing is told of a bench
     * that was changed since: what was assumed may be measured by now.
     */
    public static List<Assumed> assumed(Scenario bench, Catalogue catalogue) {
        Matcher line = LINE.matcher(bench.about());
        if (!line.find()) {
            return List.of();
        }
        return Languages.locales().stream()
                .map(locale -> read(line.group(1), catalogue, locale))
                .filter(WordsBench.Built.class::isInstance)
                .map(WordsBench.Built.class::cast)
                .filter(built -> built.bench().parts().equals(bench.parts())
                        && built.bench().links().equals(bench.links()))
                .map(WordsBench.Built::assumed)
                .findFirst()
                .orElse(List.of());
    }

    private static WordsBench refused(Complaint complaint) {
        return new WordsBench.Refused(List.of(complaint));
    }

    private static List<Complaint> inOrder(List<Complaint> complaints) {
        return complaints.stream()
                .distinct()
                .sorted(Comparator.comparingInt(complaint -> complaint.span().start()))
                .limit(MOST_COMPLAINTS)
                .toList();
    }

    /** Where the line says what a rule objects to; the whole line if that cannot be told. */
    private static Span place(Finding finding, Scenario bench, Map<String, Span> places, String line) {
        String place = finding.place();
        String key = place.substring(place.indexOf(']') + 1).replaceFirst("^\\.", "");
        Optional<String> part = place.startsWith("parts[")
                ? Optional.of(bench.parts()
                        .get(Integer.parseInt(place.substring(6, place.indexOf(']'))))
                        .id())
                : Optional.empty();
        List<String> names = part.map(id -> List.of(id, "cells", id.startsWith("coil") ? "coil0" : id))
                .orElse(List.of("wire", "joint", "ambient"));
        String ending = key.substring(key.lastIndexOf('.') + 1);
        for (String name : names) {
            for (Map.Entry<String, Span> known : places.entrySet()) {
                boolean same = known.getKey().equals(name + "." + key);
                boolean near =
                        known.getKey().startsWith(name + ".") && known.getKey().endsWith("." + ending);
                if (!ending.isEmpty() && (same || near)) {
                    return known.getValue();
                }
            }
        }
        return new Span(0, line.length());
    }

    private static List<String> keys(Recipe recipe) {
        List<String> keys = new ArrayList<>(List.of("sagwise", "title", "about"));
        recipe.ambientC().ifPresent(celsius -> keys.add("ambient_C"));
        keys.addAll(List.of("parts", "links"));
        if (recipe.isHeld()) {
            keys.add("fired");
        }
        return keys;
    }

    /** The bench with a title, and with the line and what was assumed in its text. */
    private static Scenario told(Scenario bench, String line, List<Assumed> assumed, Recipe recipe, Locale locale) {
        Texts texts = Texts.in("words", locale);
        String about = texts.say("about.line") + "\n\n`"
                + line.replace('`', '\'').replaceAll("\\s+", " ").strip() + "`";
        if (!assumed.isEmpty()) {
            about += "\n\n" + texts.say("about.assumed") + "\n\n"
                    + assumed.stream().map(it -> "- " + it.text(locale)).collect(Collectors.joining("\n"));
        }
        return new Scenario(
                Titles.of(bench, recipe, locale),
                about,
                bench.ambientC(),
                bench.parts(),
                bench.links(),
                bench.fired(),
                bench.probes(),
                bench.notes(),
                bench.placement(),
                bench.foreign(),
                keys(recipe));
    }
}
