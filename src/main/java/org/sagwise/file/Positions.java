package org.sagwise.file;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.Problem;

/**
 * Finds lines and columns for places of a text that is known to be JSON. Done only when something
 * is wrong, so that a good file is read once and quickly.
 */
final class Positions {

    /** Problems that lie in the key itself and not in its value. */
    private static final Set<Problem> OF_KEY = EnumSet.of(Problem.UNKNOWN_KEY);

    private final Map<String, Position> keys = new HashMap<>();
    private final Map<String, Position> values = new HashMap<>();

    private Positions() {}

    static List<FileFinding> locate(List<Finding> findings, String text) {
        Set<String> wanted = new HashSet<>();
        findings.forEach(finding -> wanted.add(finding.place()));
        Positions positions = new Positions();
        try (JsonParser parser = JsonTree.parserOf(text)) {
            positions.collect(parser, wanted);
        } catch (IOException e) {
            throw new UncheckedIOException("this text has been read before", e);
        }
        return findings.stream()
                .map(finding -> new FileFinding(finding, positions.of(finding)))
                .toList();
    }

    private Optional<Position> of(Finding finding) {
        if (finding.place().isEmpty() && finding.problem() != Problem.NOT_AN_OBJECT) {
            return Optional.empty();
        }
        Map<String, Position> map = OF_KEY.contains(finding.problem()) ? keys : values;
        return Optional.ofNullable(map.get(finding.place()));
    }

    private void collect(JsonParser parser, Set<String> wanted) throws IOException {
        Set<String> missing = new HashSet<>(wanted);
        missing.remove("");
        JsonToken token = parser.nextToken();
        while (token != null && !missing.isEmpty()) {
            if (!token.isStructEnd()) {
                boolean start = token.isStructStart();
                String place =
                        JsonTree.placeOf(start ? parser.getParsingContext().getParent() : parser.getParsingContext());
                if (wanted.contains(place)) {
                    Position here = JsonTree.positionOf(parser.currentTokenLocation());
                    boolean key = token == JsonToken.FIELD_NAME;
                    (key ? keys : values).putIfAbsent(place, here);
                    if (!key) {
                        missing.remove(place);
                    }
                }
            }
            token = parser.nextToken();
        }
    }
}
