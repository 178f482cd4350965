package org.sagwise.file;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.sagwise.lesson.Lesson.LessonBench;
import org.sagwise.lesson.LessonProblem;
import org.sagwise.lesson.MoveLint;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.ScenarioRules;
import org.sagwise.scenario.edit.Edit;
import org.sagwise.text.LocalText;

/** Reads the benches of a lesson: each from a file beside it, or from a bench named above it. */
final class LessonBenches {

    /** A plain name: nothing in a lesson can reach into another folder. */
    private static final Pattern FILE_NAME = Pattern.compile("[A-Za-z0-9][A-Za-z0-9_-]{0,60}\\.sagwise\\.json");

    private final LessonSource source;
    private final ScenarioReader reader;
    private final ScenarioRules rules;
    private final Map<String, LessonBench> benches = new LinkedHashMap<>();

    LessonBenches(LessonSource source, ScenarioReader reader, ScenarioRules rules) {
        this.source = source;
        this.reader = reader;
        this.rules = rules;
    }

    Map<String, LessonBench> read() {
        return benches;
    }

    void read(String name, Fields fields) {
        LocalText title = fields.text("title");
        List<Edit> moves = LessonMoves.read(fields, "moves");
        Optional<String> file = fields.word("file");
        Optional<String> of = fields.word("of");
        if (file.isPresent() == of.isPresent()) {
            fields.wrong(LessonProblem.ONE_OF, "file, of");
            return;
        }
        Optional<Scenario> scenario = file.isPresent() ? fromFile(file.get(), fields) : fromBench(of.get(), fields);
        scenario.ifPresent(it -> benches.put(name, new LessonBench(title, Edit.made(moves, it, rules))));
        scenario.ifPresent(it -> tellRefused(moves, it, fields));
    }

    private void tellRefused(List<Edit> moves, Scenario before, Fields fields) {
        for (Finding refused : MoveLint.check("moves", moves, before, rules)) {
            fields.wrong("moves", refused.problem(), refused.details().toArray(String[]::new));
        }
    }

    private Optional<Scenario> fromBench(String other, Fields fields) {
        LessonBench bench = benches.get(other);
        if (bench == null) {
            fields.wrong("of", LessonProblem.UNKNOWN_BENCH, other);
        }
        return Optional.ofNullable(bench).map(LessonBench::scenario);
    }

    private Optional<Scenario> fromFile(String file, Fields fields) {
        if (!FILE_NAME.matcher(file).matches()) {
            fields.wrong("file", LessonProblem.BENCH_FILE, file, "*.sagwise.json");
            return Optional.empty();
        }
        try {
            Optional<byte[]> bytes = source.file(file);
            if (bytes.isEmpty()) {
                fields.wrong("file", LessonProblem.NO_LESSON_FILE, file);
                return Optional.empty();
            }
            Loaded loaded = reader.read(bytes.get());
            for (Finding found : loaded.findings()) {
                fields.wrong("file", LessonProblem.BENCH_FILE, file, found.text(Locale.ENGLISH));
            }
            return loaded.scenario();
        } catch (IOException e) {
            fields.wrong("file", LessonProblem.UNREADABLE, file, String.valueOf(e.getMessage()));
            return Optional.empty();
        }
    }
}
