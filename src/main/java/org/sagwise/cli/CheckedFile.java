package org.sagwise.cli;

import org.sagwise.caution.Caution;

import java.util.List;

/**
 * A file with its cautions.
 *
 * @param given what the file held
 * @param cautions gravest first; empty if it could not be read
 */
record CheckedFile(GivenScenario given, List<Caution> cautions) {

    CheckedFile {
        cautions = List.copyOf(cautions);
    }
}
