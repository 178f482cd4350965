package org.sagwise.network;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.sagwise.network.Element.CurrentSource;
import org.sagwise.network.Element.Resistance;
import org.sagwise.network.Element.Source;

/**
 * Random networks without contradictions: resistances, joints, cells, ideal and current sources.
 */
final class RandomNetworks {
    private final Random random;
    private final double fewestOhm;
    private final double mostOhm;

    /** The same seed gives the same networks; resistances lie between the two given. */
    RandomNetworks(long seed, double fewestOhm, double mostOhm) {
        random = new Random(seed);
        this.fewestOhm = fewestOhm;
        this.mostOhm = mostOhm;
    }

    /** Resistances and cells only, possibly in several islands. */
    Network cellsAndResistances(int nodes) {
        List<Element> elements = new ArrayList<>();
        int count = 1 + random.nextInt(3 * nodes);
        for (int i = 0; i < count; i++) {
            int a = random.nextInt(nodes);
            int b = random.nextInt(nodes);
            elements.add(random.nextInt(3) == 0 ? new Source(a, b, emfV(), ohm()) : ohms(a, b));
        }
        return new Network(nodes, elements, List.of(random.nextInt(nodes)));
    }

    /** All kinds of linear elements; ideal branches close no loop among themselves. */
    Network everything(int nodes) {
        Network plain = cellsAndResistances(nodes);
        List<Element> elements = new ArrayList<>(plain.elements());
        DisjointSets ideal = new DisjointSets(nodes);
        DisjointSets joined = new DisjointSets(nodes);
        for (Element element : elements) {
            joined.join(element.nodes().get(0), element.nodes().get(1));
        }
        for (int i = 0; i < nodes / 2; i++) {
            int a = random.nextInt(nodes);
            int b = random.nextInt(nodes);
            if (ideal.join(a, b)) {
                joined.join(a, b);
                elements.add(random.nextBoolean() ? new Resistance(a, b, 0) : new Source(a, b, emfV(), 0));
            }
        }
        addCurrentSources(nodes, joined, elements);
        return new Network(nodes, elements, plain.referencePreference());
    }

    private void addCurrentSources(int nodes, DisjointSets joined, List<Element> elements) {
        for (int i = 0; i < nodes / 4; i++) {
            int a = random.nextInt(nodes);
            int b = random.nextInt(nodes);
            if (joined.find(a) == joined.find(b)) {
                elements.add(new CurrentSource(a, b, emfV()));
            }
        }
    }

    private Resistance ohms(int a, int b) {
        return new Resistance(a, b, ohm());
    }

    private double ohm() {
        double least = Math.log(fewestOhm);
        return Math.exp(least + random.nextDouble() * (Math.log(mostOhm) - least));
    }

    private double emfV() {
        return random.nextInt(4) == 0 ? 4.2 : 10 * random.nextDouble() - 5;
    }
}
