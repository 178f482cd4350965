package org.sagwise.ui.settings;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.sagwise.picture.layout.Drawing;

/**
 * What a person chose, and what the program keeps from one start to the next. Immutable. What it
 * doesn't know it carries along, so that an older program doesn't lose what a newer one kept.
 *
 * @param values plain data as JSON has it, by name
 */
public record Preferences(Map<String, Object> values) {

    public static final int LEAST_TEXT = 100;
    public static final int LARGEST_TEXT = 200;

    private static final int MOST_RECENT = 10;

    private static final Setting<LooksChoice> LOOKS = Setting.choice("looks", LooksChoice.SYSTEM);
    private static final Setting<Motion> MOTION = Setting.choice("motion", Motion.SYSTEM);
    private static final Setting<Sound> SOUND = Setting.choice("sound", Sound.OFF);
    private static final Setting<Drawing> DRAWING = Setting.choice("drawing", Drawing.BENCH);
    private static final Setting<Shown> EXAMPLES = Setting.choice("examples", Shown.HIDDEN);
    private static final Setting<Shown> READINGS = Setting.choice("readings", Shown.SHOWN);
    private static final Setting<Shown> CURVES = Setting.choice("curves", Shown.HIDDEN);
    private static final Setting<String> LANGUAGE = Setting.text("language", "");
    private static final Setting<Double> TEXT = Setting.number("text_percent", LEAST_TEXT, LEAST_TEXT, LARGEST_TEXT);
    private static final Setting<Double> NOTICE = Setting.number("notice_read", 0, 0, 1000);
    private static final Setting<Double> BENCH_SHARE = Setting.number("bench_share", 0.64, 0.2, 0.9);
    private static final Setting<List<Path>> RECENT =
            new Setting<>("recent", List.of(), Preferences::readPaths, Preferences::writePaths);
    private static final Setting<List<Path>> RECENT_LESSONS =
            new Setting<>("recent_lessons", List.of(), Preferences::readPaths, Preferences::writePaths);
    private static final Setting<List<Path>> LESSON_FOLDER =
            new Setting<>("lesson_folder", List.of(), Preferences::readPaths, Preferences::writePaths);
    private static final Setting<AnswerOrder> ANSWERS = Setting.choice("answers", AnswerOrder.AS_WRITTEN);
    private static final Setting<Shown> AUTHORING = Setting.choice("authoring", Shown.HIDDEN);
    private static final Setting<Optional<WindowPlace>> WINDOW = new Setting<>(
            "window",
            Optional.empty(),
            plain -> WindowPlace.read(plain).map(Optional::of),
            place -> place.map(WindowPlace::written).orElse(null));

    public Preferences {
        values = Collections.unmodifiableMap(new LinkedHashMap<>(values));
    }

    /** Everything as it is before anyone chose. */
    public static Preferences fresh() {
        return new Preferences(Map.of());
    }

    public LooksChoice looks() {
        return get(LOOKS);
    }

    public Preferences withLooks(LooksChoice looks) {
        return with(LOOKS, looks);
    }

    public Motion motion() {
        return get(MOTION);
    }

    public Preferences withMotion(Motion motion) {
        return with(MOTION, motion);
    }

    /** Whether the bench can be heard; a class-room is quiet until somebody wants it otherwise. */
    public Sound sound() {
        return get(SOUND);
    }

    public Preferences withSound(Sound sound) {
        return with(SOUND, sound);
    }

    /** Whether the circuit is shown as things on the bench or as a schematic. */
    public Drawing drawing() {
        return get(DRAWING);
    }

    public Preferences withDrawing(Drawing drawing) {
        return with(DRAWING, drawing);
    }

    /** Whether the column at the left is open. */
    public Shown examples() {
        return get(EXAMPLES);
    }

    public Preferences withExamples(Shown shown) {
        return with(EXAMPLES, shown);
    }

    /** Whether the column with the readings is wanted. */
    public Shown readings() {
        return get(READINGS);
    }

    public Preferences withReadings(Shown shown) {
        return with(READINGS, shown);
    }

    /** Whether the drawer with the curves of a run is open. */
    public Shown curves() {
        return get(CURVES);
    }

