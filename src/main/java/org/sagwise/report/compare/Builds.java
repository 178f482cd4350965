package org.sagwise.report.compare;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.sagwise.part.key.Keys;
import org.sagwise.report.compare.BuildDifference.Side;
import org.sagwise.report.compare.JointList.Named;
import org.sagwise.scenario.Joint;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;

/** What differs in build between two scenarios, once it is known which part stands for which. */
final class Builds {

    /** What a part is called makes no difference, nor what other tools say of it. */
    private static final Set<String> NAMES = Set.of("id", "label", "kind", Keys.FOREIGN);

    private final Scenario first;
    private final Scenario second;
    private final Pairing pairing;
    private final List<BuildDifference> found = new ArrayList<>();

    private Builds(Scenario first, Scenario second, Pairing pairing) {
        this.first = first;
        this.second = second;
        this.pairing = pairing;
    }

    static List<BuildDifference> differences(Scenario first, Scenario second, Pairing pairing) {
        Builds builds = new Builds(first, second, pairing);
        builds.parts();
        builds.joints();
        if (first.ambientC() != second.ambientC()) {
            builds.found.add(new BuildDifference.Ambient(first.ambientC(), second.ambientC()));
        }
        return List.copyOf(builds.found);
    }

    private void parts() {
        Set<String> paired = new HashSet<>();
        for (Part part : first.parts()) {
            Optional<Pairing.Mate> mate = pairing.of(part.id());
            if (mate.isEmpty()) {
                found.add(new BuildDifference.PartOnly(Side.FIRST, part));
                continue;
            }
            Part other = mate.get().part();
            paired.add(other.id());
            if (mate.get().isReversed()) {
                found.add(new BuildDifference.Turned(part, other));
            }
            keys(part, other);
        }
        second.parts().stream()
                .filter(part -> !paired.contains(part.id()))
                .forEach(part -> found.add(new BuildDifference.PartOnly(Side.SECOND, part)));
    }

    private void keys(Part part, Part other) {
        for (String key : differingKeys(part, other)) {
            found.add(new BuildDifference.KeyChanged(part, other, key, written(part, key), written(other, key)));
        }
    }

    /** Keys in which two parts differ; names apart. */
    static Set<String> differingKeys(Part one, Part other) {
        Set<String> keys = new TreeSet<>(one.keys().values().keySet());
        keys.addAll(other.keys().values().keySet());
        keys.removeAll(NAMES);
        keys.removeIf(key -> Objects.equals(
                one.keys().values().get(key), other.keys().values().get(key)));
        return keys;
    }

    private static String written(Part part, String key) {
        Object value = part.keys().values().get(key);
        if (value instanceof Keys group) {
            return String.join(
                    ", ",
                    group.values().entrySet().stream()
                            .map(entry -> entry.getKey() + " " + plain(entry.getValue()))
                            .toList());
        }
        return value == null ? "" : plain(value);
    }

    private static String plain(Object value) {
        return value instanceof Double number && number == Math.rint(number)
                ? String.valueOf(number.longValue())
                : String.valueOf(value);
    }

    private void joints() {
        JointList here = new JointList(first, pairing::terminal);
        JointList there = new JointList(second, TerminalRef::toString);
        List<Named> lacking = new ArrayList<>(here.joints());
        List<Named> left = new ArrayList<>(there.joints());
        lacking.removeIf(joint -> takeOut(left, joint, joint.joint()).isPresent());
        for (Named joint : lacking) {
            Optional<Named> other = takeOut(left, joint, null);
            found.add(other.<BuildDifference>map(
                            it -> new BuildDifference.JointChanged(joint.link(), it.link(), joint.joint(), it.joint()))
                    .orElseGet(() -> new BuildDifference.JointOnly(Side.FIRST, joint.link())));
        }
        left.forEach(it -> found.add(new BuildDifference.JointOnly(Side.SECOND, it.link())));
        ideal(here, there);
    }

    /** Takes a joint between the same points out of a list; any, if no kind is asked for. */
    private static Optional<Named> takeOut(List<Named> from, Named like, Joint wanted) {
        for (Iterator<Named> each = from.iterator(); each.hasNext(); ) {
            Named candidate = each.next();
            if (candidate.between().equals(like.between())
                    && (wanted == null || candidate.joint().equals(wanted))) {
                each.remove();
                return Optional.of(candidate);
            }
        }
        return Optional.empty();
    }

    /** Ideal joints whose ends are not one point in the other scenario. */
    private void ideal(JointList here, JointList there) {
        for (Link link : first.links()) {
            String from = pairing.terminal(link.from());
            String to = pairing.terminal(link.to());
            if (isIdeal(link) && !there.point(from).equals(there.point(to))) {
                found.add(new BuildDifference.JointOnly(Side.FIRST, link));
            }
        }
        for (Link link : second.links()) {
            String from = here.point(link.from().toString());
            if (isIdeal(link) && !from.equals(here.point(link.to().toString()))) {
                found.add(new BuildDifference.JointOnly(Side.SECOND, link));
            }
        }
    }

    private static boolean isIdeal(Link link) {
        return link.joint() instanceof Joint.Ideal;
    }
}
