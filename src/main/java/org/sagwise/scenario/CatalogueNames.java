package org.sagwise.scenario;

import java.util.Set;
import org.sagwise.part.Catalogue;
import org.sagwise.part.PartKind;

/**
 * The names of catalogue entries that a scenario may use.
 *
 * @param catalogue where they are looked up
 */
record CatalogueNames(Catalogue catalogue) {

    /** Ids of the models of one kind of part; none for kinds that have no models. */
    Set<String> models(PartKind kind) {
        return kind.descriptor().isModelled() ? catalogue.models(kind).ids() : Set.of();
    }

    /** Ids of the resistance-wire alloys. */
    Set<String> alloys() {
        return catalogue.alloys().ids();
    }
}
