package org.sagwise.network;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
        for (int attempt = 0; !running.isEmpty(); attempt++) {
            if (attempt == MOST_ATTEMPTS) {
                haltAll(running, ConverterState.STOPPED_UNSETTLED);
                return;
            }
            LinearCircuit circuit = LinearCircuit.of(network, stance);
            List<Integer> idle = running.stream().filter(e -> !canRun(e, circuit)).toList();
            if (!idle.isEmpty()) {
                haltAll(idle, ConverterState.IDLE);
            } else if (attempt(circuit, attempt < ONE_BY_ONE)) {
                return;
            }
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
        for (int j = 0; j < ports.count(); j++) {
            Optional<ConverterState> why = verdict.whyStopped(j);
            if (why.isPresent()) {
                halt(ports.element(j), why.get());
                if (oneByOne) {
                    return false;
                }
            }
        }
        if (running.size() < ports.count()) {
            return false;
        }
        for (int j = 0; j < ports.count(); j++) {
            int element = ports.element(j);
            set(element, verdict.running(j, stance.converter(element)));
        }
        return true;
    }

    private void haltAll(List<Integer> elements, ConverterState why) {
        List.copyOf(elements).forEach(element -> halt(element, why));
    }
}
