package org.sagwise.scenario;

import java.util.Set;

/** The names of catalogue entries that a scenario may use. */
public interface KnownNames {

    /** Ids of the models of one kind of part. */
    Set<String> models(PartKind kind);

    /** Ids of the resistance-wire alloys. */
    Set<String> alloys();
}
