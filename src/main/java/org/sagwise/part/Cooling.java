package org.sagwise.part;

import java.util.Arrays;
import java.util.List;

/** In what a cell lies, and so how it loses heat: convection and radiation together. */
public enum Cooling {
    /** Bare in still air: 5–15 W/(m²·K) is usual. From memory, no source at hand. */
    STILL_AIR("still-air", 10),
    /**
     * In the moving air of a test chamber. So chosen that the energy of a 3.0 Ah NMC 18650 at 3.87
     * to 19.34 A comes out as measured (open data of the Battery Testing Consortium, Oxford Brookes
     * University, 2021–22); forced air: 20–100, from memory, no source at hand. Cells are rated in
     * such air.
     */
    MOVING_AIR("moving-air", 50),
    /** In an open sled that covers a third of it: teaching value. */
    SLED("sled", 7),
    /** In a closed tube, air between: teaching value. */
    TUBE("tube", 5);

    private final String word;
    private final double wPerM2K;

    Cooling(String word, double wPerM2K) {
        this.word = word;
        this.wPerM2K = wPerM2K;
    }

    /** What a file calls it. */
    public String word() {
        return word;
    }

    /** Heat lost for each degree above the air and square metre (W/(m²·K)). */
    public double wPerM2K() {
        return wPerM2K;
    }

    /** All words a file may use. */
    static String[] words() {
        return Arrays.stream(values()).map(Cooling::word).toArray(String[]::new);
    }

    /**
     * The cooling that a file calls by this word.
     *
     * @throws IllegalArgumentException if there is none
     */
    public static Cooling of(String word) {
        return List.of(values()).stream()
                .filter(cooling -> cooling.word.equals(word))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no cooling " + word));
    }
}
