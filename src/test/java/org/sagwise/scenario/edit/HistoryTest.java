package org.sagwise.scenario.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.sagwise.scenario.Scenario;

class HistoryTest {

    private static final Scenario FIRST = Scenario.empty().withTitle("first");
    private static final Scenario SECOND = FIRST.withTitle("second");

    @Test
    void edited_once_canBeUndoneByName() {
        History history = History.of(FIRST).edited("rename", SECOND);

        assertEquals(SECOND, history.present());
        assertEquals(Optional.of("rename"), history.undoable());
        assertEquals(FIRST, history.undone().present());
        assertEquals(Optional.of("rename"), history.undone().redoable());
    }

    @Test
    void edited_withoutChange_leavesNoTrace() {
        History history = History.of(FIRST);

        assertSame(history, history.edited("rename", FIRST.withTitle("first")));
    }

    @Test
    void edited_afterUndo_forgetsWhatWasUndone() {
        History history = History.of(FIRST).edited("rename", SECOND).undone().edited("again", SECOND);

        assertEquals(Optional.empty(), history.redoable());
        assertEquals(Optional.of("again"), history.undoable());
    }

    @Test
    void isSaved_backAtWhatWasSaved_isTrueWhicheverWay() {
        History saved = History.of(FIRST).edited("rename", SECOND).saved();

        assertTrue(saved.isSaved());
        assertFalse(saved.undone().isSaved());
        assertTrue(saved.undone().redone().isSaved());
        assertTrue(saved.undone().edited("by hand", SECOND).isSaved());
    }

    @Test
    void isSaved_savedThenUndoneThenEdited_isFalse() {
        History history = History.of(FIRST).edited("rename", SECOND).saved();

        assertFalse(history.undone().edited("other", FIRST.withTitle("third")).isSaved());
    }

    /** Whatever is done, everything can be undone one by one and made again one by one. */
    @Property
    void history_anyEdits_undoneAndRedoneAllTheWay(@ForAll List<String> titles) {
        History history = History.of(FIRST);
        for (String title : titles) {
            history = history.edited(title, history.present().withTitle(title));
        }
        History back = history;
        while (back.undoable().isPresent()) {
            back = back.undone();
        }
        assertEquals(FIRST, back.present());
        while (back.redoable().isPresent()) {
            back = back.redone();
        }
        assertEquals(history, back);
    }

    @Test
    void ofUnsaved_aDocumentFromElsewhere_isUnsavedUntilItIsSaved() {
        History received = History.ofUnsaved(Scenario.empty());

        assertFalse(received.isSaved());
        assertTrue(received.saved().isSaved());
    }
}
