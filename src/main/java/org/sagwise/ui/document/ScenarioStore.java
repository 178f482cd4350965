package org.sagwise.ui.document;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.sagwise.scenario.Scenario;

/** Where scenarios come from and go to. */
public interface ScenarioStore {

    /** Reads a scenario, or says everything that is wrong with it. */
    Outcome read(Path file);

    /** Reads a scenario from a text: share text with whatever stands around it, or a whole file. */
    Outcome readText(String text);

    /**
     * Writes a scenario, whole or not at all.
     *
     * @return what went wrong, in words; empty if it is written
     */
    Optional<String> write(Path file, Scenario scenario);

    /**
     * Keeps what a file holds in a new file beside it.
     *
     * @return the new file; empty if it could not be made
     */
    Optional<Path> keepCopy(Path file);

    /** What came of reading a file. */
    sealed interface Outcome {}

    /** The file holds this scenario. */
    record Read(Scenario scenario) implements Outcome {}

    /**
     * The file holds no scenario that can be shown.
     *
     * @param troubles everything that is wrong with it, at least one
     */
    record Refused(List<Trouble> troubles) implements Outcome {

        public Refused {
            troubles = List.copyOf(troubles);
        }
    }

    /**
     * One thing that is wrong.
     *
     * @param place where in the file; empty for the whole of it
     * @param text what is wrong and what would be right
     */
    record Trouble(String place, String text) {}
}
