package org.sagwise.web.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.sagwise.file.LessonBundle;
import org.sagwise.file.LessonProgress;
import org.sagwise.file.LessonReader;
import org.sagwise.lesson.IdeasCheck;
import org.sagwise.lesson.Lesson;
import org.sagwise.lesson.LessonPlayer;
import org.sagwise.lesson.Recall;
import org.sagwise.lesson.RecallRound;

/**
 * How far a reader is in every lesson of a site, and the lessons themselves that were begun, so that their questions
 * can come back in another lesson's page. Nothing about the person; it stays in the browser.
 */
public final class LessonBook {

    private static final String PROGRESS = "sagwise.progress";
    private static final String LESSONS = "sagwise.lessons";
    private static final String LESSON = "sagwise.lesson.";

    private final Keeper keeper;
    private LessonProgress progress;

    public LessonBook(Keeper keeper) {
        this.keeper = keeper;
        progress = keeper.kept(PROGRESS).map(LessonProgress::read).orElse(LessonProgress.NONE);
    }

    public Optional<LessonProgress.Place> place(Lesson lesson) {
        return progress.place(lesson.id());
    }

    /** Answers to a form of the check of ideas; empty if it was not taken. */
    public List<Integer> check(IdeasCheck.Form form) {
        return progress.checks().getOrDefault(form.name(), List.of());
    }

    public void keep(IdeasCheck.Form form, List<Integer> answers) {
        write(progress.checking(form.name(), answers));
    }

    /** Keeps how far somebody is; nothing is written where that changes nothing. */
    public void keep(LessonPlayer player) {
        LessonProgress next = progress.with(player);
        if (!next.equals(progress)) {
            write(next);
        }
    }

    /** Keeps a lesson, for its questions. */
    public void keep(String id, String bundle) {
        List<String> ids = new ArrayList<>(ids());
        if (!ids.contains(id)) {
            ids.add(id);
            keeper.keep(LESSONS, String.join("\n", ids));
        }
        keeper.keep(LESSON + id, bundle);
    }

    private List<String> ids() {
        return keeper.kept(LESSONS).map(ids -> List.of(ids.split("\n"))).orElse(List.of());
    }

    /** Every lesson that was begun here, in the order in which that was done. */
    public List<Lesson> begun(LessonReader reader) {
        return ids().stream()
                .filter(id -> progress.place(id).isPresent())
                .flatMap(id -> keeper.kept(LESSON + id).stream())
                .flatMap(text -> LessonBundle.read(text).stream())
                .flatMap(source -> reader.read(source).lesson().stream())
                .toList();
    }

    /** The questions of earlier lessons that come back when this one begins. */
    List<Recall.Item> recalls(List<Lesson> begun, Lesson next) {
        return Recall.choose(begun, progress.given(), progress.recalled(), next);
    }

    /** Keeps what was answered to a question that came back. */
    void keep(RecallRound answered, List<Lesson> begun, Lesson next) {
        Map<String, Recall.Asked> noted =
                answered.noted(progress.recalled(), Recall.lessonsGone(begun, progress.given(), next));
        write(progress.recalling(noted));
    }

    private void write(LessonProgress next) {
        progress = next;
        keeper.keep(PROGRESS, next.text());
    }
}
