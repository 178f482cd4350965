package org.sagwise.file;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.sagwise.lesson.LessonFinding;
import org.sagwise.lesson.LessonProblem;
import org.yaml.snakeyaml.LoaderOptions;

/**
 * Reads YAML into nodes that know their line and column. Takes plain data alone: an anchor or an
 * alias is refused, so that a small file cannot unfold into a large one, and tags mean nothing.
 */
final class LessonYaml {

    /** Most characters that a lesson file may have. */
    static final int MOST_CHARACTERS = 512 * 1024;

    private static final int DEEPEST = 16;

    private static final YAMLFactory FACTORY =
            YAMLFactory.builder().loaderOptions(options()).build();

    private final List<LessonFault> faults;

    private LessonYaml(List<LessonFault> faults) {
        this.faults = faults;
    }

    private static LoaderOptions options() {
        LoaderOptions options = new LoaderOptions();
        options.setCodePointLimit(MOST_CHARACTERS);
        options.setNestingDepthLimit(DEEPEST);
        options.setMaxAliasesForCollections(0);
        return options;
    }

    /**
     * Reads a text.
     *
     * @param faults takes what is wrong with it
     * @return what it holds; empty if it cannot be read to its end
     */
    static Optional<LessonNode> read(String text, List<LessonFault> faults) {
        if (text.length() > MOST_CHARACTERS) {
            faults.add(LessonFault.ofWhole(LessonProblem.TOO_LARGE, String.valueOf(MOST_CHARACTERS / 1024)));
            return Optional.empty();
        }
        try (YAMLParser parser = FACTORY.createParser(text)) {
            return new LessonYaml(faults).root(parser);
        } catch (JsonProcessingException broken) {
            var at = broken.getLocation();
            faults.add(new LessonFault(
                    LessonFinding.of("", LessonProblem.BROKEN_YAML, firstLine(broken)),
                    Optional.ofNullable(at).map(it -> new Position(it.getLineNr(), it.getColumnNr()))));
            return Optional.empty();
        } catch (IOException e) {
            throw new UncheckedIOException("a text in memory cannot fail to be read", e);
        }
    }

    private static String firstLine(JsonProcessingException broken) {
        return broken.getOriginalMessage().lines().findFirst().orElse("").strip();
    }

    private Optional<LessonNode> root(YAMLParser parser) throws IOException {
        JsonToken first = parser.nextToken();
        if (first == null) {
            faults.add(LessonFault.ofWhole(LessonProblem.BROKEN_YAML, "no content"));
            return Optional.empty();
        }
        LessonNode root = node(parser, first, "");
        if (parser.nextToken() != null) {
            faults.add(at(LessonProblem.BROKEN_YAML, "", here(parser), "a second document begins"));
        }
        return Optional.of(root);
    }

    private LessonNode node(YAMLParser parser, JsonToken token, String place) throws IOException {
        Position here = here(parser);
        if (parser.isCurrentAlias() || parser.getObjectId() != null) {
            faults.add(at(LessonProblem.ALIAS, place, here));
        }
        return switch (token) {
            case START_OBJECT -> group(parser, place, here);
            case START_ARRAY -> items(parser, place, here);
            case VALUE_NULL -> new LessonNode.Scalar(place, here, "");
            default -> new LessonNode.Scalar(place, here, parser.getText());
        };
    }

    private LessonNode items(YAMLParser parser, String place, Position here) throws IOException {
        List<LessonNode> items = new ArrayList<>();
        JsonToken token = parser.nextToken();
        while (token != JsonToken.END_ARRAY) {
            items.add(node(parser, token, place + "[" + items.size() + "]"));
            token = parser.nextToken();
        }
        return new LessonNode.Items(place, here, items);
    }

    private LessonNode group(YAMLParser parser, String place, Position here) throws IOException {
        LessonNode.Group group = LessonNode.Group.empty(place, here);
        while (parser.nextToken() == JsonToken.FIELD_NAME) {
            String key = parser.currentName();
            Position keyAt = here(parser);
            LessonNode value = node(parser, parser.nextToken(), group.placeOf(key));
            if (group.values().containsKey(key)) {
                faults.add(at(LessonProblem.DUPLICATE_KEY, group.placeOf(key), keyAt, key));
            }
            group.values().putIfAbsent(key, value);
            group.keys().putIfAbsent(key, keyAt);
        }
        return group;
    }

    private static LessonFault at(LessonProblem problem, String place, Position position, String... details) {
        return new LessonFault(LessonFinding.of(place, problem, details), Optional.of(position));
    }

    private static Position here(YAMLParser parser) {
        var at = parser.currentTokenLocation();
        return new Position(at.getLineNr(), at.getColumnNr());
    }
}
