package org.sagwise.file;

import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A small JSON file of plain data in which a program keeps what it wants to know again at its next
 * start.
 */
public final class SettingsFile {

    private static final ObjectMapper JSON =
            new ObjectMapper().enable(SerializationFeature.INDENT_OUTPUT);
    private static final TypeReference<LinkedHashMap<String, Object>> PLAIN =
            new TypeReference<>() {};

    private final Path path;

    /**
     * @param path where it is; neither it nor its folder need exist
     */
    public SettingsFile(Path path) {
        this.path = path;
    }

    /**
     * What was kept; empty where there is nothing. A file that holds no settings is put aside under
     * another name, for whoever wants to know what happened to it.
     *
     * @throws IOException if there is a file that cannot be read or put aside
     */
    public Map<String, Object> load() throws IOException {
        try {
            Map<String, Object> kept = JSON.readValue(Files.readAllBytes(path), PLAIN);
            return kept == null ? Map.of() : kept;
        } catch (NoSuchFileException nothingYet) {
            return Map.of();
        } catch (JacksonException broken) {
            Files.move(
                    path,
                    path.resolveSibling(path.getFileName() + ".broken"),
                    StandardCopyOption.REPLACE_EXISTING);
            return Map.of();
        }
    }

    /**
     * Keeps this instead of what was kept before, whole or not at all.
     *
     * @param settings maps, lists, strings, numbers and booleans
     * @throws IOException if it cannot be written; what was kept before is still there
     */
    public void save(Map<String, Object> settings) throws IOException {
        Path target = AtomicFile.target(path);
        Files.createDirectories(AtomicFile.folder(target));
        AtomicFile.write(target, JSON.writeValueAsBytes(settings), AtomicFile.ON_DISK);
    }
}
