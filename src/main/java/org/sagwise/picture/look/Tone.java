package org.sagwise.picture.look;

import org.sagwise.picture.pen.Colour;

/**
 * Every colour of the program but the two published scales, by what it is for: light theme, dark
 * theme, high contrast. The safety colours of ANSI Z535.1 are not among them; they are kept for
 * messages about real devices.
 */
public enum Tone {
    /** The felt on which the bench lies. */
    FELT(0xDEE4E0, 0x2A2F33, 0xFFFFFF),
    /** Its stitched seam. */
    SEAM(0xBECAC3, 0x454D53, 0x000000),
    /** The grid that shows while something is moved. */
    GRID(0xCCD5CF, 0x383F45, 0xBFBFBF),
    /** Cards, charts, housings. */
    PAPER(0xFCFDFC, 0x20252A, 0xFFFFFF),
    PAPER_EDGE(0xC3CBC6, 0x4A535A, 0x000000),
    /** Housings of buttons, boards and instruments. */
    HOUSING(0xFCFDFC, 0x434C53, 0xFFFFFF),
    /** Text and outlines. */
    INK(0x1B2932, 0xEEF2EF, 0x000000),
    /** Text that stands back. */
    MUTED(0x48565E, 0xB6C0C4, 0x1F1F1F),
    /** Outline of parts. */
    EDGE(0x1B2932, 0x0D1113, 0x000000),
    /** Outline of conductors. */
    CONDUCTOR_EDGE(0x1B2932, 0xD5DDDE, 0x000000),
    /** What a part casts on the felt. */
    SHADOW(0xB9C4BD, 0x1C2023, 0xFFFFFF),
    /** A cell's sleeve. */
    WRAP(0x586870, 0x5F6F78, 0xFFFFFF),
    WRAP_LIGHT(0x65757D, 0x6C7D86, 0xFFFFFF),
    WRAP_INK(0xFFFFFF, 0xFFFFFF, 0x000000),
    /** Button ends, plates, posts. */
    METAL(0xC9D0D2, 0xAAB4B9, 0xE2E2E2),
    METAL_LIGHT(0xE9EDEE, 0xCBD3D6, 0xFFFFFF),
    METAL_DARK(0x8C979C, 0x7A868C, 0x8A8A8A),
    /** What a cell still gives. */
    LEVEL(0x23676A, 0x4FA6A2, 0x00524E),
    LEVEL_GROUND(0xF1F4F1, 0x191D20, 0xFFFFFF),
    /** Lost inside a cell. */
    SAG(0x964213, 0xF3AA74, 0x7A2E00),
    SAG_GROUND(0xF7E6D7, 0x46301F, 0xFFFFFF),
    /** Lost on the way. */
    DROP(0x2C5884, 0x93BDEB, 0x003A75),
    DROP_GROUND(0xDCE8F4, 0x22374C, 0xFFFFFF),
    /** What the coil takes. */
    LOAD(0x6F4E12, 0xE3C48A, 0x3D2B00),
    LOAD_GROUND(0xF3E2BD, 0x4B3D20, 0xFFF6DE),
    /** Rest voltage in the staircase. */
    CLIMB(0x23676A, 0x7CC7C2, 0x00524E),
    CLIMB_GROUND(0xD3E5E3, 0x1E3B3C, 0xFFFFFF),
    /** The cap of the thumb button. */
    BUTTON(0xA8511E, 0xD98A55, 0x7A2E00),
    /** Ceramic of coils' posts and resistors. */
    CERAMIC(0xF4EFE4, 0xC9C0AE, 0xFFFFFF),
    /** Our flag, where a caution speaks of a part. */
    FLAG(0x86185A, 0xF09CCB, 0x6B0045),
    FLAG_INK(0xFFFFFF, 0x20252A, 0xFFFFFF),
    /** Notes on the bench. */
    NOTE(0xFBF5E1, 0x3B3626, 0xFFFFEE),
    NOTE_EDGE(0xC2B280, 0x7D7350, 0x000000),
    /** What is chosen, focused or pointed at. */
    CHOSEN(0x1A5DB8, 0x86BDFF, 0x0000E0),
    /** The two probes of a meter. */
    PROBE_RED(0xA02F3F, 0xE88794, 0x8F0018),
    PROBE_BLACK(0x242A2E, 0x0D1113, 0x000000);

    private final Colour light;
    private final Colour dark;
    private final Colour highContrast;

    Tone(int light, int dark, int highContrast) {
        this.light = Colour.of(light);
        this.dark = Colour.of(dark);
        this.highContrast = Colour.of(highContrast);
    }

    Colour in(Theme theme) {
        return switch (theme) {
            case LIGHT -> light;
            case DARK -> dark;
            case HIGH_CONTRAST -> highContrast;
        };
    }
}
