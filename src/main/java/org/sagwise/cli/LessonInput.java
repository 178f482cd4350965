package org.sagwise.cli;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.sagwise.file.LessonLibrary;
import org.sagwise.file.LessonSource;
import org.sagwise.part.NearMiss;
import org.sagwise.scenario.Finding;
import org.sagwise.text.Texts;

/** Finds the lessons that a call names: folders on disk, or names of the program's own. */
final class LessonInput {

    private final CallContext call;

    LessonInput(CallContext call) {
        this.call = call;
    }

    /** The lessons named; all of the program's own if none is; empty after a complaint. */
    List<LessonSource> find(List<String> names) {
        if (names == null || names.isEmpty()) {
            return LessonLibrary.ids().stream().map(LessonLibrary::source).toList();
        }
        List<LessonSource> found = new ArrayList<>();
        boolean complete = true;
        for (String name : names) {
            Optional<LessonSource> source = one(name);
            source.ifPresent(found::add);
            complete &= source.isPresent();
        }
        return complete ? found : List.of();
    }

    private Optional<LessonSource> one(String name) {
        Optional<Path> folder = folder(name);
        if (folder.isPresent()) {
            return folder.map(LessonSource::ofFolder);
        }
        List<String> meant = LessonLibrary.ids().stream()
                .filter(id -> id.equals(name) || id.startsWith(name + "-"))
                .toList();
        if (meant.size() == 1) {
            return Optional.of(LessonLibrary.source(meant.get(0)));
        }
        Texts texts = Texts.in("lesson-cli", call.locale());
        call.problem(texts.say("wrong.unknown-lesson", name));
        List<String> near = NearMiss.of(name, LessonLibrary.ids());
        if (!near.isEmpty()) {
            call.problem(call.texts().say("wrong.meant", String.join(", ", near)));
        }
        return Optional.empty();
    }

    /** Says everything that is wrong with a lesson; nothing where nothing is. */
    static void complain(CallContext call, String lesson, List<Finding> faults) {
        if (!faults.isEmpty()) {
            Texts texts = Texts.in("lesson-cli", call.locale());
            call.problem(texts.say("lint.faults", lesson, faults.size()));
        }
        for (Finding fault : faults) {
            call.problem("  " + fault.text(call.locale()));
        }
    }

    private static Optional<Path> folder(String name) {
        try {
            Path path = Path.of(name);
            return Files.isDirectory(path) && !name.isBlank() ? Optional.of(path) : Optional.empty();
        } catch (InvalidPathException wrong) {
            return Optional.empty();
        }
    }
}
