package org.sagwise.lesson;

import java.util.Optional;
import org.sagwise.text.LocalText;

/**
 * One answer to choose.
 *
 * @param text the answer
 * @param idea the mistaken idea behind a wrong answer; empty for the right one
 * @param reply what the learner is told who chose it
 */
public record Choice(LocalText text, Optional<Idea> idea, LocalText reply) {

    public boolean isRight() {
        return idea.isEmpty();
    }
}
