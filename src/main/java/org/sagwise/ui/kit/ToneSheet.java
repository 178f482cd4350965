package org.sagwise.ui.kit;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.sagwise.picture.look.Theme;
import org.sagwise.picture.look.Tone;
import org.sagwise.picture.pen.Colour;

/**
 * The colours of the painters as looked-up colours for style sheets, so that window and pictures
 * take them from one place.
 */
final class ToneSheet {

    private static final Map<String, Tone> NAMES = names();

    private ToneSheet() {}

    private static Map<String, Tone> names() {
        Map<String, Tone> names = new LinkedHashMap<>();
        names.put("paper", Tone.PAPER);
        names.put("line", Tone.PAPER_EDGE);
        names.put("felt", Tone.FELT);
        names.put("ink", Tone.INK);
        names.put("quiet", Tone.MUTED);
        names.put("give", Tone.CLIMB);
        names.put("present", Tone.CLIMB_GROUND);
        names.put("lose", Tone.SAG);
        names.put("card", Tone.LEVEL_GROUND);
        names.put("fire", Tone.BUTTON);
        names.put("flag", Tone.FLAG);
        names.put("note", Tone.NOTE);
        names.put("note-line", Tone.NOTE_EDGE);
        names.put("focus", Tone.CHOSEN);
        return names;
    }

    /** Every looked-up colour, without its prefix, with the colour that it is in a theme. */
    static Map<String, Colour> colours(Theme theme) {
        Map<String, Colour> colours = new LinkedHashMap<>();
        NAMES.forEach((name, tone) -> colours.put(name, theme.colour(tone)));
        return colours;
    }

    /** The declarations of the root. */
    static String declarations(Theme theme) {
        return colours(theme).entrySet().stream()
                .map(each -> "-sw-" + each.getKey() + ": " + web(each.getValue()) + ";")
                .collect(Collectors.joining(" "));
    }

    private static String web(Colour colour) {
        return String.format(Locale.ROOT, "#%02x%02x%02x", colour.red(), colour.green(), colour.blue());
    }
}
