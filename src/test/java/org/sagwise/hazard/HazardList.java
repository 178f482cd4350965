package org.sagwise.hazard;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * The tables of docs/hazards.md, made from what each hazard says of itself. They stand below {@link
 * #HEADING}; what is above it is written by hand. To make them anew: {@code mvn test
 * -Dtest=HazardListTest -Dsagwise.write=true}.
 */
final class HazardList {

    static final Path FILE = Path.of("docs/hazards.md");

    private static final String HEADING = "## The table\n";

    private HazardList() {}

    /** The file as it stands. */
    static String committed() throws IOException {
        return Files.readString(FILE);
    }

    /** The file with its tables made anew. */
    static String made() throws IOException {
        String text = committed();
        return text.substring(0, text.indexOf(HEADING)) + HEADING + tables() + effects();
    }

    private static String tables() {
        List<String> lines = new ArrayList<>();
        lines.add("<!-- From here on made from the code: mvn test -Dtest=HazardListTest -Dsagwise.write=true -->");
        lines.add("");
        lines.add("Where two signal words stand, the second is for what is written after the semicolon. Of cautions"
                + " with the same signal word the one of lower rank is told first.");
        for (Section section : Hazards.SECTIONS) {
            lines.add("");
            lines.add("### " + section.title());
            lines.add("| id | signal | begins at | source | says | rank |");
            lines.add("| --- | --- | --- | --- | --- | --- |");
            section.hazards().forEach(hazard -> lines.add(row(hazard)));
        }
        return String.join("\n", lines) + "\n";
    }

    private static String row(Hazard hazard) {
        Hazard.Listing listing = hazard.listing();
        return cells(
                quoted(hazard.id()),
                listing.signals(),
                listing.begins(),
                listing.source(),
                listing.says(),
                String.valueOf(hazard.rank()));
    }

    private static String effects() {
        List<String> lines = new ArrayList<>();
        lines.add("");
        lines.add("### What is left out beside what");
        lines.add("| beside | if it is at least | where | is left out |");
        lines.add("| --- | --- | --- | --- |");
        for (Section section : Hazards.SECTIONS) {
            for (Hazard hazard : section.hazards()) {
                for (Hides hides : hazard.hides()) {
                    String effects = new TreeSet<>(hides.effects())
                            .stream().map(HazardList::quoted).collect(Collectors.joining(", "));
                    lines.add(cells(
                            quoted(hazard.id()),
                            hides.atLeast().name(),
                            hides.reach().words(),
                            effects));
                }
            }
        }
        return String.join("\n", lines) + "\n";
    }

    private static String quoted(String id) {
        return "`" + id + "`";
    }

    private static String cells(String... cells) {
        return "| " + String.join(" | ", cells) + " |";
    }
}
