package org.sagwise.scenario.edit;

import java.util.HashSet;
import java.util.Set;
import org.sagwise.part.PartKind;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;

/** Makes ids that nothing on the bench has yet: cells get letters, the rest a word and a number. */
public final class FreshIds {

    private static final int LONGEST = 32;
    private static final int LETTERS = 26;

    private final Set<String> taken = new HashSet<>();

    public FreshIds(Scenario scenario) {
        scenario.parts().stream().map(Part::id).forEach(taken::add);
        scenario.links().stream().flatMap(link -> link.id().stream()).forEach(taken::add);
    }

    /** An id for a new part of this kind; it is taken from now on. */
    public String next(PartKind kind) {
        if (kind.descriptor().isLettered()) {
            for (int i = 0; i < LETTERS; i++) {
                String letter = String.valueOf((char) ('A' + i));
                if (taken.add(letter)) {
                    return letter;
                }
            }
        }
        return like(kind.idStem());
    }

    /** The wished id if it is free, else one that resembles it; it is taken from now on. */
    public String like(String wished) {
        if (taken.add(wished)) {
            return wished;
        }
        String stem = wished.replaceAll("-\\d+$", "");
        for (int number = 2; ; number++) {
            String end = "-" + number;
            String id = stem.substring(0, Math.min(stem.length(), LONGEST - end.length())) + end;
            if (taken.add(id)) {
                return id;
            }
        }
    }

    /** An id for a copy of a part: the next letter for a lettered cell. */
    public String copyOf(Part part) {
        boolean lettered = part.kind().descriptor().isLettered() && part.id().matches("[A-Z]");
        return lettered ? next(part.kind()) : like(part.id());
    }
}
