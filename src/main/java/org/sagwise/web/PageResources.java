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
            "run",
            "ui");

    /** What a page says only where a lesson is played. */
    static final List<String> LESSON_TEXTS = List.of("glossary", "ideas-check", "lesson-ideas", "lesson-problems");

    private PageResources() {}

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
