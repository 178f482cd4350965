package org.sagwise.network;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Finds the common state of all chargers, converters and one-way elements: converters are balanced
 * for the present states of the others, one-way elements settled for that, then chargers whose
 * state does not agree change it, until all agree.
 */
final class DeviceSettling {
    /** Rounds in which all chargers that disagree change at once; afterwards one in each round. */
    private static final int ALL_AT_ONCE = 10;

    /** Rounds after which a converter that has stopped stays stopped. */
    private static final int LATCHING = 30;

    private static final int MOST_ROUNDS = 60;

    private static final int FEWEST_ROUNDS = 20;

    /** Most elements gone through in all rounds together. */
    private static final int WORK = 200_000;

    /** What was found: how all stand, and what did not settle. */
    record Settled(Stance stance, List<Finding> findings) {}

    private final Network network;
    private final Set<Integer> everRan = new HashSet<>();
    private final Set<Integer> latched = new HashSet<>();
    private int lastChanged = -1;
    private Stance stance;

    private DeviceSettling(Network network) {
        this.network = network;
        this.stance = Stance.initial(network);
    }

    /** The common state of a network's chargers, converters and one-way elements. */
    static Settled settle(Network network) {
        DeviceSettling settling = new DeviceSettling(network);
        return settling.run();
    }

    private Settled run() {
        int affordable = WORK / Math.max(1, network.elements().size());
        int rounds = Math.max(FEWEST_ROUNDS, Math.min(MOST_ROUNDS, affordable));
        NavigableMap<Integer, ChargerState> disagreeing = new TreeMap<>();
        for (int round = 0; round < rounds; round++) {
            stance = ConverterSettling.settle(network, stance, latched);
            latch(round);
            Stance before = stance;
            stance = OneWaySettling.settle(network, stance);
            disagreeing = disagreeingChargers();
            if (disagreeing.isEmpty() && stance == before) {
                break;
            }
            change(round < ALL_AT_ONCE || disagreeing.isEmpty() ? disagreeing : afterLastChanged(disagreeing));
        }
        holdTerminals();
        return new Settled(stance, findings(disagreeing.keySet()));
    }

    private void latch(int round) {
        for (int element : stance.converterElements()) {
            Stance.Converter converter = stance.converter(element);
            if (converter.state().delivers()) {
                everRan.add(element);
            } else if (round >= LATCHING && everRan.contains(element) && latched.add(element)) {
                boolean starved = converter.state() == ConverterState.IDLE;
                ConverterState why = starved ? ConverterState.STOPPED_NO_SOLUTION : converter.state();
                stance = stance.with(element, converter.halted(why));
            }
        }
    }

    /** Chargers whose state does not agree with what it leads to, each with one that may. */
    private NavigableMap<Integer, ChargerState> disagreeingChargers() {
        NavigableMap<Integer, ChargerState> disagreeing = new TreeMap<>();
        if (stance.chargerElements().isEmpty()) {
            return disagreeing;
        }
        LinearCircuit circuit = LinearCircuit.of(network, stance);
        Flow flow = circuit.solve();
        for (int element : stance.chargerElements()) {
            Element.LimitedSource charger = charger(element);
            ChargerState now = stance.charger(element).state();
            double ampere = circuit.solved(flow, element) ? flow.currentA()[element] : Double.NaN;
            double volt = circuit.joined(charger.plus(), charger.minus())
                    ? flow.voltageV(charger.plus(), charger.minus())
                    : Double.NaN;
            ChargerState then = ChargerRule.next(charger, now, ampere, volt);
            if (then != now) {
                disagreeing.put(element, then);
            }
        }
        return disagreeing;
    }

    private void change(Map<Integer, ChargerState> changes) {
        changes.forEach((element, state) -> {
            set(element, state, charger(element).limitV());
            lastChanged = element;
        });
    }

    /** In turn, so that a few that never agree do not keep the others from ever changing. */
    private Map<Integer, ChargerState> afterLastChanged(NavigableMap<Integer, ChargerState> disagreeing) {
        Map.Entry<Integer, ChargerState> next = disagreeing.higherEntry(lastChanged);
        Map.Entry<Integer, ChargerState> turn = next == null ? disagreeing.firstEntry() : next;
        return Map.of(turn.getKey(), turn.getValue());
    }

    private Element.LimitedSource charger(int element) {
        return (Element.LimitedSource) network.elements().get(element);
    }

    private void set(int element, ChargerState state, double emfV) {
        stance = stance.with(element, new Stance.Charger(state, emfV));
    }

    /** Raises the emf of chargers at constant voltage by the drop behind their terminals. */
    private void holdTerminals() {
        if (stance.chargerElements().isEmpty()) {
            return;
        }
        Flow flow = LinearCircuit.of(network, stance).solve();
        for (int element : stance.chargerElements()) {
            if (stance.charger(element).state() == ChargerState.CONSTANT_VOLTAGE) {
                double dropV = Stance.OUTPUT_OHM * flow.currentA()[element];
                set(element, ChargerState.CONSTANT_VOLTAGE, charger(element).limitV() + dropV);
            }
        }
        Set<Integer> halted = new HashSet<>(stance.converterElements());
        halted.removeIf(element -> stance.converter(element).outputOn());
        stance = ConverterSettling.settle(network, stance, halted);
    }

    private List<Finding> findings(Set<Integer> disagreeing) {
        Set<Integer> unsettled = new TreeSet<>(disagreeing);
        unsettled.addAll(OneWaySettling.disagreeing(network, stance));
        if (!disagreeing.isEmpty() || !stance.converterElements().isEmpty()) {
            // The last change, or holding the terminals, may have moved another one.
            unsettled.addAll(disagreeingChargers().keySet());
        }
        for (int element : stance.converterElements()) {
            if (stance.converter(element).state() == ConverterState.STOPPED_UNSETTLED) {
                unsettled.add(element);
            }
        }
        return unsettled.isEmpty() ? List.of() : List.of(new Finding.Unsettled(List.copyOf(unsettled)));
    }
}
