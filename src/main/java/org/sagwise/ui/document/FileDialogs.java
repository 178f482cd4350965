package org.sagwise.ui.document;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** What a person is asked about files. */
public interface FileDialogs {

    /** Asks for a file to open, beginning in a folder; empty if the person thought better. */
    Optional<Path> chooseToOpen(Optional<Path> folder);

    /**
     * Asks where to save; empty if the person thought better.
     *
     * @param title of what is saved, of which a name is suggested
     */
    Optional<Path> chooseToSave(Optional<Path> folder, String title);

    /** Asks whether a file that is there may be replaced. */
    boolean mayReplace(Path file);

    /** Asks what to do with unsaved changes. */
    Unsaved askAboutUnsaved(String title);

    /** Shows everything that is wrong with a file. */
    NextStep showTroubles(Path file, List<ScenarioStore.Trouble> troubles);

    /** Shows everything that is wrong with a text that was pasted. */
    void showTextTroubles(List<ScenarioStore.Trouble> troubles);

    /** Asks what to do about a file that another program has written since it was opened. */
    Overwrite askAboutChanged(Path file);

    /** Says why a file was not written. */
    void showNotWritten(Path file, String why);

    /** Says that a file was not written because what it holds could not be kept. */
    void showNoCopy(Path file);

    /** What to do before a file is written that holds somebody else's work. */
    enum Overwrite {
        /** What it holds is kept in a copy beside it, then it is written. */
        KEEP_COPY,
        SAVE_ELSEWHERE,
        STAY
    }

    /** What to do with unsaved changes. */
    enum Unsaved {
        SAVE,
        DISCARD,
        STAY
    }

    /** What to do about a broken file. */
    enum NextStep {
        READ_AGAIN,
        LEAVE_IT
    }
}