    public Preferences withCurves(Shown shown) {
        return with(CURVES, shown);
    }

    /** Language tag; empty for the system's language. */
    public String language() {
        return get(LANGUAGE);
    }

    public Preferences withLanguage(String tag) {
        return with(LANGUAGE, tag);
    }

    /** Size of text in percent, {@value #LEAST_TEXT} to {@value #LARGEST_TEXT}. */
    public int textPercent() {
        return get(TEXT).intValue();
    }

    public Preferences withTextPercent(int percent) {
        return with(TEXT, (double) Math.max(LEAST_TEXT, Math.min(LARGEST_TEXT, percent)));
    }

    /** Edition of the first-start notice that was read; 0 for none. */
    public int noticeRead() {
        return get(NOTICE).intValue();
    }

    public Preferences withNoticeRead(int edition) {
        return with(NOTICE, (double) edition);
    }

    /** Share of the height that the bench has over the staircase. */
    public double benchShare() {
        return get(BENCH_SHARE);
    }

    public Preferences withBenchShare(double share) {
        return with(BENCH_SHARE, share);
    }

    /** Files opened last, the latest first. */
    public List<Path> recent() {
        return get(RECENT);
    }

    public Preferences withRecent(List<Path> files) {
        return with(RECENT, files);
    }

    /** With this file as the latest. */
    public Preferences withOpened(Path file) {
        List<Path> newer = new ArrayList<>(recent());
        newer.remove(file);
        newer.add(0, file);
        return withRecent(newer.subList(0, Math.min(MOST_RECENT, newer.size())));
    }

    /** Folders of lessons opened last, the latest first. */
    public List<Path> recentLessons() {
        return get(RECENT_LESSONS);
    }

    public Preferences withRecentLessons(List<Path> folders) {
        return with(RECENT_LESSONS, folders);
    }

    /** The folder of lessons that is open beside those that come with the program. */
    public Optional<Path> lessonFolder() {
        return get(LESSON_FOLDER).stream().findFirst();
    }

    /** With this folder open, and the latest of those opened. */
    public Preferences withLessonFolder(Optional<Path> folder) {
        List<Path> newer = new ArrayList<>(recentLessons());
        folder.ifPresent(path -> {
            newer.remove(path);
            newer.add(0, path);
        });
        return withRecentLessons(newer.subList(0, Math.min(MOST_RECENT, newer.size())))
                .with(LESSON_FOLDER, folder.stream().toList());
    }

    /** In which order the answers of a lesson that begins will stand. */
    public AnswerOrder answers() {
        return get(ANSWERS);
    }

    public Preferences withAnswers(AnswerOrder order) {
        return with(ANSWERS, order);
    }

    /** Whether what is to be mended in lessons of one's own is shown beside them. */
    public Shown authoring() {
        return get(AUTHORING);
    }

    public Preferences withAuthoring(Shown shown) {
        return with(AUTHORING, shown);
    }

    /** Where the window was; empty before it was closed for the first time. */
    public Optional<WindowPlace> window() {
        return get(WINDOW);
    }

    public Preferences withWindow(WindowPlace place) {
        return with(WINDOW, Optional.of(place));
    }

    private <T> T get(Setting<T> setting) {
        return Optional.ofNullable(values.get(setting.key()))
                .flatMap(setting.read())
                .orElse(setting.usual());
    }

    private <T> Preferences with(Setting<T> setting, T value) {
        Map<String, Object> changed = new LinkedHashMap<>(values);
        changed.put(setting.key(), setting.write().apply(value));
        return new Preferences(changed);
    }

    private static Optional<List<Path>> readPaths(Object plain) {
        return plain instanceof List<?> list
                ? Optional.of(list.stream().flatMap(Preferences::readPath).toList())
                : Optional.empty();
    }

    private static Stream<Path> readPath(Object plain) {
        try {
            return Stream.of(Path.of(String.valueOf(plain)));
        } catch (InvalidPathException elsewhere) {
            return Stream.empty();
        }
    }

    private static Object writePaths(List<Path> files) {
        return files.stream().map(Path::toString).toList();
    }
}
