package org.sagwise.cli;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;

/**
 * What a call wants to see in the window.
 *
 * @param file the scenario to show; empty for the opening page
 * @param demo the name of the demo to show instead; empty for none
 * @param words a line of words to build instead; empty for none
 * @param language language and decimal mark that the call asked for, for this once; empty for the
 *     one the window was last set to
 */
public record WindowRequest(
        Optional<Path> file, Optional<String> demo, Optional<String> words, Optional<Locale> language) {}
