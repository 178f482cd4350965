package org.sagwise.report.pen;

import java.util.Optional;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.geometry.Line;
import org.sagwise.picture.geometry.Oval;
import org.sagwise.picture.geometry.Path;
import org.sagwise.picture.geometry.Round;
import org.sagwise.picture.geometry.Shape;
import org.sagwise.picture.geometry.Transform;
import org.sagwise.picture.pen.Align;
import org.sagwise.picture.pen.Colour;
import org.sagwise.picture.pen.Face;
import org.sagwise.picture.pen.Pen;
import org.sagwise.picture.pen.Stroke;
import org.sagwise.picture.pen.Typeface;
import org.sagwise.text.Printable;

/**
 * Draws as text of SVG 1.1, an element a stroke, in no more than one line each. Nothing has an id and
 * nothing is fetched, so that several pictures can stand in one page, and any of them alone.
 *
 * <p>Text stays text: it can be searched, copied and read aloud. Since the reader may not have our
 * typeface, other families stand behind ours, and every text carries the width it was laid out with.
 * Who does not know that width still has it from the right end or about the middle.
 */
public final class SvgPen implements Pen {

    private static final String FAMILIES = "'" + Typeface.FAMILY + "', 'Source Sans Pro', Arial, Helvetica,"
            + " 'Liberation Sans', 'Noto Sans', 'DejaVu Sans', sans-serif";

    /** Whole numbers below this are written without the long ones of Java, which are slow in a browser. */
    private static final int MOST = 1_000_000_000;

    private final StringBuilder out = new StringBuilder();
    private final int unit;
    private final Letters letters;

    /** Draws letters as outlines. */
    public interface Letters {

        /**
         * The outlines of a text as the data of a path; empty to leave it to the reader's typefaces.
         *
         * @param x of its left end
         * @param y of the baseline
         * @param lengths how lengths are written
         */
        Optional<String> drawn(String text, double x, double y, Face face, Lengths lengths);
    }

    /** How lengths are written. */
    public interface Lengths {
        String say(double length);
    }

    /** @param decimals how many decimals of a length are written */
    public SvgPen(int decimals) {
        this(decimals, (text, x, y, face, lengths) -> Optional.empty());
    }

    /**
     * A pen whose letters look the same to every reader, also to one that has not our typeface and knows nothing of a
     * text's width. The text itself lies over them unseen, to be searched, copied and read aloud.
     *
     * @param decimals how many decimals of a length are written
     * @param letters draws what is seen of them
     */
    public SvgPen(int decimals, Letters letters) {
        this.unit = (int) Math.round(Math.pow(10, decimals));
        this.letters = letters;
    }

    /**
     * The picture.
     *
     * @param attributes what else the root element says
     * @param title its name, as plain text; empty for none
     */
    public String svg(int width, int height, String attributes, String title) {
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 " + width + " " + height + "\"" + attributes
                + " xml:space=\"preserve\" text-rendering=\"geometricPrecision\""
                + " fill=\"none\" stroke-linecap=\"round\" stroke-linejoin=\"round\""
                + " font-family=\"" + FAMILIES + "\">\n"
                + (title.isEmpty() ? "" : "<title>" + escaped(title) + "</title>\n")
                + out
                + "</svg>\n";
    }

    @Override
    public void fill(Shape shape, Colour colour) {
        out.append('<');
        outline(shape);
        colour(" fill", colour);
        out.append("/>\n");
    }

    @Override
    public void stroke(Shape shape, Stroke stroke, Colour colour) {
        out.append('<');
        outline(shape);
        colour(" stroke", colour);
        attribute(" stroke-width=\"", stroke.width());
        if (stroke.ends() == Stroke.Ends.BLUNT) {
            out.append(" stroke-linecap=\"butt\"");
        }
        if (!stroke.dashes().isEmpty()) {
            out.append(" stroke-dasharray=\"");
            for (int i = 0; i < stroke.dashes().size(); i++) {
                out.append(i == 0 ? "" : " ");
                number(stroke.dashes().get(i));
            }
            out.append('"');
        }
        out.append("/>\n");
    }

    @Override
    public void text(String text, double x, double y, Align align, Face face, Colour colour) {
        Optional<String> drawn = letters.drawn(text, face.left(text, x, align), y, face, this::said);
        drawn.ifPresent(path -> {
            out.append("<path d=\"").append(path).append('"');
            colour(" fill", colour);
            out.append("/>\n");
        });
        out.append("<text");
        attribute(" x=\"", x);
        attribute(" y=\"", y);
        if (align != Align.LEFT) {
            out.append(align == Align.MIDDLE ? " text-anchor=\"middle\"" : " text-anchor=\"end\"");
        }
        attribute(" font-size=\"", face.size());
        if (face.weight() == Typeface.Weight.BOLD) {
            out.append(" font-weight=\"bold\"");
        }
        if (drawn.isPresent()) {
            out.append(" fill=\"#000\" fill-opacity=\"0\"");
        } else {
            colour(" fill", colour);
        }
        attribute(" textLength=\"", face.width(text));
        out.append(" lengthAdjust=\"spacingAndGlyphs\">").append(escaped(text)).append("</text>\n");
    }

