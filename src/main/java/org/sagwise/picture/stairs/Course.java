package org.sagwise.picture.stairs;

import java.util.ArrayList;
import java.util.List;
import org.sagwise.reading.Staircase;
import org.sagwise.reading.Staircase.Lane;
import org.sagwise.reading.Staircase.Step;

/** The course of the stairs: steps one after the other, and places where lanes stand abreast. */
sealed interface Course {

    /**
     * One step.
     *
     * @param share how much of its usual width it gets, from 0 to 1
     */
    record Single(Step step, double share) implements Course {

        Single(Step step) {
            this(step, 1);
        }

        @Override
        public double weight() {
            return share * Weights.of(step.kind());
        }
    }

    /** Lanes side by side; the first is that of the main way. */
    record Abreast(List<List<Course>> lanes) implements Course {
        @Override
        public double weight() {
            double weight = Weights.BETWEEN_LANES * (lanes.size() - 1) + Weights.AROUND_LANES;
            for (List<Course> lane : lanes) {
                weight += Course.weight(lane);
            }
            return weight;
        }
    }

    /** Share of the width that it wants. */
    double weight();

    static double weight(List<Course> courses) {
        return courses.stream().mapToDouble(Course::weight).sum();
    }

    static List<Course> of(StairOrder order) {
        return stretch(order.steps(), 0, order.steps().size(), order.lanes());
    }

    /** The main way from one place to another with the lanes that stand beside it. */
    private static List<Course> stretch(List<Step> steps, int from, int to, List<Lane> lanes) {
        List<Course> courses = new ArrayList<>();
        int place = from;
        while (place < to) {
            int end = abreastUntil(place, to, lanes);
            if (end == place) {
                courses.add(new Single(steps.get(place)));
                place++;
            } else {
                courses.add(abreast(steps, place, end, lanes));
                place = end;
            }
        }
        return narrowed(narrowed(courses, Weights.MOST_JOINTS, true), Weights.MOST_IN_A_ROW, false);
    }

    /**
     * Many steps in a row get narrower, so that those that matter keep their room: joints one after
     * the other, and all but loads of a long row.
     *
     * @param most weight of so many steps in a row from which on they get narrower
     * @param joints whether only joints next to each other count
     */
    private static List<Course> narrowed(List<Course> courses, double most, boolean joints) {
        List<Course> narrowed = new ArrayList<>();
        int place = 0;
        while (place < courses.size()) {
            int end = place;
            double weight = 0;
            while (end < courses.size() && isOf(courses.get(end), joints)) {
                weight += courses.get(end).weight();
                end++;
            }
            for (Course course : courses.subList(place, end)) {
                Single single = (Single) course;
                narrowed.add(weight > most ? new Single(single.step(), single.share() * most / weight) : single);
            }
            if (end < courses.size()) {
                narrowed.add(courses.get(end));
            }
            place = end + 1;
        }
        return narrowed;
    }

    private static boolean isOf(Course course, boolean joints) {
        return course instanceof Single single
                && (joints
                        ? single.step().kind().sort() == Staircase.Sort.JOINT
                        : single.step().kind().sort() != Staircase.Sort.LOAD);
    }

    /** Where the stretch ends with which lanes stand abreast from a place on; the place if none. */
    private static int abreastUntil(int place, int to, List<Lane> lanes) {
        int end = place;
        boolean growing = true;
        while (growing) {
            growing = false;
            for (Lane lane : lanes) {
                boolean begins = lane.afterStep() == place || lane.afterStep() < end;
                if (begins && lane.afterStep() >= place && lane.untilStep() > end) {
                    end = Math.min(to, lane.untilStep());
                    growing = end < to;
                }
            }
        }
        return end;
    }

    private static Abreast abreast(List<Step> steps, int from, int to, List<Lane> lanes) {
        List<Lane> beside = new ArrayList<>();
        List<Lane> within = new ArrayList<>();
        for (Lane lane : lanes) {
            boolean inside = lane.afterStep() >= from && lane.untilStep() <= to;
            boolean whole = lane.afterStep() == from && lane.untilStep() == to;
            if (inside) {
                (whole || crosses(lane, lanes) ? beside : within).add(lane);
            }
        }
        List<List<Course>> abreast = new ArrayList<>();
        abreast.add(stretch(steps, from, to, within));
        for (Lane lane : beside) {
            abreast.add(
                    lane.steps().stream().map(step -> (Course) new Single(step)).toList());
        }
        return new Abreast(abreast);
    }

    /** Whether a lane begins inside another's stretch and ends outside it. */
    private static boolean crosses(Lane lane, List<Lane> lanes) {
        return lanes.stream()
                .anyMatch(other -> other.afterStep() < lane.afterStep()
                        && lane.afterStep() < other.untilStep()
                        && other.untilStep() < lane.untilStep());
    }
}
