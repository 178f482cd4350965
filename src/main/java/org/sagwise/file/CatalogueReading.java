package org.sagwise.file;

import java.util.List;
import java.util.Optional;
import org.sagwise.part.Catalogue;

/**
 * What came of reading a catalogue: the catalogue, or else every defect that was found.
 *
 * @param catalogue the catalogue, empty when there are defects
 * @param defects all defects, in the order of the files
 */
public record CatalogueReading(Optional<Catalogue> catalogue, List<CatalogueDefect> defects) {

    public CatalogueReading {
        defects = List.copyOf(defects);
    }
}
