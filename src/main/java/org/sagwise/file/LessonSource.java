package org.sagwise.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Where the files of one lesson come from. */
public interface LessonSource {

    /** Name of the lesson: that of its folder. */
    String id();

    /**
     * The bytes of one of its files; empty if there is no such file.
     *
     * @param name a plain name without any folder
     * @throws IOException if it is there and cannot be read
     */
    Optional<byte[]> file(String name) throws IOException;

    /** Whether a file lies in a folder also where symbolic links lead: a lesson shows nothing from elsewhere. */
    private static boolean isWithin(Path file, Path folder) throws IOException {
        return file.toRealPath().startsWith(folder.toRealPath());
    }

    /** A lesson in a folder on disk. */
    static LessonSource ofFolder(Path folder) {
        return new LessonSource() {
            @Override
            public String id() {
                return String.valueOf(folder.toAbsolutePath().normalize().getFileName());
            }

            @Override
            public Optional<byte[]> file(String name) throws IOException {
                Path file = folder.resolve(name);
                if (!Files.isRegularFile(file) || !isWithin(file, folder)) {
                    return Optional.empty();
                }
                try (InputStream stream = Files.newInputStream(file)) {
                    return Optional.of(stream.readNBytes(SourceText.MOST_BYTES + 1));
                }
            }
        };
    }
}
