package org.sagwise.picture.pen;

/** A colour of sRGB, its channels and its opacity from 0 to 255. */
public record Colour(int red, int green, int blue, int alpha) {

    public static final Colour WHITE = of(0xFFFFFF);
    public static final Colour BLACK = of(0);

    private static final double DARKER = 0.7;

    /** An opaque colour from {@code 0xRRGGBB}. */
    public static Colour of(int rgb) {
        return new Colour(rgb >> 16 & 0xFF, rgb >> 8 & 0xFF, rgb & 0xFF, 255);
    }

    public Colour withAlpha(int newAlpha) {
        return new Colour(red, green, blue, newAlpha);
    }

    public Colour darker() {
        return new Colour((int) (red * DARKER), (int) (green * DARKER), (int) (blue * DARKER), alpha);
    }

    /** As style sheets and SVG write it, without its opacity: {@code #rrggbb}. */
    public String hex() {
        String digits = Integer.toHexString(0x1000000 | red << 16 | green << 8 | blue);
        return "#" + digits.substring(1);
    }
}
