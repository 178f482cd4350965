package org.sagwise.picture.look;

import org.sagwise.picture.pen.Colour;

/**
 * A published colour scale: even steps of a quantity look like even steps of colour, in print and
 * to colour-blind eyes too.
 *
 * <p>Each is kept as 33 colours at even distances of its published table of 256, with straight
 * lines between, which stays within 6 of 255 of the table in every channel.
 */
public enum ColourScale {
    /**
     * From dark blue to yellow, for potential. J. R. Nuñez, C. R. Anderton, R. S. Renslow,
     * "Optimizing colormaps with consideration for color vision deficiency to enable accurate
     * interpretation of scientific data", PLOS ONE 13(7): e0199239 (2018), supporting tables.
     */
    CIVIDIS("00224E 00285B 002E6A 053371 1A386F 273E6E 32436D 3B496C 434E6C 4B546C 535A6D 5A5F6E"
            + " 61656F 686A71 6F7073 767676 7D7C78 838179 8B8778 928D78 9A9376 A29975"
            + " AAA073 B3A670 BBAD6D C3B369 CCBA64 D4C15F DDC858 E6D051 EFD748 F8DF3C"
            + " FEE838"),
    /**
     * From black through red to pale yellow, for heat. N. Smith and S. van der Walt, "A better
     * default colormap for Matplotlib", SciPy 2015; table given to the public domain (CC0).
     */
    INFERNO("000004 040312 0B0724 150B37 210C4A 2F0A5B 3D0965 4A0C6B 57106E 64156E 71196E 7D1E6D"
            + " 8A226A 972766 A32C61 B0315B BC3754 C63D4D D04545 DA4E3C E35933 EB6429"
            + " F1711F F67E14 F98C0A FB9B06 FCAA0F FBBA1F F9C932 F5D949 F2E865 F3F586"
            + " FCFFA4");

    private final Colour[] colours;

    ColourScale(String table) {
        String[] words = table.split(" ");
        colours = new Colour[words.length];
        for (int i = 0; i < words.length; i++) {
            colours[i] = Colour.of(Integer.parseInt(words[i], 16));
        }
    }

    /**
     * The colour at a share of the scale.
     *
     * @param share 0 for its dark end to 1 for its bright one; what lies outside is cut off
     */
    public Colour at(double share) {
        double place = Math.max(0, Math.min(1, share)) * (colours.length - 1);
        int below = Math.min((int) place, colours.length - 2);
        double rest = place - below;
        return new Colour(
                between(colours[below].red(), colours[below + 1].red(), rest),
                between(colours[below].green(), colours[below + 1].green(), rest),
                between(colours[below].blue(), colours[below + 1].blue(), rest),
                255);
    }

    private static int between(int from, int to, double share) {
        return (int) Math.round(from + share * (to - from));
    }
}
