package org.sagwise.words;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/** Lines that somebody might write, from a seed: any cells, loads, joints and guards, in both languages. */
final class RandomLines {

    private static final String[] LAYOUTS = {
        "1s", "2p", "3p", "2s", "3s", "2s2p", "3s2p", "4p", "2 cells in a row", "3 Zellen parallel"
    };
    private static final String[] CELLS = {
        "inr18650-2500-20A",
        "2500 mAh 20 A",
        "3000 mAh 35 mohm",
        "ICR 2600 mAh 5 A 65 mΩ",
        "21700 4000 mAh 30 A 14 mohm",
        "laptop cells",
        "1100 mAh 9 A 18350",
        "IFR 26650 2600 mAh 12 mohm 30 A"
    };
    private static final String[] STATES = {
        "full",
        "voll",
        "90 %",
        "at 3.9 V",
        "bei 41 %",
        "worn 80 %",
        "45 °C",
        "in a sled",
        "label 35 A",
        "cut-off 3 V",
        "protected 8 A",
        "torn wrap",
        "pulse 40 A 4 s",
        "empty"
    };
    private static final String[] COILS = {
        "coil 0.5",
        "Wicklung 1.2",
        "coil 0.35 ohm 60 W",
        "2 coils 0.8",
        "coil 0.4 0.6 in a row",
        "dual coil 1 side by side",
        "coil fecral 24awg 8 wraps",
        "coil nicr 2x26awg 6 wraps inner 2.5 mm legs 10 mm",
        "Wicklung Edelstahl 0.4 mm dick 9 Windungen",
        "3 Wicklungen 1.5 nebeneinander"
    };
    private static final String[] REST = {
        "wire 18awg 60mm",
        "Draht 26awg 150 mm",
        "wire 1.5 mm²",
        "minus wire 26awg 150mm",
        "coil wire 0.8 mm thick 40 mm",
        "contacts clip",
        "contacts 7 mohm",
        "Kontakte Feder",
        "coil joint loose 150 mohm",
        "minus joint dirty",
        "A joint loose",
        "A joint 90 mohm",
        "button worn",
        "button 12 mohm",
        "no button",
        "Taster klemmt zu",
        "transistor",
        "fuse 15 A",
        "fuse fuse-10A",
        "fuse 5 A blown",
        "resettable fuse 5 A",
        "reverse guard",
        "reverse guard diode 10 A",
        "reverse guard behind each cell",
        "board 40 W cut-off 3.2 V 16 A",
        "board board-75W-1s",
        "charger 1 A",
        "short coil 10 mohm",
        "paper clip across pack",
        "cold −10 °C",
        "ambient 35 °C",
        "ideal joints",
        "held",
        "A reversed",
        "A at 30 %",
        "A re-wrapped",
        "A inr18650-2000-30A",
        "A worn 70 %"
    };

    private RandomLines() {}

    static String of(long seed) {
        Random random = new Random(seed);
        List<String> clauses = new ArrayList<>();
        String cells = any(LAYOUTS, random) + " " + any(CELLS, random);
        clauses.add(random.nextBoolean() ? cells + " " + any(STATES, random) : cells);
        if (random.nextInt(6) > 0) {
            clauses.add(any(COILS, random));
        }
        List<String> rest = new ArrayList<>(List.of(REST));
        Collections.shuffle(rest, random);
        clauses.addAll(rest.subList(0, random.nextInt(5)));
        Collections.shuffle(clauses, random);
        return String.join("; ", clauses);
    }

    private static String any(String[] from, Random random) {
        return from[random.nextInt(from.length)];
    }
}
