package org.sagwise.network;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Finds out which converters run and how, given the states of the chargers. Those that cannot run
 * are stopped, and the rest is tried again without them.
 */
final class ConverterSettling {
    /**
     * Attempts in which converters stop one by one; afterwards all that must stop do so together.
     */
    private static final int ONE_BY_ONE = 16;

    /** Most converters that are stopped one by one. */
    private static final int FEW = 16;

    private static final int MOST_ATTEMPTS = 40;

    private final Network network;
    private Stance stance;
    private final List<Integer> running = new ArrayList<>();

    private ConverterSettling(Network network, Stance stance, Set<Integer> keptStopped) {
        this.network = network;
        this.stance = stance;
        for (int element : stance.converterElements()) {
            if (!keptStopped.contains(element)) {
                running.add(element);
                double outMaxV = converter(element).outMaxV();
                set(element, stance.converter(element).driving(ConverterState.IDLE, 0, outMaxV));
            }
        }
    }

    /**
     * The stance with all converters settled but those in {@code keptStopped}, which stay as is.
     */
    static Stance settle(Network network, Stance stance, Set<Integer> keptStopped) {
        ConverterSettling settling = new ConverterSettling(network, stance, keptStopped);
        settling.run();
        return settling.stance;
    }

    private Element.Converter converter(int element) {
        return (Element.Converter) network.elements().get(element);
    }

    private void set(int element, Stance.Converter converter) {
        stance = stance.with(element, converter);
    }

    private void halt(int element, ConverterState why) {
        set(element, stance.converter(element).halted(why));
        running.remove((Integer) element);
    }

    private void run() {
        boolean settled = running.isEmpty();
        for (int attempt = 0; !settled && attempt < MOST_ATTEMPTS; attempt++) {
            LinearCircuit circuit = haltIdle();
            boolean patient = attempt < ONE_BY_ONE && running.size() <= FEW;
            settled = running.isEmpty() || attempt(circuit, patient);
        }
        if (!settled) {
            List.copyOf(running).forEach(e -> halt(e, ConverterState.STOPPED_UNSETTLED));
        }
    }

    /** Stops what has nothing to do, and what that leaves without a source; returns the circuit. */
    private LinearCircuit haltIdle() {
        while (true) {
            LinearCircuit circuit = LinearCircuit.of(network, stance);
            List<Integer> idle =
                    running.stream().filter(e -> !canRun(e, circuit)).toList();
            if (idle.isEmpty()) {
                return circuit;
            }
            idle.forEach(e -> halt(e, ConverterState.IDLE));
        }
    }

    private boolean canRun(int element, LinearCircuit circuit) {
        Element.Converter c = converter(element);
        boolean reached = circuit.joined(c.inPlus(), c.inMinus()) && circuit.fed(c.inPlus());
        return reached && c.powerW() > 0;
    }

    /** Balances the running converters; true if none of them had to stop. */
    private boolean attempt(LinearCircuit circuit, boolean oneByOne) {
        ConverterPorts ports = new ConverterPorts(network, stance, circuit, List.copyOf(running));
        ConverterVerdict verdict = new ConverterVerdict(ports);
        Map<Integer, ConverterState> stopping = new LinkedHashMap<>();
        for (int j = 0; j < ports.count(); j++) {
            int element = ports.element(j);
            verdict.whyStopped(j).ifPresent(why -> stopping.put(element, why));
        }
        if (stopping.isEmpty()) {
            for (int j = 0; j < ports.count(); j++) {
                int element = ports.element(j);
                set(element, verdict.running(j, stance.converter(element)));
            }
        } else if (oneByOne) {
            int first = stopping.keySet().iterator().next();
            halt(first, stopping.get(first));
        } else {
            if (verdict.sourceGaveWay()) {
                addOthersOnSameSource(circuit, stopping);
            }
            stopping.forEach(this::halt);
        }
        return stopping.isEmpty();
    }

    private void addOthersOnSameSource(LinearCircuit circuit, Map<Integer, ConverterState> stopping) {
        int first = stopping.keySet().iterator().next();
        int island = circuit.island(converter(first).inPlus());
        for (int element : running) {
            if (circuit.island(converter(element).inPlus()) == island) {
                stopping.putIfAbsent(element, stopping.get(first));
            }
        }
    }
}
