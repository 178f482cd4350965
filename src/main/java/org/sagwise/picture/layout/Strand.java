package org.sagwise.picture.layout;

import org.sagwise.scenario.Part;

/**
 * A part seen as a way between two joints. A board is two: its input and its output.
 *
 * @param part the part
 * @param entry terminal where the way begins; a source's negative end
 * @param exit terminal where it ends; a source's positive end
 * @param role what it is in the circuit
 */
record Strand(Part part, String entry, String exit, Role role) {

    /** What a part is in the circuit. */
    enum Role {
        SOURCE,
        LOAD,
        PATH
    }

    Strand reversed() {
        return new Strand(part, exit, entry, role);
    }

    /** 1 for a source that drives current along this way, -1 for one against it, else 0. */
    int drive() {
        if (role != Role.SOURCE) {
            return 0;
        }
        return exit.endsWith("+") ? 1 : -1;
    }
}
