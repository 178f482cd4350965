package org.sagwise.picture.stairs;

import java.util.ArrayList;
import java.util.List;
import org.sagwise.picture.geometry.Box;

/**
 * Where all steps of the stairs are drawn.
 *
 * @param columns the steps, in order of the way, lanes one after the other
 * @param panels grounds of lanes that stand abreast
 * @param bridges levels that lanes have in common, as flat dashed lines
 */
record StairPlan(List<Column> columns, List<Box> panels, List<Bridge> bridges) {

    /** A level that lanes have in common, from one x to another. */
    record Bridge(double from, double to, double potentialV) {}

    static StairPlan of(List<Course> courses, double left, double right, StairAxis axis) {
        Builder builder = new Builder(axis);
        double weight = Course.weight(courses);
        builder.place(courses, left, weight > 0 ? (right - left) / weight : 0);
        return new StairPlan(builder.columns, builder.panels, builder.bridges);
    }

    private static final class Builder {

        private final StairAxis axis;
        private final List<Column> columns = new ArrayList<>();
        private final List<Box> panels = new ArrayList<>();
        private final List<Bridge> bridges = new ArrayList<>();

        Builder(StairAxis axis) {
            this.axis = axis;
        }

        double place(List<Course> courses, double left, double unit) {
            double x = left;
            for (Course course : courses) {
                if (course instanceof Course.Single single) {
                    double right = x + single.weight() * unit;
                    columns.add(new Column(single.step(), x, right));
                    x = right;
                } else if (course instanceof Course.Abreast abreast) {
                    x = lanes(abreast, x, unit);
                }
            }
            return x;
        }

        private double lanes(Course.Abreast abreast, double left, double unit) {
            double pad = Weights.AROUND_LANES * unit / 2;
            double x = left + pad;
            List<double[]> spans = new ArrayList<>();
            List<int[]> ranges = new ArrayList<>();
            for (List<Course> lane : abreast.lanes()) {
                int first = columns.size();
                double end = place(lane, x, unit);
                spans.add(new double[] {x, end});
                ranges.add(new int[] {first, columns.size() - 1});
                double margin = Math.min(pad, Weights.BETWEEN_LANES * unit / 2) * 0.6;
                panels.add(new Box(
                        x - margin,
                        axis.top() - StaircasePainter.HEADROOM,
                        end - x + 2 * margin,
                        axis.bottom() - axis.top() + StaircasePainter.HEADROOM + 4));
                x = end + Weights.BETWEEN_LANES * unit;
            }
            double right = x - Weights.BETWEEN_LANES * unit + pad;
            bridge(spans, ranges, left, right);
            return right;
        }

        /** All lanes begin at one level and end at another. */
        private void bridge(List<double[]> spans, List<int[]> ranges, double left, double right) {
            double beginV = columns.get(ranges.get(0)[0]).step().fromV();
            double endV = columns.get(ranges.get(0)[1]).step().toV();
            int last = spans.size() - 1;
            bridges.add(new Bridge(left, spans.get(last)[0], beginV));
            bridges.add(new Bridge(spans.get(0)[1], right, endV));
        }
    }
}
