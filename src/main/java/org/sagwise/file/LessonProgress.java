package org.sagwise.file;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.sagwise.lesson.Answers;
import org.sagwise.lesson.LessonPlayer;
import org.sagwise.lesson.Shuffle;

/**
 * How far somebody is in each lesson, kept in one small file on this machine. It holds step,
 * answers and readings, and nothing about the person: no name, no time, no machine.
 *
 * @param places how far each lesson is, by its name
 */
public record LessonProgress(Map<String, Place> places) {

    /** Nothing begun. */
    public static final LessonProgress NONE = new LessonProgress(Map.of());

    private static final int FORMAT = 1;
    private static final int MOST_BYTES = 1024 * 1024;
    private static final ObjectMapper JSON = new ObjectMapper();

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
    }

    /** This progress with that of one learner in one lesson. */
    public LessonProgress with(LessonPlayer player) {
        Map<String, Place> more = new LinkedHashMap<>(places);
        more.put(player.lesson().id(), new Place(player.at(), player.allAnswers(), player.shuffle()));
        return new LessonProgress(more);
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
            JsonNode root = JSON.readTree(Files.readString(file, StandardCharsets.UTF_8));
            return root.path("sagwise_progress").asInt() == FORMAT ? of(root.path("lessons")) : NONE;
        } catch (IOException unreadable) {
            return NONE;
        }
    }

    private static LessonProgress of(JsonNode lessons) {
        Map<String, Place> places = new LinkedHashMap<>();
        for (Map.Entry<String, JsonNode> entry : lessons.properties()) {
            List<Answers> answers = new ArrayList<>();
            entry.getValue().path("answers").forEach(it -> answers.add(answers(it)));
            int reached = entry.getValue().path("reached").asInt();
            Shuffle shuffle = new Shuffle(entry.getValue().path("shuffle").asLong());
            places.put(entry.getKey(), new Place(reached, answers, shuffle));
        }
        return new LessonProgress(places);
    }

    private static Answers answers(JsonNode node) {
        Answers.State state = Answers.State.OPEN;
        for (Answers.State known : Answers.State.values()) {
            state = word(known).equals(node.path("state").asText()) ? known : state;
        }
        return new Answers(
                state,
                node.path("choice").canConvertToInt() && node.path("choice").asInt() >= 0
                        ? OptionalInt.of(node.path("choice").asInt())
                        : OptionalInt.empty(),
                node.path("number").isNumber()
                        ? OptionalDouble.of(node.path("number").asDouble())
                        : OptionalDouble.empty(),
                Math.max(0, node.path("attempts").asInt()),
                Math.max(0, node.path("hints").asInt()));
    }

    /**
     * Writes the file, in one step or not at all.
     *
     * @throws IOException if it cannot be written
     */
    public void write(Path file) throws IOException {
        ObjectNode root = JSON.createObjectNode();
        root.put("sagwise_progress", FORMAT);
        ObjectNode lessons = root.putObject("lessons");
        places.forEach((id, place) -> put(lessons.putObject(id), place));
        AtomicFile.write(AtomicFile.target(file), bytes(root), AtomicFile.ON_DISK);
    }

    private static void put(ObjectNode lesson, Place place) {
        lesson.put("reached", place.reached());
        if (!place.shuffle().equals(Shuffle.NONE)) {
            lesson.put("shuffle", place.shuffle().seed());
        }
        ArrayNode all = lesson.putArray("answers");
        for (Answers answers : place.answers()) {
            ObjectNode one = all.addObject();
            one.put("state", word(answers.state()));
            answers.choice().ifPresent(choice -> one.put("choice", choice));
            answers.number().ifPresent(number -> one.put("number", number));
            one.put("attempts", answers.attempts());
            one.put("hints", answers.hints());
        }
    }

    private static byte[] bytes(ObjectNode root) throws JsonProcessingException {
        return JSON.writerWithDefaultPrettyPrinter().writeValueAsBytes(root);
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
