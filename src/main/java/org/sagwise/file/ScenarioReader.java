package org.sagwise.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.sagwise.part.Catalogue;
import org.sagwise.scenario.Draft;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.Problem;
import org.sagwise.scenario.ScenarioRules;

/**
 * Opens scenario files, format 1. Whatever the bytes hold, the answer is a scenario or a list of
 * everything that is wrong; nothing in a file is run, and no other file is opened.
 */
public final class ScenarioReader {

    private final ScenarioRules rules;
    private final JsonText json;

    /**
     * @param catalogue where models and alloys are looked up
     */
    public ScenarioReader(Catalogue catalogue) {
        this(catalogue, JsonDocument::read);
    }

    private ScenarioReader(Catalogue catalogue, JsonText json) {
        this.rules = new ScenarioRules(catalogue);
        this.json = json;
    }

    /** A reader that needs no library, for a browser; it has fewer words for what is broken. */
    public static ScenarioReader bare(Catalogue catalogue) {
        return new ScenarioReader(catalogue, PlainJson::read);
    }

    /** Opens a file. */
    public Loaded read(Path path) {
        if (Files.isDirectory(path)) {
            return refused(Problem.FILE_IS_FOLDER, path.toString());
        }
        try (InputStream stream = Files.newInputStream(path)) {
            return read(stream);
        } catch (NoSuchFileException e) {
            return refused(Problem.FILE_MISSING, path.toString());
        } catch (AccessDeniedException e) {
            return refused(Problem.FILE_UNREADABLE, path.toString(), "access denied");
        } catch (IOException e) {
            return refused(Problem.FILE_UNREADABLE, path.toString(), String.valueOf(e.getMessage()));
        }
    }

    /**
     * Opens what a stream holds; reads it to its end or to the size limit, and leaves it open.
     *
     * @throws IOException if the stream cannot be read
     */
    public Loaded read(InputStream stream) throws IOException {
        return read(SourceText.read(stream));
    }

    /** Opens the bytes of a file. */
    public Loaded read(byte[] bytes) {
        return read(SourceText.of(bytes));
    }

    private Loaded read(SourceText source) {
        return source.problem()
                .<Loaded>map(problem -> new Loaded.Refused(List.of(problem)))
                .orElseGet(() -> read(source.text()));
    }

    private Loaded read(String text) {
        Document document = json.read(text).ofObject();
        return document.group()
                .map(file -> read(file, document))
                .orElseGet(() -> new Loaded.Refused(document.findings()));
    }

    private Loaded read(Node.Group file, Document document) {
        List<Finding> found = new ArrayList<>(document.findings());
        Optional<Finding> format = FormatNumber.check(file);
        format.ifPresent(found::add);
        Optional<Draft> draft = Optional.empty();
        if (FormatNumber.isWorthReading(file, format)) {
            DraftReader reader = new DraftReader(file);
            draft = Optional.of(reader.read(rules));
            found.addAll(reader.findings());
        }
        if (draft.isPresent() && found.isEmpty()) {
            return new Loaded.Ok(rules.scenario(draft.get()));
        }
        return new Loaded.Refused(cut(found.stream().map(document::locate).toList()));
    }

    private static List<Finding> cut(List<Finding> found) {
        if (found.size() <= ScenarioRules.MOST_FINDINGS) {
            return found;
        }
        List<Finding> first = found.stream()
                .filter(f -> f.problem() != Problem.TOO_MANY_PROBLEMS)
                .sorted(Finding.READING_ORDER)
                .limit(ScenarioRules.MOST_FINDINGS)
                .collect(Collectors.toCollection(ArrayList::new));
        String most = String.valueOf(ScenarioRules.MOST_FINDINGS);
        first.add(Finding.of("", Problem.TOO_MANY_PROBLEMS, most));
        return first;
    }

    private static Loaded refused(Problem problem, String... details) {
        return new Loaded.Refused(List.of(Finding.of("", problem, details)));
    }
}
