package org.sagwise.report.pen;

import java.util.Optional;
import java.util.stream.Collectors;
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

    private final StringBuilder out = new StringBuilder();
    private final long unit;
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
        this.unit = Math.round(Math.pow(10, decimals));
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
        element(shape, colour(" fill", colour));
    }

    @Override
    public void stroke(Shape shape, Stroke stroke, Colour colour) {
        String look = colour(" stroke", colour) + attribute("stroke-width", stroke.width());
        if (stroke.ends() == Stroke.Ends.BLUNT) {
            look += " stroke-linecap=\"butt\"";
        }
        if (!stroke.dashes().isEmpty()) {
            look += " stroke-dasharray=\""
                    + stroke.dashes().stream().map(this::number).collect(Collectors.joining(" ")) + "\"";
        }
        element(shape, look);
    }

    @Override
    public void text(String text, double x, double y, Align align, Face face, Colour colour) {
        Optional<String> drawn = letters.drawn(text, face.left(text, x, align), y, face, this::number);
        drawn.ifPresent(path -> out.append("<path d=\"")
                .append(path)
                .append('"')
                .append(colour(" fill", colour))
                .append("/>\n"));
        out.append("<text").append(attribute("x", x)).append(attribute("y", y));
        if (align != Align.LEFT) {
            out.append(align == Align.MIDDLE ? " text-anchor=\"middle\"" : " text-anchor=\"end\"");
        }
        out.append(attribute("font-size", face.size()));
        if (face.weight() == Typeface.Weight.BOLD) {
            out.append(" font-weight=\"bold\"");
        }
        out.append(drawn.isPresent() ? " fill=\"#000\" fill-opacity=\"0\"" : colour(" fill", colour))
                .append(attribute("textLength", face.width(text)))
                .append(" lengthAdjust=\"spacingAndGlyphs\">")
                .append(escaped(text))
                .append("</text>\n");
    }

    @Override
    public void within(Transform frame, Runnable drawing) {
        StringBuilder steps = new StringBuilder();
        if (frame.dx() != 0 || frame.dy() != 0) {
            steps.append("translate(" + number(frame.dx()) + " " + number(frame.dy()) + ") ");
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
        String view =
                number(area.x()) + " " + number(area.y()) + " " + number(area.width()) + " " + number(area.height());
        group("<svg" + place(area) + " viewBox=\"" + view + "\">\n", "</svg>\n", drawing);
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

    private void element(Shape shape, String look) {
        out.append('<').append(outline(shape)).append(look).append("/>\n");
    }

    private String outline(Shape shape) {
        if (shape instanceof Box box) {
            return "rect" + place(box);
        }
        if (shape instanceof Round round) {
            return "rect" + place(round.box()) + attribute("rx", round.radius());
        }
        if (shape instanceof Oval oval) {
            String middle = attribute("cx", oval.x()) + attribute("cy", oval.y());
            return oval.radiusX() == oval.radiusY()
                    ? "circle" + middle + attribute("r", oval.radiusX())
                    : "ellipse" + middle + attribute("rx", oval.radiusX()) + attribute("ry", oval.radiusY());
        }
        if (shape instanceof Line line) {
            return "line" + attribute("x1", line.x1()) + attribute("y1", line.y1()) + attribute("x2", line.x2())
                    + attribute("y2", line.y2());
        }
        SvgPath path = new SvgPath();
        ((Path) shape).walk(path);
        return "path d=\"" + path.drawn + "\"";
    }

    private String place(Box box) {
        return attribute("x", box.x())
                + attribute("y", box.y())
                + attribute("width", box.width())
                + attribute("height", box.height());
    }

    private String attribute(String name, double value) {
        return " " + name + "=\"" + number(value) + "\"";
    }

    private static String colour(String name, Colour colour) {
        String opaque = name + "=\"" + colour.hex() + "\"";
        return colour.alpha() == 255
                ? opaque
                : opaque + name + "-opacity=\"" + Math.round(1000 * colour.alpha() / 255.0) / 1000.0 + "\"";
    }

    private String number(double value) {
        return rounded(value, unit);
    }

    /** A factor, which many lengths may be multiplied with. */
    private static String exact(double factor) {
        return rounded(factor, 1_000_000);
    }

    /** In decimals, the same in every country, without zeros that say nothing. */
    private static String rounded(double value, long unit) {
        long parts = Math.round(Math.abs(value) * unit);
        String sign = value < 0 && parts > 0 ? "-" : "";
        long rest = parts % unit;
        if (rest == 0) {
            return sign + parts / unit;
        }
        String decimals = Long.toString(unit + rest).substring(1).replaceAll("0+$", "");
        return sign + parts / unit + "." + decimals;
    }

    /** What makes text run the other way is shown as a question mark, here as on a terminal. */
    private static String escaped(String text) {
        return Printable.print(text).replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }

    /** A path as its attribute says it. */
    private final class SvgPath implements Path.Walker {

        private final StringBuilder drawn = new StringBuilder();

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
            drawn.append('Z');
        }

        private void add(char step, double... places) {
            for (int i = 0; i < places.length; i++) {
                drawn.append(i == 0 ? step : ' ').append(number(places[i]));
            }
        }
    }
}
