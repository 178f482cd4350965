package org.sagwise.scenario;

import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
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
        return kind.descriptor().takesModel() ? catalogue.models(kind).ids() : Set.of();
    }

    /** The kind of part that has a model of this id; empty if none has. */
    Optional<PartKind> kindOf(String model) {
        return Stream.of(PartKind.values())
                .filter(kind -> catalogue.models(kind).ids().contains(model))
                .findFirst();
    }

    /** Ids of the resistance-wire alloys. */
    Set<String> alloys() {
        return catalogue.alloys().ids();
    }
}
