package org.sagwise.picture.geometry;

import java.util.Arrays;

/**
 * A way of straight lines and curves, in one piece or several. What would go by a place that is no
 * number or infinite is left out of it.
 */
public final class Path implements Shape {

    private static final int MOVE = 0;
    private static final int LINE = 1;
    private static final int QUAD = 2;
    private static final int CURVE = 3;
    private static final int CLOSE = 4;

    private final byte[] steps;
    private final double[] places;

    private Path(byte[] steps, double[] places) {
        this.steps = steps;
        this.places = places;
    }

    /** Whoever goes along a path, step by step. */
    public interface Walker {

        void moveTo(double x, double y);

        void lineTo(double x, double y);

        /** By a quadratic curve with one control point. */
        void quadTo(double controlX, double controlY, double x, double y);

        /** By a cubic curve with two control points. */
        void curveTo(double control1X, double control1Y, double control2X, double control2Y, double x, double y);

        /** Straight back to where this piece began. */
        void close();
    }

    /** A path through points given as x, y, x, y … */
    public static Path line(double... coordinates) {
        Builder path = new Builder();
        path.moveTo(coordinates[0], coordinates[1]);
        for (int i = 2; i + 1 < coordinates.length; i += 2) {
            path.lineTo(coordinates[i], coordinates[i + 1]);
        }
        return path.build();
    }

    /** A closed outline through points given as x, y, x, y … */
    public static Path polygon(double... coordinates) {
        Builder path = new Builder().append(line(coordinates));
        path.close();
        return path.build();
    }

    /** Whether there is anything to draw: its places are always finite. */
    @Override
    public boolean isDrawable() {
        return steps.length > 1;
    }

    public void walk(Walker walker) {
        int at = 0;
        for (byte step : steps) {
            switch (step) {
                case MOVE -> walker.moveTo(places[at], places[at + 1]);
                case LINE -> walker.lineTo(places[at], places[at + 1]);
                case QUAD -> walker.quadTo(places[at], places[at + 1], places[at + 2], places[at + 3]);
                case CURVE ->
                    walker.curveTo(
                            places[at], places[at + 1], places[at + 2], places[at + 3], places[at + 4], places[at + 5]);
                default -> walker.close();
            }
            at += length(step);
        }
    }

    /** How many coordinates a step has. */
    private static int length(int step) {
        return switch (step) {
            case MOVE, LINE -> 2;
            case QUAD -> 4;
            case CURVE -> 6;
            default -> 0;
        };
    }

    /** Gathers the steps of a path. */
    public static final class Builder implements Walker {

        private byte[] steps = new byte[8];
        private double[] places = new double[16];
        private int stepCount;
        private int placeCount;
        private boolean hasBegun;

        @Override
        public void moveTo(double x, double y) {
            add(MOVE, x, y);
        }

        @Override
        public void lineTo(double x, double y) {
            add(LINE, x, y);
        }

        @Override
        public void quadTo(double controlX, double controlY, double x, double y) {
            add(QUAD, controlX, controlY, x, y);
        }

        @Override
        public void curveTo(
                double control1X, double control1Y, double control2X, double control2Y, double x, double y) {
            add(CURVE, control1X, control1Y, control2X, control2Y, x, y);
        }

        @Override
        public void close() {
            add(CLOSE);
        }

        /** Adds all steps of a path. */
        public Builder append(Path path) {
            path.walk(this);
            return this;
        }

        public Path build() {
            return new Path(Arrays.copyOf(steps, stepCount), Arrays.copyOf(places, placeCount));
        }

        private static boolean areFinite(double[] coordinates) {
            double sum = 0;
            for (double coordinate : coordinates) {
                sum += coordinate;
            }
            return Double.isFinite(sum);
        }

        /** A line from nowhere begins a piece; so does one after a beginning that was left out. */
        private void add(int wanted, double... coordinates) {
            boolean finite = areFinite(coordinates);
            hasBegun = wanted == MOVE ? finite : hasBegun;
            int step = wanted == LINE && !hasBegun ? MOVE : wanted;
            if (!finite || !hasBegun && step != MOVE) {
                return;
            }
            hasBegun = true;
            if (stepCount == steps.length) {
                steps = Arrays.copyOf(steps, 2 * stepCount);
            }
            steps[stepCount++] = (byte) step;
            if (placeCount + coordinates.length > places.length) {
                places = Arrays.copyOf(places, 2 * places.length);
            }
            System.arraycopy(coordinates, 0, places, placeCount, coordinates.length);
            placeCount += coordinates.length;
        }
    }
}
