package org.sagwise.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.TreeMap;
import org.sagwise.lesson.Answers;
import org.sagwise.lesson.LessonPlayer;
import org.sagwise.lesson.Recall;
import org.sagwise.lesson.Shuffle;
import org.sagwise.lesson.Sureness;

/**
 * How far somebody is in each lesson, kept in one small file on this machine. It holds step,
 * answers and readings, and nothing about the person: no name, no time, no machine.
 *
 * @param places how far each lesson is, by its name
 * @param checks places of the answers to each form of the check of ideas, by its letter; -1 for none
 * @param recalled which questions of earlier lessons came back and when, by lesson and step
 */
public record LessonProgress(
        Map<String, Place> places, Map<String, Recall.Asked> recalled, Map<String, List<Integer>> checks) {

    /** Nothing begun. */
    public static final LessonProgress NONE = new LessonProgress(Map.of(), Map.of(), Map.of());

    private static final int FORMAT = 1;
    private static final int MOST_BYTES = 1024 * 1024;

    /**
     * How far a lesson is.
     *
     * @param reached place of the step
     * @param answers what was done in each step
     * @param shuffle in which order the answers of questions stand
     */
    public record Place(int reached, List<Answers> answers, Shuffle shuffle) {
        public Place {
            answers = List.copyOf(answers);
        }
    }

    public LessonProgress {
        places = Map.copyOf(places);
        recalled = Map.copyOf(recalled);
        checks = Map.copyOf(checks);
    }

    /** This progress with that of one learner in one lesson. */
    public LessonProgress with(LessonPlayer player) {
        Map<String, Place> more = new LinkedHashMap<>(places);
        more.put(player.lesson().id(), new Place(player.at(), player.allAnswers(), player.shuffle()));
        return new LessonProgress(more, recalled, checks);
    }

    /** This progress after a question of an earlier lesson was answered. */
    public LessonProgress recalling(Map<String, Recall.Asked> now) {
        return new LessonProgress(places, now, checks);
    }

    /** This progress with answers to a form of the check of ideas. */
    public LessonProgress checking(String form, List<Integer> answers) {
        Map<String, List<Integer>> more = new LinkedHashMap<>(checks);
        more.put(form, List.copyOf(answers));
        return new LessonProgress(places, recalled, more);
    }

    /** What was done in each step of each lesson, by the lesson's name. */
    public Map<String, List<Answers>> given() {
        Map<String, List<Answers>> given = new LinkedHashMap<>();
        places.forEach((id, place) -> given.put(id, place.answers()));
        return given;
    }

    public Optional<Place> place(String lesson) {
        return Optional.ofNullable(places.get(lesson));
    }

    /** Reads the file; what cannot be read counts as nothing begun. */
    public static LessonProgress read(Path file) {
        try {
            if (!Files.isRegularFile(file) || Files.size(file) > MOST_BYTES) {
                return NONE;
            }
            return of(SettingsFile.read(Files.readAllBytes(file)).orElse(Map.of()));
        } catch (IOException unreadable) {
            return NONE;
        }
    }

    /** Reads what {@link #text()} says, without a library; what cannot be read counts as nothing begun. */
    public static LessonProgress read(String text) {
        return of(PlainJson.read(text)
                .group()
                .map(group -> group.plain(value -> value))
                .orElse(Map.of()));
    }

    private static LessonProgress of(Map<String, Object> root) {
        return number(root, "sagwise_progress") == FORMAT
                ? of(object(root.get("lessons")), object(root.get("recalled")), object(root.get("checks")))
                : NONE;
    }

    private static LessonProgress of(Map<?, ?> lessons, Map<?, ?> recalled, Map<?, ?> checks) {
        Map<String, Place> places = new LinkedHashMap<>();
        lessons.forEach((id, value) -> {
            Map<?, ?> lesson = object(value);
            List<Answers> answers = lesson.get("answers") instanceof List<?> all
                    ? all.stream().map(it -> answers(object(it))).toList()
                    : List.of();
            Shuffle shuffle = new Shuffle(whole(lesson.get("shuffle")));
            places.put(String.valueOf(id), new Place((int) number(lesson, "reached"), answers, shuffle));
        });
        Map<String, Recall.Asked> asked = new LinkedHashMap<>();
        recalled.forEach((key, value) -> {
            Map<?, ?> one = object(value);
            asked.put(
                    String.valueOf(key),
                    new Recall.Asked(Math.max(0, Math.min(30, (int) number(one, "known"))), Math.max(0, (int)
                            number(one, "at"))));
        });
        Map<String, List<Integer>> answers = new LinkedHashMap<>();
        checks.forEach((form, all) -> answers.put(
                String.valueOf(form),
                all instanceof List<?> list
                        ? list.stream()
                                .map(it -> it instanceof Number number ? number.intValue() : -1)
                                .toList()
                        : List.of()));
        return new LessonProgress(places, asked, answers);
    }

    private static Answers answers(Map<?, ?> written) {
        Answers.State state = Answers.State.OPEN;
        for (Answers.State known : Answers.State.values()) {
            state = word(known).equals(written.get("state")) ? known : state;
        }
        int choice = written.get("choice") instanceof Number number ? number.intValue() : -1;
        return new Answers(
                state,
                choice >= 0 ? OptionalInt.of(choice) : OptionalInt.empty(),
                written.get("number") instanceof Number number
                        ? OptionalDouble.of(number.doubleValue())
                        : OptionalDouble.empty(),
                Math.max(0, (int) number(written, "attempts")),
                Math.max(0, (int) number(written, "hints")),
                Boolean.TRUE.equals(written.get("held")),
                Sureness.ofWord(String.valueOf(written.get("sure"))));
    }

    private static Map<?, ?> object(Object value) {
        return value instanceof Map<?, ?> map ? map : Map.of();
    }

    private static double number(Map<?, ?> object, String key) {
        return object.get(key) instanceof Number number ? number.doubleValue() : 0;
    }

    /** A whole number to its last digit, which a double would not keep. */
    private static long whole(Object value) {
        try {
            return Long.parseLong(String.valueOf(value));
        } catch (NumberFormatException other) {
            return 0;
        }
    }

    /**
     * Writes the file, in one step or not at all.
     *
     * @throws IOException if it cannot be written
     */
    public void write(Path file) throws IOException {
        AtomicFile.write(AtomicFile.target(file), SettingsFile.bytes(plain()), AtomicFile.ON_DISK);
    }

    /** The same in one line of JSON. */
    public String text() {
        return JsonLayout.compact(plain());
    }

    private Map<String, Object> plain() {
        Map<String, Object> lessons = new LinkedHashMap<>();
        places.forEach((id, place) -> lessons.put(id, plain(place)));
        Map<String, Object> root = new LinkedHashMap<>();
        root.put("sagwise_progress", FORMAT);
        root.put("lessons", lessons);
        if (!recalled.isEmpty()) {
            Map<String, Object> asked = new TreeMap<>();
            recalled.forEach((key, one) -> asked.put(key, Map.of("known", one.known(), "at", one.at())));
            root.put("recalled", asked);
        }
        if (!checks.isEmpty()) {
            root.put("checks", new TreeMap<>(checks));
        }
        return root;
    }

    private static Map<String, Object> plain(Place place) {
        Map<String, Object> lesson = new LinkedHashMap<>();
        lesson.put("reached", place.reached());
        if (!place.shuffle().equals(Shuffle.NONE)) {
            lesson.put("shuffle", place.shuffle().seed());
        }
        lesson.put(
                "answers", place.answers().stream().map(LessonProgress::plain).toList());
        return lesson;
    }

    private static Map<String, Object> plain(Answers answers) {
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("state", word(answers.state()));
        answers.choice().ifPresent(choice -> one.put("choice", choice));
        answers.number().ifPresent(number -> one.put("number", number));
        one.put("attempts", answers.attempts());
        one.put("hints", answers.hints());
        if (answers.held()) {
            one.put("held", true);
        }
        answers.sureness().ifPresent(sure -> one.put("sure", sure.word()));
        return one;
    }

    private static String word(Answers.State state) {
        return state.name().toLowerCase(Locale.ROOT);
    }

    /**
     * Wipes everything.
     *
     * @throws IOException if the file cannot be deleted
     */
    public static void wipe(Path file) throws IOException {
        Files.deleteIfExists(file);
    }
}
