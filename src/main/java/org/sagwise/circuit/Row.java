package org.sagwise.circuit;

import java.util.List;

/**
 * Sources in series: groups of sources side by side, one group after the other, with nothing
 * hanging at the joints between them.
 *
 * @param groups in order along the row, two or more
 */
public record Row(List<Group> groups) {

    public Row {
        groups = List.copyOf(groups);
    }

    /**
     * Sources side by side, in the row as one.
     *
     * @param sources in file order
     * @param up 1 if the row passes them from minus to plus, -1 if from plus to minus
     */
    public record Group(List<Branch> sources, int up) {
        public Group {
            sources = List.copyOf(sources);
        }
    }

    /** Groups passed upwards minus groups passed downwards. */
    public int climb() {
        return groups.stream().mapToInt(Group::up).sum();
    }

    /** Whether some stand the other way round than others. */
    public boolean isOpposed() {
        return Math.abs(climb()) < groups.size();
    }

    /**
     * The groups that are fewer; of as many each way those that stand the other way round than the
     * one that comes first in the file.
     */
    public List<Group> turned(List<Branch> fileOrder) {
        int climb = climb();
        int right = climb == 0 ? firstInFile(fileOrder).up() : Integer.signum(climb);
        return groups.stream().filter(group -> group.up() != right).toList();
    }

    private Group firstInFile(List<Branch> fileOrder) {
        for (Branch source : fileOrder) {
            for (Group group : groups) {
                if (group.sources().contains(source)) {
                    return group;
                }
            }
        }
        return groups.get(0);
    }

    /** The net at either end of the row, the first one first. */
    public List<Integer> ends() {
        Group first = groups.get(0);
        Group last = groups.get(groups.size() - 1);
        return List.of(net(first, -first.up()), net(last, last.up()));
    }

    /** Whether both its ends are one net. */
    public boolean isRing() {
        return ends().get(0).equals(ends().get(1));
    }

    /** The net above a group, or the one below it. */
    private static int net(Group group, int above) {
        Branch source = group.sources().get(0);
        return above > 0 ? source.to() : source.from();
    }

    /** Every source of the row. */
    public List<Branch> sources() {
        return groups.stream().flatMap(group -> group.sources().stream()).toList();
    }
}