    @Override
    public void within(Transform frame, Runnable drawing) {
        StringBuilder steps = new StringBuilder();
        if (frame.dx() != 0 || frame.dy() != 0) {
            steps.append("translate(" + said(frame.dx()) + " " + said(frame.dy()) + ") ");
        }
        if (frame.quarters() != 0) {
            steps.append("rotate(" + 90 * frame.quarters() + ") ");
        }
        if (frame.scale() != 1) {
            steps.append("scale(" + exact(frame.scale()) + ") ");
        }
        if (steps.isEmpty()) {
            drawing.run();
        } else {
            group("<g transform=\"" + steps.toString().strip() + "\">\n", "</g>\n", drawing);
        }
    }

    /** A picture in the picture: what it cuts off needs no path with an id. */
    @Override
    public void clipped(Box area, Runnable drawing) {
        String view = said(area.x()) + " " + said(area.y()) + " " + said(area.width()) + " " + said(area.height());
        int before = out.length();
        out.append("<svg");
        place(area);
        String begin = out.substring(before) + " viewBox=\"" + view + "\">\n";
        out.setLength(before);
        group(begin, "</svg>\n", drawing);
    }

    private void group(String begin, String end, Runnable drawing) {
        int before = out.length();
        out.append(begin);
        int empty = out.length();
        drawing.run();
        if (out.length() == empty) {
            out.setLength(before);
        } else {
            out.append(end);
        }
    }

    private void outline(Shape shape) {
        if (shape instanceof Box box) {
            out.append("rect");
            place(box);
        } else if (shape instanceof Round round) {
            out.append("rect");
            place(round.box());
            attribute(" rx=\"", round.radius());
        } else if (shape instanceof Oval oval) {
            boolean isCircle = oval.radiusX() == oval.radiusY();
            out.append(isCircle ? "circle" : "ellipse");
            attribute(" cx=\"", oval.x());
            attribute(" cy=\"", oval.y());
            attribute(isCircle ? " r=\"" : " rx=\"", oval.radiusX());
            if (!isCircle) {
                attribute(" ry=\"", oval.radiusY());
            }
        } else if (shape instanceof Line line) {
            out.append("line");
            attribute(" x1=\"", line.x1());
            attribute(" y1=\"", line.y1());
            attribute(" x2=\"", line.x2());
            attribute(" y2=\"", line.y2());
        } else {
            out.append("path d=\"");
            ((Path) shape).walk(new SvgPath());
            out.append('"');
        }
    }

    private void place(Box box) {
        attribute(" x=\"", box.x());
        attribute(" y=\"", box.y());
        attribute(" width=\"", box.width());
        attribute(" height=\"", box.height());
    }

    /** @param name with what stands before and behind it: one piece is put together quicker than three */
    private void attribute(String name, double value) {
        out.append(name);
        number(value);
        out.append('"');
    }

    private void colour(String name, Colour colour) {
        out.append(name).append("=\"").append(colour.hex()).append('"');
        if (colour.alpha() != 255) {
            out.append(name).append("-opacity=\"");
            round(colour.alpha() / 255.0, 1000, out);
            out.append('"');
        }
    }

    private void number(double value) {
        round(value, unit, out);
    }

    private String said(double value) {
        StringBuilder said = new StringBuilder();
        round(value, unit, said);
        return said.toString();
    }

    /** A factor, which many lengths may be multiplied with. */
    private static String exact(double factor) {
        StringBuilder said = new StringBuilder();
        round(factor, 1_000_000, said);
        return said.toString();
    }

    /** In decimals, the same in every country, without zeros that say nothing. A picture has thousands of them. */
    private static void round(double value, int unit, StringBuilder to) {
        double scaled = Math.abs(value) * unit;
        if (scaled < MOST) {
            int parts = (int) Math.round(scaled);
            write(value < 0 && parts > 0, parts / unit, parts % unit, unit, to);
        } else {
            long parts = Math.round(scaled);
            write(value < 0 && parts > 0, parts / unit, (int) (parts % unit), unit, to);
        }
    }

    private static void write(boolean isBelow, long whole, int parts, int unit, StringBuilder to) {
        if (isBelow) {
            to.append('-');
        }
        if (whole < MOST) {
            to.append((int) whole);
        } else {
            to.append(whole);
        }
        int rest = parts;
        if (rest > 0) {
            to.append('.');
        }
        for (int digit = unit / 10; rest > 0; digit /= 10) {
            to.append((char) ('0' + rest / digit));
            rest %= digit;
        }
    }

    /** What makes text run the other way is shown as a question mark, here as on a terminal. */
    private static String escaped(String text) {
        return Printable.print(text).replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }

    /** A path as its attribute says it. */
    private final class SvgPath implements Path.Walker {

        @Override
        public void moveTo(double x, double y) {
            add('M', x, y);
        }

        @Override
        public void lineTo(double x, double y) {
            add('L', x, y);
        }

        @Override
        public void quadTo(double controlX, double controlY, double x, double y) {
            add('Q', controlX, controlY, x, y);
        }

        @Override
        public void curveTo(
                double control1X, double control1Y, double control2X, double control2Y, double x, double y) {
            add('C', control1X, control1Y, control2X, control2Y, x, y);
        }

        @Override
        public void close() {
            out.append('Z');
        }

        private void add(char step, double... places) {
            for (int i = 0; i < places.length; i++) {
                out.append(i == 0 ? step : ' ');
                number(places[i]);
            }
        }
    }
}
