package org.sagwise.file;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** A folder of lessons on disk: one lesson, or several, each in a folder of its own. */
public final class LessonFolder {

    /** More lessons than a class needs in a year; the rest of a larger folder is left alone. */
    public static final int MOST_LESSONS = 60;

    private LessonFolder() {}

    /** Whether there is a lesson in it. */
    public static boolean isOne(Path folder) {
        try {
            return Files.isDirectory(folder) && !lessons(folder).isEmpty();
        } catch (IOException unreadable) {
            return false;
        }
    }

    /**
     * The folders of its lessons, by name: itself, if it holds a lesson file.
     *
     * @throws IOException if it cannot be looked into
     */
    public static List<Path> lessons(Path folder) throws IOException {
        if (Files.isRegularFile(folder.resolve(LessonReader.FILE))) {
            return List.of(folder);
        }
        List<Path> found = new ArrayList<>();
        try (DirectoryStream<Path> inside = Files.newDirectoryStream(folder)) {
            for (Path each : inside) {
                if (Files.isRegularFile(each.resolve(LessonReader.FILE))) {
                    found.add(each);
                }
            }
        } catch (DirectoryIteratorException broken) {
            throw broken.getCause();
        }
        return found.stream().sorted().limit(MOST_LESSONS).toList();
    }

    /**
     * What can be seen of its files from outside: two equal answers mean that nobody has saved in
     * between. An editor that saves by writing another file and renaming it is seen as well.
     */
    public static String stamp(Path folder) {
        StringBuilder stamp = new StringBuilder();
        try {
            for (Path lesson : lessons(folder)) {
                try (Stream<Path> files = Files.list(lesson)) {
                    files.filter(LessonFolder::isPartOfALesson)
                            .sorted()
                            .forEach(file -> stamp.append(stampOf(file)).append('\n'));
                }
            }
        } catch (IOException | UncheckedIOException gone) {
            stamp.append('-');
        }
        return stamp.toString();
    }

    /** An editor's own files beside it come and go without meaning anything. */
    private static boolean isPartOfALesson(Path file) {
        String name = file.getFileName().toString();
        return name.equals(LessonReader.FILE) || name.endsWith(".sagwise.json");
    }

    private static String stampOf(Path file) {
        try {
            var seen = Files.readAttributes(file, BasicFileAttributes.class);
            return file + " " + seen.size() + " " + seen.lastModifiedTime() + " " + seen.fileKey();
        } catch (IOException gone) {
            return file + " -";
        }
    }
}
