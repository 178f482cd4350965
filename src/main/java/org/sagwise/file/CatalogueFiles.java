package org.sagwise.file;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import java.io.IOException;
import java.io.InputStream;
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
    private final List<CatalogueDefect> defects = new ArrayList<>();

    CatalogueFiles(CatalogueSource source) {
        this.source = source;
    }

    List<CatalogueDefect> defects() {
        return defects;
    }

    /** The texts of the sources by their keys: a file with one object. */
    Map<String, LocalText> texts(String file) {
        Map<String, LocalText> texts = new LinkedHashMap<>();
        Object value = read(file);
        if (value == null) {
            return texts;
        }
        Optional<Map<String, Object>> object = CatalogueFields.asObject(value);
        if (object.isEmpty()) {
            note(file, "", Problem.NOT_AN_OBJECT);
            return texts;
        }
        CatalogueFields fields = new CatalogueFields(file, "", object.get(), defects);
        for (String key : fields.keys()) {
            texts.put(key, fields.localText(key));
        }
        return texts;
    }

    /** The entries of one kind: a file with a list of objects. */
    <T extends CatalogueEntry> List<T> entries(String file, Function<CatalogueFields, Optional<T>> reader) {
        Map<String, T> byId = new LinkedHashMap<>();
        Object value = read(file);
        if (value instanceof List<?> list) {
            for (int i = 0; i < list.size(); i++) {
                entry(file, "[" + i + "]", list.get(i), reader, byId);
            }
        } else if (value != null) {
            note(file, "", Problem.NOT_A_LIST);
        }
        return List.copyOf(byId.values());
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

    /** The value in the file, null when it could not be read. */
    private Object read(String file) {
        try {
            Optional<InputStream> stream = source.open(file);
            if (stream.isPresent()) {
                return CatalogueJson.read(stream.get());
            }
            note(file, "", Problem.NOT_FOUND);
        } catch (JsonProcessingException broken) {
            JsonLocation at = broken.getLocation();
            String place = at == null ? "" : at.getLineNr() + ":" + at.getColumnNr();
            note(file, place, Problem.NOT_JSON, "", broken.getOriginalMessage());
        } catch (IOException unreadable) {
            note(file, "", Problem.NOT_READABLE, "", String.valueOf(unreadable.getMessage()));
        }
        return null;
    }

    private void note(String file, String place, Problem problem, String... details) {
        List<String> all = details.length == 0 ? List.of("") : List.of(details);
        defects.add(new CatalogueDefect(file, place, problem, all));
    }
}
