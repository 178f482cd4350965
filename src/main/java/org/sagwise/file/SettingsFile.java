package org.sagwise.file;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A small JSON file of plain data in which a program keeps what it wants to know again at its next
 * start. Written token by token: binding whole objects would cost a window a tenth of its start.
 */
public final class SettingsFile {

    private static final JsonFactory JSON = new JsonFactory();

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
        byte[] bytes;
        try {
            bytes = Files.readAllBytes(path);
        } catch (NoSuchFileException nothingYet) {
            return Map.of();
        }
        Optional<Map<String, Object>> kept = read(bytes);
        if (kept.isEmpty()) {
            Files.move(path, path.resolveSibling(path.getFileName() + ".broken"), StandardCopyOption.REPLACE_EXISTING);
        }
        return kept.orElse(Map.of());
    }

    /** The plain data of a file; empty if it holds no JSON object. */
    static Optional<Map<String, Object>> read(byte[] bytes) {
        return JsonDocument.read(new String(bytes, StandardCharsets.UTF_8))
                .group()
                .map(object -> object.plain(value -> value));
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
        AtomicFile.write(target, bytes(settings), AtomicFile.ON_DISK);
    }

    /** Plain data as a file for people to read. */
    static byte[] bytes(Map<String, Object> data) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (JsonGenerator json = JSON.createGenerator(bytes)) {
            write(json.useDefaultPrettyPrinter(), data);
        }
        return bytes.toByteArray();
    }

    private static void write(JsonGenerator json, Object value) throws IOException {
        if (value instanceof Map<?, ?> map) {
            json.writeStartObject();
            for (Map.Entry<?, ?> entry : map.entrySet()) {
                json.writeFieldName(String.valueOf(entry.getKey()));
                write(json, entry.getValue());
            }
            json.writeEndObject();
        } else if (value instanceof List<?> list) {
            json.writeStartArray();
            for (Object each : list) {
                write(json, each);
            }
            json.writeEndArray();
        } else if (value instanceof Number number) {
            json.writeNumber(number.toString());
        } else if (value instanceof Boolean flag) {
            json.writeBoolean(flag);
        } else if (value == null) {
            json.writeNull();
        } else {
            json.writeString(value.toString());
        }
    }
}
