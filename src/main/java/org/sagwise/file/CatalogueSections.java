package org.sagwise.file;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.sagwise.part.Alloy;
import org.sagwise.part.Catalogue;
import org.sagwise.part.CatalogueEntry;
import org.sagwise.part.Entries;

/** Which file holds which kind of part, and how each is read. */
abstract class CatalogueSections {

    /** The sources that the files cite. */
    static final String SOURCES = "sources.json";

    /** The entries in this file, each read by {@code reader}. */
    abstract <T extends CatalogueEntry> Entries<T> section(String file, Function<CatalogueFields, Optional<T>> reader);

    Catalogue catalogue(CatalogueCards cards) {
        CatalogueMaterials materials = new CatalogueMaterials(cards);
        Entries<Alloy> alloys = section("alloys.json", materials::alloy);
        CatalogueModels models = new CatalogueModels(cards, alloys::ids);
        return new Catalogue(
                section("chemistries.json", materials::chemistry),
                alloys,
                section("contacts.json", materials::contact),
                section("jumpers.json", materials::jumper),
                kind -> section(kind.descriptor().family().orElseThrow().file(), fields -> models.model(kind, fields)));
    }

    /** Reads every file at once, so that every defect is found. */
    static final class AtOnce extends CatalogueSections {
        private final CatalogueFiles files;

        AtOnce(CatalogueFiles files) {
            this.files = files;
        }

        @Override
        <T extends CatalogueEntry> Entries<T> section(String file, Function<CatalogueFields, Optional<T>> reader) {
            return Entries.of(files.entries(file, reader));
        }
    }

    /** Reads a file when somebody asks for one of its entries; a defect is a programming error. */
    static final class WhenAsked extends CatalogueSections {
        private final CatalogueSource source;
        private final JsonText json;

        WhenAsked(CatalogueSource source, JsonText json) {
            this.source = source;
            this.json = json;
        }

        @Override
        <T extends CatalogueEntry> Entries<T> section(String file, Function<CatalogueFields, Optional<T>> reader) {
            return Entries.whenAsked(() -> {
                CatalogueFiles files = new CatalogueFiles(source, json);
                List<T> entries = files.entries(file, reader);
                CatalogueLoader.insistOn(files);
                return entries;
            });
        }
    }
}
