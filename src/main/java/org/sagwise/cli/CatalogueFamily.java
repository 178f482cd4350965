package org.sagwise.cli;

import java.util.List;
import org.sagwise.part.Catalogue;
import org.sagwise.part.CatalogueEntry;
import org.sagwise.part.Entries;

/**
 * The entries of one kind.
 *
 * @param word its name on the command line and in JSON
 * @param entries in the order of the catalogue
 */
record CatalogueFamily(String word, List<CatalogueEntry> entries) {

    CatalogueFamily {
        entries = List.copyOf(entries);
    }

    /** The whole catalogue, what people ask for most first. */
    static List<CatalogueFamily> all(Catalogue catalogue) {
        return List.of(
                of("cells", catalogue.cells()),
                of("chemistries", catalogue.chemistries()),
                of("coils", catalogue.coils()),
                of("alloys", catalogue.alloys()),
                of("contacts", catalogue.contacts()),
                of("jumpers", catalogue.jumpers()),
                of("switches", catalogue.switches()),
                of("fuses", catalogue.fuses()),
                of("boards", catalogue.boards()),
                of("chargers", catalogue.chargers()));
    }

    private static CatalogueFamily of(String word, Entries<?> entries) {
        return new CatalogueFamily(word, List.copyOf(entries.all()));
    }

    /** The same family with those entries alone that have this id. */
    CatalogueFamily only(String id) {
        return new CatalogueFamily(
                word,
                entries.stream()
                        .filter(entry -> entry.id().equalsIgnoreCase(id))
                        .toList());
    }
}
