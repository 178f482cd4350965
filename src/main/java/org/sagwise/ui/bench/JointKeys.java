package org.sagwise.ui.bench;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.sagwise.interaction.Selection;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.TerminalRef;
import org.sagwise.ui.workbench.Workbench;

/** Chooses joints by keys: they are thin and have no node that could take the focus. */
record JointKeys(TouchLayer touch, Workbench work) {

    /** Chooses the first joint at the part or terminal in focus; again, the next one. */
    void choose() {
        List<Integer> here = IntStream.range(0, links().size())
                .filter(place -> meets(links().get(place)))
                .boxed()
                .toList();
        if (!here.isEmpty()) {
            Optional<Integer> now = work.hands().chosen().links().stream().findFirst();
            int next = here.indexOf(now.orElse(-1)) + 1;
            work.hands().choose(Selection.link(here.get(next % here.size())));
        }
    }

    /** Whether a joint is chosen at the part in focus. */
    boolean isChosen() {
        return work.hands().chosen().links().stream()
                .filter(place -> place < links().size())
                .map(links()::get)
                .anyMatch(link -> touch.focusedPart().filter(link::touches).isPresent());
    }

    private boolean meets(Link link) {
        Optional<TerminalRef> end = touch.focused().flatMap(TouchNode::terminal);
        return end.isPresent()
                ? end.filter(it -> link.from().equals(it) || link.to().equals(it))
                        .isPresent()
                : touch.focusedPart().filter(link::touches).isPresent();
    }

    private List<Link> links() {
        return work.bench().scenario().links();
    }
}
