package org.sagwise.web.page;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.sagwise.assessment.Assessment;
import org.sagwise.lesson.Step;
import org.sagwise.picture.layout.Drawing;
import org.sagwise.picture.look.Theme;
import org.sagwise.picture.scene.Emphasis;
import org.sagwise.web.engine.Facts;
import org.sagwise.web.engine.LiveBench;
import org.sagwise.web.engine.Words;
import org.sagwise.web.lesson.LessonRun;

/**
 * What the page shows now.
 *
 * @param bench the bench
 * @param words the language
 * @param theme the looks that the system asks for
 * @param drawing things or symbols
 * @param chosen the part or joint whose card is open
 * @param lesson the lesson that is played on it; empty on a page of a bench alone
 */
record View(LiveBench bench, Words words, Theme theme, Drawing drawing, Choice chosen, Optional<LessonRun> lesson) {

    /**
     * What is chosen.
     *
     * @param part id of a part; empty for none
     * @param link place of a joint; −1 for none
     */
    record Choice(String part, int link) {
        static final Choice NOTHING = new Choice("", -1);

        static Choice of(String part) {
            return new Choice(part, -1);
        }
    }

    /** What can be read; only what lies there while a lesson asks what will come out. */
    Assessment now() {
        return isAsking() ? bench.shown().veiled() : bench.shown();
    }

    boolean isAsking() {
        return lesson.filter(LessonRun::isAsking).isPresent();
    }

    Locale locale() {
        return words.locale();
    }

    Facts facts() {
        return new Facts(now(), words);
    }

    Emphasis emphasis() {
        Set<String> parts = chosen.part().isEmpty() ? Set.of() : Set.of(chosen.part());
        Set<Integer> links = chosen.link() < 0 ? Set.of() : Set.of(chosen.link());
        Optional<Step.Head> step = lesson.filter(run -> !run.isOver() && chosen.equals(Choice.NOTHING))
                .map(run -> run.player().step().head());
        return new Emphasis(
                parts,
                step.map(it -> Set.copyOf(it.partsOn(bench.scenario()))).orElse(Set.of()),
                step.map(it -> it.linksOn(bench.scenario())).orElse(links),
                Set.of());
    }
}
