package org.sagwise.web;

import java.util.ArrayList;
import java.util.List;

/** The files of the program that the page's script takes along. */
final class PageResources {

    static final List<String> CATALOGUE = List.of(
            "alloys",
            "boards",
            "cells",
            "chargers",
            "chemistries",
            "coils",
            "contacts",
            "fuses",
            "jumpers",
            "ptcs",
            "reverse-guards",
            "switches",
            "sources");

    /** A test sees to it that every other one is known to be for others. */
    static final List<String> TEXTS = List.of(
            "catalogue",
            "cautions",
            "clock",
            "edits",
            "fixes",
            "kinds",
            "meter",
            "names",
            "notices",
            "page",
            "picture",
            "problems",
            "quantity",
            "report",
            "run",
            "ui");

    /** What a page says only where a lesson is played. */
    static final List<String> LESSON_TEXTS =
            List.of("cell-section", "glossary", "ideas-check", "lesson-ideas", "lesson-problems");

    /** With what the keys begin that a page says of the window's words; the others stay out of it. */
    private static final List<String> UI_KEYS = List.of(
            "caution.",
            "joint.",
            "key.",
            "kind.",
            "ledger.row.",
            "limits.",
            "meter.mode.",
            "state.",
            "touch.",
            "word.");

    /** Those of a lesson besides. */
    private static final List<String> LESSON_UI_KEYS = List.of(
            "check.",
            "command.card",
            "command.compare",
            "command.delete",
            "command.flip",
            "command.lesson-",
            "command.post",
            "glossary.",
            "inside.",
            "lesson.");

    /** What it says of the words of reports: what has become of a bench. Keys are called as cards call them. */
    private static final List<String> REPORT_KEYS =
            List.of("change.", "compare.not-said", "compare.row.", "joint.", "part.note ", "value.", "wire.");

    /** Where a lesson has another bench beside. */
    private static final List<String> LESSON_REPORT_KEYS = List.of("compare.");

    private PageResources() {}

    /**
     * Whether a page says what stands under this key: of the words of window and reports it says few.
     *
     * @param file where it stands, below {@code org/sagwise}
     */
    static boolean isSaid(String file, String key, boolean isLesson) {
        return switch (file.replaceFirst("(_\\w+)?\\.properties$", "")) {
            case "org/sagwise/texts/ui" -> isIn(UI_KEYS, key) || isLesson && isIn(LESSON_UI_KEYS, key);
            case "org/sagwise/texts/report" -> isIn(REPORT_KEYS, key) || isLesson && isIn(LESSON_REPORT_KEYS, key);
            default -> true;
        };
    }

    private static boolean isIn(List<String> beginnings, String key) {
        return beginnings.stream().anyMatch(key::startsWith);
    }

    /** Their paths on the class path. */
    static List<String> files() {
        List<String> files = new ArrayList<>(benchFiles());
        files.addAll(texts(LESSON_TEXTS));
        return files;
    }

    /** Those that a page of a bench alone needs. */
    static List<String> benchFiles() {
        List<String> files = new ArrayList<>();
        CATALOGUE.forEach(name -> files.add("org/sagwise/catalogue/" + name + ".json"));
        files.addAll(texts(TEXTS));
        files.add("org/sagwise/texts/languages.txt");
        files.add("org/sagwise/fonts/SourceSans3-Regular.widths");
        files.add("org/sagwise/fonts/SourceSans3-Bold.widths");
        return files;
    }

    private static List<String> texts(List<String> names) {
        List<String> files = new ArrayList<>();
        for (String name : names) {
            files.add("org/sagwise/texts/" + name + ".properties");
            files.add("org/sagwise/texts/" + name + "_de.properties");
        }
        return files;
    }
}
