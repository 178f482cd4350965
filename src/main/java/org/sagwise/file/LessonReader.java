package org.sagwise.file;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.sagwise.lesson.Lesson;
import org.sagwise.lesson.Lesson.LessonBench;
import org.sagwise.lesson.LessonProblem;
import org.sagwise.lesson.Step;
import org.sagwise.part.Catalogue;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.ScenarioRules;
import org.sagwise.text.Languages;
import org.sagwise.text.LocalText;

/**
 * Reads a lesson, format 1: a folder with {@code lesson.yaml} and the scenarios it names. Whatever
 * the files hold, the answer is a lesson or everything that is wrong with it; no file outside the
 * folder is opened.
 */
public final class LessonReader {

    /** The file that holds steps and texts. */
    public static final String FILE = "lesson.yaml";

    private static final Pattern NAME = Pattern.compile("[a-z0-9][a-z0-9-]{0,47}");

    private final ScenarioReader benches;
    private final ScenarioRules rules;
    private final JsonText words;

    /**
     * @param catalogue where models of parts are looked up
     */
    public LessonReader(Catalogue catalogue) {
        this(catalogue, new ScenarioReader(catalogue), YamlDocument::read);
    }

    private LessonReader(Catalogue catalogue, ScenarioReader benches, JsonText words) {
        this.benches = benches;
        this.words = words;
        rules = new ScenarioRules(catalogue);
    }

    /** A reader that needs no library, for a browser: it reads what {@link LessonBundle} packs. */
    public static LessonReader bare(Catalogue catalogue) {
        return new LessonReader(catalogue, ScenarioReader.bare(catalogue), PlainJson::read);
    }

    /** Whether a word may name a lesson, a step or a bench. */
    static boolean isName(String word) {
        return NAME.matcher(word).matches();
    }

    public LessonReading read(LessonSource source) {
        try {
            Optional<byte[]> bytes = source.file(FILE);
            return bytes.map(it -> read(source, it))
                    .orElseGet(() -> refused(source, Finding.of("", LessonProblem.NO_LESSON_FILE, FILE)));
        } catch (IOException e) {
            String why = String.valueOf(e.getMessage());
            return refused(source, Finding.of("", LessonProblem.UNREADABLE, FILE, why));
        }
    }

    private LessonReading read(LessonSource source, byte[] bytes) {
        SourceText text = SourceText.of(bytes);
        if (text.problem().isPresent()) {
            return refused(source, Finding.of("", LessonProblem.UNREADABLE, FILE, "UTF-8"));
        }
        Document document = words.read(text.text());
        List<Finding> faults = new ArrayList<>(document.findings());
        if (document.root().isEmpty()) {
            return LessonReading.refused(source.id(), faults);
        }
        Optional<Lesson> lesson = lesson(source, Fields.of("", document.root().get(), faults));
        Set<String> absent = absent(document.root().get());
        faults.removeIf(fault -> fault.problem() == LessonProblem.MISSING_LANGUAGE
                && absent.contains(fault.details().get(0)));
        return new LessonReading(
                source.id(), faults.isEmpty() ? lesson : Optional.empty(), faults, document, stepIds(document));
    }

    /** Languages in which the whole lesson says nothing: who teaches in one language may leave out the other. */
    private static Set<String> absent(Node root) {
        Set<String> absent = new HashSet<>(Languages.needed());
        absent.removeIf(code -> says(root, code));
        return absent.size() < Languages.needed().size() ? absent : Set.of();
    }

    private static boolean says(Node node, String code) {
        if (node instanceof Node.Items list) {
            return list.items().stream().anyMatch(item -> says(item, code));
        }
        return node instanceof Node.Group group
                && (group.has(code) || group.entries().values().stream().anyMatch(entry -> says(entry.value(), code)));
    }

    private Optional<Lesson> lesson(LessonSource source, Fields fields) {
        if (fields.whole("lesson", 1, 1, 0) != 1 && !fields.has("lesson")) {
            fields.wrong(LessonProblem.MISSING_KEY, "lesson");
        }
        LocalText title = fields.text("title");
        LocalText goal = fields.text("goal");
        int minutes = fields.whole("minutes", 5, 60, 30);
        int evening = fields.whole("evening", 1, 20, 1);
        List<String> needs = fields.words("needs");
        LocalText note = fields.text("note");
        Map<String, LessonBench> benches = benches(source, fields);
        Map<String, LocalText> names = fields.namedTexts("names");
        List<Step> steps = new LessonSteps().read(fields);
        if (benches.isEmpty()) {
            fields.wrong("benches", LessonProblem.TOO_FEW, "benches", "1");
        }
        if (steps.isEmpty()) {
            fields.wrong("steps", LessonProblem.TOO_FEW, "steps", "1");
        }
        fields.refuseOthers();
        return benches.isEmpty() || steps.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new Lesson(source.id(), title, goal, minutes, evening, needs, note, benches, names, steps));
    }

    private Map<String, LessonBench> benches(LessonSource source, Fields lesson) {
        LessonBenches named = new LessonBenches(source, benches, rules);
        lesson.groups("benches").forEach((name, fields) -> {
            if (!isName(name)) {
                fields.wrong(LessonProblem.BAD_ID, name);
            }
            named.read(name, fields);
            fields.refuseOthers();
        });
        return named.read();
    }

    private static List<String> stepIds(Document document) {
        return document.group().flatMap(file -> file.get("steps")).stream()
                .filter(Node.Items.class::isInstance)
                .flatMap(steps -> ((Node.Items) steps).items().stream())
                .map(LessonReader::stepId)
                .toList();
    }

    private static String stepId(Node step) {
        return step instanceof Node.Group group && group.get("id").orElse(null) instanceof Node.Scalar id
                ? id.text().strip()
                : "";
    }

    private static LessonReading refused(LessonSource source, Finding fault) {
        return LessonReading.refused(source.id(), List.of(fault));
    }
}
