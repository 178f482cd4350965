package org.sagwise.report.picture;

import com.google.zxing.qrcode.encoder.ByteMatrix;
import java.util.Locale;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.geometry.Path;
import org.sagwise.picture.look.TextStyle;
import org.sagwise.picture.look.Theme;
import org.sagwise.picture.look.ThemedPen;
import org.sagwise.picture.look.Tone;
import org.sagwise.picture.pen.Align;
import org.sagwise.picture.pen.Colour;
import org.sagwise.picture.pen.Pen;
import org.sagwise.text.Texts;

/**
 * A QR code with words above and below. Always black on white, whatever the theme: some readers
 * know no other.
 *
 * @param modules the code
 * @param title what it holds
 * @param locale language of the words
 */
record QrSheet(ByteMatrix modules, String title, Locale locale) implements Sheet {

    /** Empty modules around a code (ISO/IEC 18004: four). */
    private static final int QUIET = 4;

    private static final int WIDTH = 800;
    private static final int TOP = 84;
    private static final int EDGE = 24;

    PictureSize size() {
        double words = notice().wordsHigh() + EDGE;
        return new PictureSize(WIDTH, TOP + side() + (int) Math.ceil(words));
    }

    /** Whole pixels for a module, so that its edges are sharp. */
    private int module() {
        return WIDTH / (modules.getWidth() + 2 * QUIET);
    }

    private int side() {
        return module() * (modules.getWidth() + 2 * QUIET);
    }

    private NoticeFoot notice() {
        return NoticeFoot.of(locale, WIDTH - 2.0 * EDGE);
    }

    @Override
    public void paint(Pen surface) {
        ThemedPen pen = new ThemedPen(surface, Theme.LIGHT, 1);
        PictureSize size = size();
        pen.fill(new Box(0, 0, size.width(), size.height()), Colour.WHITE);
        Texts texts = Texts.in("picture", locale);
        double room = WIDTH - 2.0 * EDGE;
        String named = title.isBlank() ? texts.say("page.untitled") : title;
        pen.textWithin(named, EDGE, 40, room, TextStyle.TITLE, Tone.INK, Align.LEFT);
        pen.textWithin(texts.say("qr.hint"), EDGE, 68, room, TextStyle.PLAIN, Tone.MUTED, Align.LEFT);
        pen.fill(code(), Colour.BLACK);
        notice().write(pen, EDGE, TOP + side() + TextStyle.SMALL.lineHeight(1));
    }

    /** One shape of all dark modules, those of a row in one piece, so that no seams are seen. */
    private Path code() {
        Path.Builder dark = new Path.Builder();
        int left = (WIDTH - side()) / 2 + QUIET * module();
        int top = TOP + QUIET * module();
        for (int y = 0; y < modules.getHeight(); y++) {
            int x = 0;
            while (x < modules.getWidth()) {
                int end = x;
                while (end < modules.getWidth() && modules.get(end, y) == 1) {
                    end++;
                }
                if (end > x) {
                    double from = left + (double) x * module();
                    double to = left + (double) end * module();
                    double upper = top + (double) y * module();
                    double lower = upper + module();
                    dark.append(Path.polygon(from, upper, to, upper, to, lower, from, lower));
                }
                x = end + 1;
            }
        }
        return dark.build();
    }
}
