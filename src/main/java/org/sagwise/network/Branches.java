package org.sagwise.network;

/**
 * The network as Kirchhoff's laws see it: branches from one node to another, numbered like the
 * elements; the output branches of converters follow after the last element. The current of a
 * branch flows through it in the direction {@code from} → {@code to}, and V(to) − V(from) = emf −
 * ohm · current.
 */
final class Branches {

    /** How a branch takes part in the solution. */
    enum Kind {
        /** 0 Ω, no emf: its ends are one node. */
        JOINT,
        /** 0 Ω with an emf: its current is what the rest of the network makes of it. */
        IDEAL_SOURCE,
        /** A resistance above 0 Ω, with or without an emf. */
        RESISTIVE,
        /** Its current is given, its voltage is not; it joins no islands. */
        DRIVEN
    }

    final int nodeCount;
    final int[] from;
    final int[] to;
    final double[] ohm;
    final Kind[] kind;

    /** True for a branch that can set the potentials of its island. */
    final boolean[] feeds;

    /** Volts of a branch's emf, or amperes of a driven branch. */
    final double[] drive;

    private Branches(int nodeCount, int count) {
        this.nodeCount = nodeCount;
        from = new int[count];
        to = new int[count];
        ohm = new double[count];
        kind = new Kind[count];
        feeds = new boolean[count];
        drive = new double[count];
    }

    int count() {
        return from.length;
    }

    /** The branches of a network whose chargers, converters and one-way elements stand as {@code stance} says. */
    static Branches of(Network network, Stance stance) {
        int elements = network.elements().size();
        Branches branches = new Branches(
                network.nodeCount(), elements + stance.converterElements().size());
        for (int i = 0; i < elements; i++) {
            branches.add(i, network.elements().get(i), stance);
        }
        return branches;
    }

    private void add(int i, Element element, Stance stance) {
        if (element instanceof Element.Resistance r) {
            put(i, r.a(), r.b(), r.ohm() == 0 ? Kind.JOINT : Kind.RESISTIVE, r.ohm(), 0);
        } else if (element instanceof Element.Source s) {
            Kind k = s.seriesOhm() == 0 ? Kind.IDEAL_SOURCE : Kind.RESISTIVE;
            put(i, s.minus(), s.plus(), k, s.seriesOhm(), s.emfV());
            feeds[i] = true;
        } else if (element instanceof Element.CurrentSource s) {
            put(i, s.minus(), s.plus(), Kind.DRIVEN, 0, s.currentA());
            feeds[i] = true;
        } else if (element instanceof Element.LimitedSource s) {
            addCharger(i, s, stance.charger(i));
        } else if (element instanceof Element.Converter c) {
            addConverter(i, c, stance.converter(i));
        } else if (element instanceof Element.OneWay d) {
            addOneWay(i, d, stance.way(i));
        }
    }

    private void addCharger(int i, Element.LimitedSource s, Stance.Charger stance) {
        switch (stance.state()) {
            case CONSTANT_VOLTAGE -> put(i, s.minus(), s.plus(), Kind.RESISTIVE, Stance.OUTPUT_OHM, stance.emfV());
            case CONSTANT_CURRENT -> put(i, s.minus(), s.plus(), Kind.DRIVEN, 0, s.maxA());
            case OFF -> put(i, s.minus(), s.plus(), Kind.DRIVEN, 0, 0);
        }
        feeds[i] = stance.state() != ChargerState.OFF;
    }

    private void addConverter(int i, Element.Converter c, Stance.Converter stance) {
        put(i, c.inPlus(), c.inMinus(), Kind.DRIVEN, 0, stance.inputA());
        int out = stance.outputBranch();
        if (stance.outputOn()) {
            put(out, c.outMinus(), c.outPlus(), Kind.RESISTIVE, Stance.BOARD_OHM, stance.emfV());
        } else {
            put(out, c.outMinus(), c.outPlus(), Kind.DRIVEN, 0, 0);
        }
        feeds[out] = stance.outputOn();
    }

    private void addOneWay(int i, Element.OneWay d, Stance.Way way) {
        switch (way) {
            case CONDUCTS -> put(i, d.from(), d.to(), Kind.RESISTIVE, d.ohm(), -d.dropV());
            case LEAKS -> put(i, d.from(), d.to(), Kind.RESISTIVE, Stance.LEAK_OHM, -d.dropV());
            case BLOCKS -> put(i, d.from(), d.to(), Kind.DRIVEN, 0, 0);
        }
    }

    private void put(int i, int fromNode, int toNode, Kind k, double resistanceOhm, double driven) {
        from[i] = fromNode;
        to[i] = toNode;
        kind[i] = k;
        ohm[i] = resistanceOhm;
        drive[i] = driven;
    }
}
