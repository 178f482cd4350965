package org.sagwise.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.sagwise.file.CatalogueDefect.Problem;
import org.sagwise.part.CatalogueEntry;
import org.sagwise.text.LocalText;

/** Opens the files of a catalogue and collects what is wrong with them. */
final class CatalogueFiles {

    private final CatalogueSource source;
    private final JsonText json;
    private final List<CatalogueDefect> defects = new ArrayList<>();

    CatalogueFiles(CatalogueSource source, JsonText json) {
        this.source = source;
        this.json = json;
    }

    List<CatalogueDefect> defects() {
        return defects;
    }

    /** The texts of the sources by their keys: a file with one object. */
    Map<String, LocalText> texts(String file) {
        Map<String, LocalText> texts = new LinkedHashMap<>();
        read(file).ifPresent(document -> {
            if (plain(document) instanceof Map<?, ?> object) {
                CatalogueFields fields = new CatalogueFields(
                        file, "", CatalogueFields.asObject(object).orElseThrow(), defects);
                fields.keys().forEach(key -> texts.put(key, fields.localText(key)));
            } else {
                note(file, "", Problem.NOT_AN_OBJECT);
            }
            locate(file, document);
        });
        return texts;
    }

    /** The entries of one kind: a file with a list of objects. */
    <T extends CatalogueEntry> List<T> entries(String file, Function<CatalogueFields, Optional<T>> reader) {
        Map<String, T> byId = new LinkedHashMap<>();
        read(file).ifPresent(document -> {
            if (plain(document) instanceof List<?> list) {
                for (int i = 0; i < list.size(); i++) {
                    entry(file, "[" + i + "]", list.get(i), reader, byId);
                }
            } else {
                note(file, "", Problem.NOT_A_LIST);
            }
            locate(file, document);
        });
        return List.copyOf(byId.values());
    }

    /** Finds the lines and columns of what is wrong with a file. */
    private void locate(String file, Document document) {
        defects.replaceAll(defect ->
                defect.file().equals(file) ? new CatalogueDefect(file, document.locate(defect.finding())) : defect);
    }

    private <T extends CatalogueEntry> void entry(
            String file,
            String place,
            Object value,
            Function<CatalogueFields, Optional<T>> reader,
            Map<String, T> byId) {
        Optional<Map<String, Object>> object = CatalogueFields.asObject(value);
        if (object.isEmpty()) {
            note(file, place, Problem.NOT_AN_OBJECT);
            return;
        }
        Optional<T> entry = reader.apply(new CatalogueFields(file, place, object.get(), defects));
        if (entry.isPresent() && byId.putIfAbsent(entry.get().id(), entry.get()) != null) {
            note(file, place + ".id", Problem.TWICE, "id", entry.get().id());
        }
    }

    /** What the file holds; empty when it could not be read. */
    private Optional<Document> read(String file) {
        try (InputStream stream = source.open(file).orElse(null)) {
            if (stream == null) {
                note(file, "", Problem.NOT_FOUND);
                return Optional.empty();
            }
            Document document = json.read(new String(stream.readAllBytes(), StandardCharsets.UTF_8));
            document.findings().forEach(found -> defects.add(new CatalogueDefect(file, found)));
            return Optional.of(document).filter(it -> it.findings().isEmpty());
        } catch (IOException unreadable) {
            note(file, "", Problem.NOT_READABLE, "", String.valueOf(unreadable.getMessage()));
            return Optional.empty();
        }
    }

    private static Object plain(Document document) {
        Node root = document.root().orElseThrow();
        return root.plain(value -> value instanceof Number number ? (Object) number.doubleValue() : value);
    }

    private void note(String file, String place, Problem problem, String... details) {
        List<String> all = details.length == 0 ? List.of("") : List.of(details);
        defects.add(new CatalogueDefect(file, place, problem, all));
    }
}
