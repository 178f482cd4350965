package org.sagwise.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.sagwise.part.Catalogue;
import org.sagwise.part.CatalogueEntry;
import org.sagwise.part.Entries;
import org.sagwise.part.PartKind;

/**
 * The entries of one kind.
 *
 * @param word its name on the command line and in JSON
 * @param key of its heading, in the bundles
 * @param entries in the order of the catalogue
 */
record CatalogueFamily(String word, String key, List<CatalogueEntry> entries) {

    CatalogueFamily {
        entries = List.copyOf(entries);
    }

    /** The whole catalogue, what people ask for most first. */
    static List<CatalogueFamily> all(Catalogue catalogue) {
        List<CatalogueFamily> families = new ArrayList<>();
        families.add(of(catalogue, PartKind.CELL));
        families.add(of("chemistries", catalogue.chemistries()));
        families.add(of(catalogue, PartKind.COIL));
        families.add(of("alloys", catalogue.alloys()));
        families.add(of("contacts", catalogue.contacts()));
        families.add(of("jumpers", catalogue.jumpers()));
        Stream.of(PartKind.values())
                .filter(kind -> kind.descriptor().family().isPresent())
                .filter(kind -> kind != PartKind.CELL && kind != PartKind.COIL)
                .forEach(kind -> families.add(of(catalogue, kind)));
        return families;
    }

    private static CatalogueFamily of(Catalogue catalogue, PartKind kind) {
        String word = kind.descriptor().family().orElseThrow().word();
        return new CatalogueFamily(
                word,
                "family." + kind.word(),
                List.copyOf(catalogue.models(kind).all()));
    }

    private static CatalogueFamily of(String word, Entries<?> entries) {
        return new CatalogueFamily(word, "family." + word, List.copyOf(entries.all()));
    }

    /** The same family with those entries alone that have this id. */
    CatalogueFamily only(String id) {
        return new CatalogueFamily(
                word,
                key,
                entries.stream()
                        .filter(entry -> entry.id().equalsIgnoreCase(id))
                        .toList());
    }
}
