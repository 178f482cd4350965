package org.sagwise.network;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * How each charger, converter and one-way element of a network stands while their common state is sought: which of
 * its sides is driven, and how hard. Immutable; elements are named by their index.
 */
final class Stance {

    /**
     * Resistance (Ω) behind the regulated terminals of a charger. It lets two of them
     * stand side by side, or against an ideal source, without contradiction; the emf behind it is
     * raised by its drop, so that the terminals themselves stand at the regulated voltage.
     */
    static final double OUTPUT_OHM = 1e-9;

    /**
     * The same behind the output of a converter. Of two side by side the small current of one follows from a difference
     * of emfs: a thousand times more, and its last bit is half a nanoampere and not half a microampere.
     */
    static final double BOARD_OHM = 1e-6;

    /**
     * Resistance (Ω) through which a blocking one-way element leaks while its state is sought, so
     * that a node between two of them has a potential; far above the 10 MΩ of a voltmeter.
     */
    static final double LEAK_OHM = 1e12;

    /** What a one-way element does; it leaks only while the states of all are sought. */
    enum Way {
        CONDUCTS,
        LEAKS,
        BLOCKS
    }

    /** A charger: its state and, at constant voltage, the emf behind its output resistance (V). */
    record Charger(ChargerState state, double emfV) {}

    /**
     * A converter: its state, the branch of its output, the input current it draws (A), whether its
     * output is on, and then the emf behind its output resistance (V).
     */
    record Converter(ConverterState state, int outputBranch, double inputA, boolean outputOn, double emfV) {

        Converter driving(ConverterState now, double ampere, double volt) {
            return new Converter(now, outputBranch, ampere, true, volt);
        }

        Converter halted(ConverterState why) {
            return new Converter(why, outputBranch, 0, false, 0);
        }
    }

    private final List<Integer> chargerElements;
    private final List<Integer> converterElements;
    private final Charger[] chargers;
    private final Converter[] converters;
    private final Way[] ways;

    private Stance(
            List<Integer> chargerElements,
            List<Integer> converterElements,
            Charger[] chargers,
            Converter[] converters,
            Way[] ways) {
        this.chargerElements = chargerElements;
        this.converterElements = converterElements;
        this.chargers = chargers;
        this.converters = converters;
        this.ways = ways;
    }

    /**
     * Chargers at their limit voltage; converters at their highest output voltage, drawing nothing;
     * one-way elements conducting.
     */
    static Stance initial(Network network) {
        int count = network.elements().size();
        List<Integer> chargerElements = new ArrayList<>();
        List<Integer> converterElements = new ArrayList<>();
        Charger[] chargers = new Charger[count];
        Converter[] converters = new Converter[count];
        Way[] ways = new Way[count];
        for (int i = 0; i < count; i++) {
            Element element = network.elements().get(i);
            if (element instanceof Element.LimitedSource s) {
                chargerElements.add(i);
                chargers[i] = new Charger(ChargerState.CONSTANT_VOLTAGE, s.limitV());
            } else if (element instanceof Element.Converter c) {
                int output = count + converterElements.size();
                converterElements.add(i);
                converters[i] = new Converter(ConverterState.IDLE, output, 0, true, c.outMaxV());
            } else if (element instanceof Element.OneWay) {
                ways[i] = Way.CONDUCTS;
            }
        }
        return new Stance(chargerElements, converterElements, chargers, converters, ways);
    }

    List<Integer> chargerElements() {
        return chargerElements;
    }

    List<Integer> converterElements() {
        return converterElements;
    }

    Charger charger(int element) {
        return chargers[element];
    }

    Converter converter(int element) {
        return converters[element];
    }

    /** What a one-way element does; null for any other. */
    Way way(int element) {
        return ways[element];
    }

    /** Indices of the one-way elements, in ascending order. */
    List<Integer> oneWayElements() {
        return IntStream.range(0, ways.length)
                .filter(i -> ways[i] != null)
                .boxed()
                .toList();
    }

    Stance with(int element, Way way) {
        Way[] changed = ways.clone();
        changed[element] = way;
        return new Stance(chargerElements, converterElements, chargers, converters, changed);
    }

    Stance with(int element, Charger charger) {
        Charger[] changed = chargers.clone();
        changed[element] = charger;
        return new Stance(chargerElements, converterElements, changed, converters, ways);
    }

    Stance with(int element, Converter converter) {
        Converter[] changed = converters.clone();
        changed[element] = converter;
        return new Stance(chargerElements, converterElements, chargers, changed, ways);
    }
}
