package org.sagwise.picture.look;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Font;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.sagwise.picture.pen.Colour;
import org.sagwise.picture.pen.Face;
import org.sagwise.picture.pen.Typeface;
import org.sagwise.report.pen.Fonts;

/** Colours that must be read or seen stand out enough from what they stand on. */
class ThemeTest {

    private static final Map<Tone, List<Tone>> TEXT_ON_GROUND = Map.of(
            Tone.INK,
            List.of(
                    Tone.FELT,
                    Tone.PAPER,
                    Tone.HOUSING,
                    Tone.NOTE,
                    Tone.LEVEL_GROUND,
                    Tone.LOAD_GROUND,
                    Tone.CLIMB_GROUND,
                    Tone.SAG_GROUND,
                    Tone.DROP_GROUND),
            Tone.MUTED,
            List.of(Tone.FELT, Tone.PAPER, Tone.HOUSING),
            Tone.SAG,
            List.of(Tone.FELT, Tone.PAPER, Tone.SAG_GROUND),
            Tone.DROP,
            List.of(Tone.FELT, Tone.PAPER, Tone.DROP_GROUND),
            Tone.LOAD,
            List.of(Tone.FELT, Tone.PAPER, Tone.LOAD_GROUND),
            Tone.CLIMB,
            List.of(Tone.FELT, Tone.PAPER, Tone.CLIMB_GROUND),
            Tone.FLAG,
            List.of(Tone.FELT, Tone.PAPER),
            Tone.FLAG_INK,
            List.of(Tone.FLAG),
            Tone.WRAP_INK,
            List.of(Tone.WRAP),
            Tone.CHOSEN,
            List.of(Tone.FELT, Tone.PAPER));

    @ParameterizedTest
    @EnumSource(Theme.class)
    void colour_ofText_standsOutFromItsGround(Theme theme) {
        TEXT_ON_GROUND.forEach((text, grounds) -> grounds.forEach(ground -> {
            double contrast = Contrast.between(theme.colour(text), theme.colour(ground));
            assertTrue(contrast >= Contrast.TEXT, theme + ": " + text + " on " + ground + " " + contrast);
        }));
    }

    @ParameterizedTest
    @EnumSource(Theme.class)
    void conductorEdge_onFelt_isSeen(Theme theme) {
        double contrast = Contrast.between(theme.colour(Tone.CONDUCTOR_EDGE), theme.colour(Tone.FELT));
        assertTrue(contrast >= Contrast.GRAPHICS, theme + " " + contrast);
    }

    /** Black on white is 21:1, by the definition of the ratio; grey 767676 on white is 4.54:1. */
    @Test
    void between_knownPairs_isAsDefined() {
        assertEquals(21, Contrast.between(Colour.BLACK, Colour.WHITE), 1e-9);
        assertEquals(4.54, Contrast.between(Colour.of(0x767676), Colour.WHITE), 0.005);
    }

    /** The table of 256 colours at places that lie between those kept here. */
    @Test
    void at_placesOfThePublishedTable_isNearIt() {
        check(ColourScale.INFERNO, 45, 0x380962);
        check(ColourScale.INFERNO, 100, 0x902568);
        check(ColourScale.INFERNO, 155, 0xDF5337);
        check(ColourScale.INFERNO, 210, 0xFCB014);
        check(ColourScale.CIVIDIS, 45, 0x2E416D);
        check(ColourScale.CIVIDIS, 100, 0x656870);
        check(ColourScale.CIVIDIS, 155, 0x969077);
        check(ColourScale.CIVIDIS, 210, 0xCFBD62);
    }

    private static void check(ColourScale scale, int place, int published) {
        Colour expected = Colour.of(published);
        Colour found = scale.at(place / 255.0);
        assertEquals(expected.red(), found.red(), 6, scale + " red " + place);
        assertEquals(expected.green(), found.green(), 6, scale + " green " + place);
        assertEquals(expected.blue(), found.blue(), 6, scale + " blue " + place);
    }

    @ParameterizedTest
    @EnumSource(ColourScale.class)
    void at_growingShare_growsBrighter(ColourScale scale) {
        double before = -1;
        for (int i = 0; i <= 32; i++) {
            double luminance = Contrast.luminance(scale.at(i / 32.0));
            assertTrue(luminance > before, scale + " at " + i);
            before = luminance;
        }
        assertEquals(scale.at(0), scale.at(-3));
        assertEquals(scale.at(1), scale.at(7));
    }

    @Test
    void boldTypeface_isBoldAndWiderThanRegular() {
        Font bold = Fonts.of(new Face(Typeface.Weight.BOLD, 12));
        assertEquals(Typeface.FAMILY, bold.getFamily());
        assertTrue(bold.isBold());
        assertNotEquals(
                Typeface.width("16.5 W", Typeface.Weight.BOLD, 12),
                Typeface.width("16.5 W", Typeface.Weight.REGULAR, 12));
    }
}
