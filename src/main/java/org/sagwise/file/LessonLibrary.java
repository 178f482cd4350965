package org.sagwise.file;

import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Optional;

/**
 * The lessons that come with the program: seven evenings in the order in which they are taught. The numbers in their
 * names only tell one from another.
 */
public final class LessonLibrary {

    private static final String FOLDER = "/org/sagwise/lessons/";

    private static final List<String> IDS = List.of(
            "00-hands-on",
            "01-close-the-ring",
            "02-same-amps-all-round",
            "03-coil-sets-the-amps",
            "04-side-by-side",
            "05-end-to-end",
            "06-same-watts",
            "07-how-long-it-lasts",
            "08-the-cell-sags",
            "09-where-the-volts-went",
            "10-each-cell-is-asked",
            "18-numbers-on-a-cell",
            "11-burst-or-steady",
            "12-unequal-partners",
            "13-smallest-empties-first",
            "14-wrong-way-round",
            "21-slow-and-fast-charging",
            "15-shorts-and-guards",
            "17-the-meter-joins-in",
            "22-wire-joints-fuses",
            "19-inside-a-cell",
            "20-boards-that-regulate",
            "16-explain-a-mistake");

    private LessonLibrary() {}

    /** The names of all lessons. */
    public static List<String> ids() {
        return IDS;
    }

    /**
     * The files of one lesson.
     *
     * @throws IllegalArgumentException if there is no such lesson
     */
    public static LessonSource source(String id) {
        if (!IDS.contains(id)) {
            throw new IllegalArgumentException("no lesson is called " + id);
        }
        return new LessonSource() {
            @Override
            public String id() {
                return id;
            }

            @Override
            public Optional<byte[]> file(String name) throws IOException {
                String path = FOLDER + id + "/" + name;
                try (InputStream file = LessonLibrary.class.getResourceAsStream(path)) {
                    return file == null ? Optional.empty() : Optional.of(file.readAllBytes());
                }
            }
        };
    }
}
