package org.sagwise.ui.desk;

import java.util.List;
import org.sagwise.part.PartKind;
import org.sagwise.picture.geometry.Point;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.edit.Edit;
import org.sagwise.ui.workbench.Workbench;

/**
 * How cells come from the drawer to the bench.
 *
 * @param work the bench
 * @param front brings its window to the front
 */
record DrawerLaying(Workbench work, Runnable front) {

    /** Takes a cell in the hand, to be put down wherever the person likes. */
    void inHand(Part cell) {
        Point middle = work.ground().middle();
        front.run();
        work.ground().takeFocus();
        work.hands().take(cell, middle.x(), middle.y());
    }

    /** The cells of the bench that so many others could take the place of: those chosen, or all there are. */
    List<String> places(int cells) {
        List<String> all = work.bench().scenario().partsOf(PartKind.CELL).stream()
                .map(Part::id)
                .toList();
        List<String> chosen =
                all.stream().filter(work.hands().chosen().parts()::contains).toList();
        if (chosen.size() == cells) {
            return chosen;
        }
        return all.size() == cells ? all : List.of();
    }

    /** Makes an edit of the bench; what is against it, in sentences. */
    List<String> perform(Edit edit) {
        return work.tryOut(edit);
    }
}
