package org.sagwise.lesson;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.sagwise.scenario.Scenario;
import org.sagwise.text.Languages;
import org.sagwise.text.LocalText;

/**
 * A guided sequence on the bench.
 *
 * @param id its name: that of its folder
 * @param title title
 * @param goal what the learner can do afterwards, as can be seen from outside
 * @param minutes how long it takes in class
 * @param evening which evening of the class it belongs to, from 1
 * @param needs ids of lessons that come before
 * @param note what only the instructor reads
 * @param benches the benches it names, the first being the one it begins with
 * @param names what people call parts, by id
 * @param steps its steps
 */
public record Lesson(
        String id,
        LocalText title,
        LocalText goal,
        int minutes,
        int evening,
        List<String> needs,
        LocalText note,
        Map<String, LessonBench> benches,
        Map<String, LocalText> names,
        List<Step> steps) {

    public Lesson {
        needs = List.copyOf(needs);
        benches = Collections.unmodifiableMap(new LinkedHashMap<>(benches));
        names = Map.copyOf(names);
        steps = List.copyOf(steps);
        if (benches.isEmpty() || steps.isEmpty()) {
            throw new IllegalArgumentException("a lesson needs a bench and a step");
        }
    }

    /**
     * A bench that a lesson names.
     *
     * @param title what it is called
     * @param scenario what lies on it
     */
    public record LessonBench(LocalText title, Scenario scenario) {}

    /** Codes of the languages it is written in; where one stands for English as well, English is not among them. */
    public Set<String> languages() {
        Set<String> codes = new TreeSet<>(title.byLanguage().keySet());
        boolean borrowed = codes.stream()
                .filter(code -> !code.equals(Languages.ENGLISH))
                .anyMatch(code -> Stream.of(title, goal, note)
                        .allMatch(
                                text -> text.english().equals(text.byLanguage().get(code))));
        if (borrowed) {
            codes.remove(Languages.ENGLISH);
        }
        return codes;
    }

    /** The steps that a class short of time may not leave out. */
    public List<Step> core() {
        return steps.stream().filter(step -> !step.head().skippable()).toList();
    }

    /** The same lesson with other steps. */
    Lesson withSteps(List<Step> others) {
        return new Lesson(id, title, goal, minutes, evening, needs, note, benches, names, others);
    }

    /** The same lesson under another name. */
    public Lesson withId(String other) {
        return new Lesson(other, title, goal, minutes, evening, needs, note, benches, names, steps);
    }

    /** Name of the bench that it begins with. */
    public String first() {
        return benches.keySet().iterator().next();
    }

    /** All benches, with titles and parts named in a language. */
    public Map<String, Scenario> scenarios(Locale locale) {
        Map<String, Scenario> named = new LinkedHashMap<>();
        benches.forEach((name, bench) -> named.put(name, named(bench, locale)));
        return named;
    }

    private Scenario named(LessonBench bench, Locale locale) {
        Scenario scenario = bench.scenario().withTitle(bench.title().in(locale));
        for (var name : names.entrySet()) {
            scenario = scenario.withPart(
                    name.getKey(), part -> part.with("label", name.getValue().in(locale)));
        }
        return scenario;
    }
}
