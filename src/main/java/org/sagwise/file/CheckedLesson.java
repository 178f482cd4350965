package org.sagwise.file;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.sagwise.lesson.Lesson;
import org.sagwise.lesson.LessonLint;
import org.sagwise.lesson.LessonSet;
import org.sagwise.part.Catalogue;
import org.sagwise.scenario.Finding;
import org.sagwise.text.Languages;
import org.sagwise.text.Position;

/**
 * A lesson that has been tried out: file, texts, and every number and condition by the engine.
 *
 * @param reading what came of reading it
 * @param faults everything that is wrong, from the top of the file down
 */
public record CheckedLesson(LessonReading reading, List<Finding> faults) {

    private static final Pattern IN_STEP = Pattern.compile("steps\\[(\\d+)\\].*");

    public CheckedLesson {
        faults = faults.stream().sorted(Finding.READING_ORDER).toList();
    }

    /**
     * Tries lessons out, each by itself and all together.
     *
     * @param known names of further lessons that may be needed
     */
    public static List<CheckedLesson> all(List<LessonSource> sources, Catalogue catalogue, Collection<String> known) {
        Map<String, LessonReading> readings = new LinkedHashMap<>();
        for (LessonSource source : sources) {
            LessonReading reading = new LessonReader(catalogue).read(source);
            readings.put(reading.id(), reading);
        }
        List<Lesson> lessons =
                readings.values().stream().flatMap(it -> it.lesson().stream()).toList();
        var between = LessonSet.check(lessons, known);
        List<CheckedLesson> checked = new ArrayList<>();
        for (LessonReading reading : readings.values()) {
            List<Finding> faults = new ArrayList<>(reading.faults());
            for (Lesson lesson : reading.lesson().stream().toList()) {
                LessonLint.check(lesson, catalogue).stream()
                        .map(reading::locate)
                        .forEach(faults::add);
                between.getOrDefault(lesson.id(), List.of()).stream()
                        .map(reading::locate)
                        .forEach(faults::add);
            }
            checked.add(new CheckedLesson(reading, faults));
        }
        return checked;
    }

    /** Languages of the program that it is not written in; those who choose one read the other. */
    public List<String> languagesLeftOut() {
        return lesson().stream()
                .flatMap(it -> Languages.needed().stream()
                        .filter(code -> !it.languages().contains(code)))
                .toList();
    }

    public String id() {
        return reading.id();
    }

    public Optional<Lesson> lesson() {
        return reading.lesson();
    }

    /** The step that something is wrong with; empty for what belongs to no step. */
    public Optional<String> step(Finding fault) {
        Matcher inStep = IN_STEP.matcher(fault.place());
        if (!inStep.matches()) {
            return Optional.empty();
        }
        int place = Integer.parseInt(inStep.group(1));
        return place < reading.stepIds().size()
                ? Optional.of(reading.stepIds().get(place)).filter(id -> !id.isEmpty())
                : Optional.empty();
    }

    /** What is wrong with one step. */
    public List<Finding> faultsOf(String step) {
        return faults.stream()
                .filter(it -> step(it).filter(step::equals).isPresent())
                .toList();
    }

    /** Where in the file a step begins. */
    public Optional<Position> position(String step) {
        int place = reading.stepIds().indexOf(step);
        return place < 0 ? Optional.empty() : reading.document().position("steps[" + place + "]");
    }
}
