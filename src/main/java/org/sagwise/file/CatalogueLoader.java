package org.sagwise.file;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.sagwise.part.Catalogue;
import org.sagwise.text.LocalText;

/** Reads the catalogue of parts. */
public final class CatalogueLoader {

    private static final String FOLDER = "/org/sagwise/catalogue/";

    private CatalogueLoader() {}

    /**
     * The catalogue that comes with the program. Each kind of part is read when somebody first asks
     * for one of it, and kept.
     *
     * @throws IllegalStateException when asked for a kind of part whose file was broken when the
     *     program was built
     */
    public static Catalogue builtIn() {
        return BuiltIn.CATALOGUE;
    }

    /** The same, read without a library, for a browser. */
    public static Catalogue bare() {
        return Bare.CATALOGUE;
    }

    /** The files of the catalogue that comes with the program. */
    public static CatalogueSource builtInSource() {
        return name -> Optional.ofNullable(CatalogueLoader.class.getResourceAsStream(FOLDER + name));
    }

    /** Reads a catalogue at once; when anything is wrong, everything that is wrong. */
    public static CatalogueReading read(CatalogueSource source) {
        CatalogueFiles files = new CatalogueFiles(source, JsonDocument::read);
        Map<String, LocalText> texts = files.texts(CatalogueSections.SOURCES);
        Catalogue catalogue = new CatalogueSections.AtOnce(files).catalogue(new CatalogueCards(() -> texts));
        return new CatalogueReading(
                files.defects().isEmpty() ? Optional.of(catalogue) : Optional.empty(), files.defects());
    }

    /**
     * Throws when anything is wrong with files that the program brings along.
     *
     * @throws IllegalStateException naming every defect
     */
    static void insistOn(CatalogueFiles files) {
        if (!files.defects().isEmpty()) {
            throw new IllegalStateException(files.defects().stream()
                    .map(defect -> defect.describe(Locale.ENGLISH))
                    .collect(Collectors.joining("\n")));
        }
    }

    /** Holds the built-in catalogue. */
    private static final class BuiltIn {
        private static final Catalogue CATALOGUE = new CatalogueSections.WhenAsked(builtInSource(), JsonDocument::read)
                .catalogue(new CatalogueCards(() -> Texts.BY_KEY));
    }

    /** Holds the built-in catalogue as a browser reads it, and the texts of its sources. */
    private static final class Bare {
        private static final Map<String, LocalText> TEXTS = texts(PlainJson::read);
        private static final Catalogue CATALOGUE = new CatalogueSections.WhenAsked(builtInSource(), PlainJson::read)
                .catalogue(new CatalogueCards(() -> TEXTS));
    }

    /** Holds the texts of the built-in sources, which several kinds of part cite. */
    private static final class Texts {
        private static final Map<String, LocalText> BY_KEY = texts(JsonDocument::read);
    }

    private static Map<String, LocalText> texts(JsonText json) {
        CatalogueFiles files = new CatalogueFiles(builtInSource(), json);
        Map<String, LocalText> texts = files.texts(CatalogueSections.SOURCES);
        insistOn(files);
        return texts;
    }
}
