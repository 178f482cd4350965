package org.sagwise.file;

import java.nio.file.Path;
import org.sagwise.scenario.Finding;

/** What came of saving. */
public sealed interface Saved {

    /**
     * The file is there, whole, and on the disk.
     *
     * @param file where it was written: the target where a symbolic link was named
     */
    record Done(Path file) implements Saved {}

    /**
     * Nothing was saved; what was there before is still there, whole.
     *
     * @param problem why, in words by {@link Finding#text}
     */
    record Failed(Finding problem) implements Saved {}
}
