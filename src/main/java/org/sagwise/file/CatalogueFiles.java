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
import org.sagwise.scenario.Fault;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.Places;
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
            if (root(document) instanceof Node.Group object) {
                CatalogueFields fields = new CatalogueFields(file, "", object.keys(), defects);
                fields.keys().forEach(key -> texts.put(key, fields.localText(key)));
            } else {
                noObject(file, "", root(document));
            }
            locate(file, document);
        });
        return texts;
    }

    /** The entries of one kind: a file with a list of objects. */
    <T extends CatalogueEntry> List<T> entries(String file, Function<CatalogueFields, Optional<T>> reader) {
        Map<String, T> byId = new LinkedHashMap<>();
        read(file).ifPresent(document -> {
            if (root(document) instanceof Node.Items list) {
                for (int i = 0; i < list.items().size(); i++) {
                    entry(file, Places.item("", i), list.items().get(i), reader, byId);
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
            String file, String place, Node value, Function<CatalogueFields, Optional<T>> reader, Map<String, T> byId) {
        if (!(value instanceof Node.Group object)) {
            noObject(file, place, value);
            return;
        }
        Optional<T> entry = reader.apply(new CatalogueFields(file, place, object.keys(), defects));
        if (entry.isPresent() && byId.putIfAbsent(entry.get().id(), entry.get()) != null) {
            note(file, Places.key(place, "id"), Problem.TWICE, entry.get().id());
        }
    }

    private void noObject(String file, String place, Node value) {
        note(file, place, org.sagwise.scenario.Problem.NOT_AN_OBJECT, Places.typeOf(value.sample()));
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
            note(file, "", Problem.NOT_READABLE, String.valueOf(unreadable.getMessage()));
            return Optional.empty();
        }
    }

    private static Node root(Document document) {
        return document.root().orElseThrow();
    }

    private void note(String file, String place, Fault problem, String... details) {
        defects.add(new CatalogueDefect(file, Finding.of(place, problem, details)));
    }
}
