package org.sagwise.ui.start;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.sagwise.ui.start.AboutDialog.Work;

/** Whoever's work is in the program is named. */
class AboutDialogTest {

    private static final Pattern DEPENDENCY = Pattern.compile(
            "<dependency>\\s*(?:<!--.*?-->\\s*)?<groupId>[^<]*</groupId>\\s*<artifactId>([^<]*)</artifactId>(.*?)</dependency>",
            Pattern.DOTALL);

    @Test
    void works_everyLibraryThatTheBuildShips_isNamed() throws IOException {
        String pom = Files.readString(Path.of("pom.xml"));
        String dependencies = pom.substring(pom.indexOf("</dependencyManagement>"), pom.indexOf("<build>"));
        List<String> shipped = DEPENDENCY
                .matcher(dependencies)
                .results()
                .filter(found -> !found.group(2).contains("<scope>test</scope>"))
                .map((MatchResult found) -> found.group(1))
                .toList();
        List<String> unnamed = shipped.stream()
                .filter(library -> AboutDialog.WORKS.stream()
                        .map(Work::artifact)
                        .noneMatch(name -> !name.isEmpty() && library.startsWith(name)))
                .toList();

        assertEquals(List.of(), unnamed);
        assertEquals(true, shipped.size() > 5, shipped.toString());
    }
}
