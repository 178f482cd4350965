package org.sagwise.file;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.Places;
import org.sagwise.scenario.Problem;
import org.sagwise.text.Position;

/**
 * What a text holds, be it JSON or YAML: one tree whose pieces know their lines and columns.
 *
 * @param root what stands in it; empty if the text is broken
 * @param findings keys that stand twice, what is broken
 */
record Document(Optional<Node> root, List<Finding> findings) {

    /** Problems that lie in the key itself and not in its value. */
    private static final Set<Problem> OF_KEY = EnumSet.of(Problem.UNKNOWN_KEY);

    Document {
        findings = List.copyOf(findings);
    }

    /** The same, but something other than an object counts as broken. */
    Document ofObject() {
        if (root.isEmpty() || root.get() instanceof Node.Group) {
            return this;
        }
        List<Finding> more = new ArrayList<>(findings);
        more.add(Finding.of("", Problem.NOT_AN_OBJECT, Places.typeOf(root.get().sample())));
        return new Document(Optional.empty(), more);
    }

    /** The object that it holds; empty if it is broken or holds something else. */
    Optional<Node.Group> group() {
        return root.filter(Node.Group.class::isInstance).map(Node.Group.class::cast);
    }

    /** The same finding with the line and column of its place, or of what lies around that. */
    Finding locate(Finding finding) {
        if (finding.position().isPresent() || root.isEmpty()) {
            return finding;
        }
        String place = finding.place();
        boolean ofKey = finding.problem() instanceof Problem problem && OF_KEY.contains(problem);
        Optional<Position> found = position(place, ofKey);
        while (found.isEmpty() && !place.isEmpty()) {
            int end = Math.max(place.lastIndexOf('.'), place.lastIndexOf('['));
            place = place.substring(0, Math.max(end, 0));
            found = position(place, false);
        }
        return finding.at(found);
    }

    /** Where the value of a place begins; empty for the whole document and for what is not there. */
    Optional<Position> position(String place) {
        return position(place, false);
    }

    private Optional<Position> position(String place, boolean ofKey) {
        if (place.isEmpty() || root.isEmpty()) {
            return Optional.empty();
        }
        return position(root.get(), place.startsWith("[") ? place : "." + place, ofKey);
    }

    /**
     * @param rest path from this node on: {@code .parts[2].id}, {@code [2].id}
     */
    private static Optional<Position> position(Node node, String rest, boolean ofKey) {
        if (rest.isEmpty()) {
            return Optional.of(node.position());
        } else if (node instanceof Node.Items list && rest.startsWith("[")) {
            int end = rest.indexOf(']');
            int index = Integer.parseInt(rest.substring(1, end));
            return index < list.items().size()
                    ? position(list.items().get(index), rest.substring(end + 1), ofKey)
                    : Optional.empty();
        } else if (node instanceof Node.Group group && rest.startsWith(".")) {
            return ofEntry(group, rest.substring(1), ofKey);
        }
        return Optional.empty();
    }

    /** A name may itself hold a point or a bracket, so no name is cut out of the path. */
    private static Optional<Position> ofEntry(Node.Group group, String rest, boolean ofKey) {
        for (Map.Entry<String, Node.Entry> entry : group.entries().entrySet()) {
            int length = entry.getKey().length();
            if (rest.startsWith(entry.getKey())
                    && (rest.length() == length || ".[".indexOf(rest.charAt(length)) >= 0)) {
                Optional<Position> found = ofKey && rest.length() == length
                        ? Optional.of(entry.getValue().position())
                        : position(entry.getValue().value(), rest.substring(length), ofKey);
                if (found.isPresent()) {
                    return found;
                }
            }
        }
        return Optional.empty();
    }
}
