package org.sagwise.circuit;

import java.util.List;
import java.util.Optional;
import org.sagwise.scenario.TerminalRef;

/**
 * Why no current can flow through some loads, and what would close the way.
 *
 * @param loads ids of the loads without current
 * @param blockers ids of the parts that stand in the way, as a melted fuse does; empty where a
 *     joint is missing instead
 * @param loose the end that should be joined to {@code target}
 * @param target where it should be joined to; empty where no single joint closes the way
 * @param driven whether sources are joined to the loads at all
 */
public record MissingJoint(
        List<String> loads,
        List<String> blockers,
        Optional<TerminalRef> loose,
        Optional<TerminalRef> target,
        boolean driven) {

    public MissingJoint {
        loads = List.copyOf(loads);
        blockers = List.copyOf(blockers);
    }

    /** Whether both say the same but for the loads: the joint may be named from either end. */
    boolean hasCureOf(MissingJoint other) {
        boolean same = loose.equals(other.loose) && target.equals(other.target);
        boolean turned = loose.equals(other.target) && target.equals(other.loose);
        return blockers.equals(other.blockers) && (same || turned);
    }

    MissingJoint with(List<String> moreLoads) {
        List<String> all = new java.util.ArrayList<>(loads);
        all.addAll(moreLoads);
        return new MissingJoint(all, blockers, loose, target, driven);
    }
}
