package org.sagwise.file;

import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;

/** Where the files of a catalogue come from. */
@FunctionalInterface
public interface CatalogueSource {

    /** The file of this name, empty where there is none. The caller closes it. */
    Optional<InputStream> open(String fileName) throws IOException;
}
