package org.sagwise.picture.figure;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.io.StringWriter;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import javax.xml.XMLConstants;
import javax.xml.transform.OutputKeys;
import javax.xml.transform.Transformer;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.apache.batik.dom.GenericDOMImplementation;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.sagwise.assessment.Assessment;
import org.sagwise.picture.bench.StillPainter;
import org.sagwise.picture.layout.BenchLayout;
import org.sagwise.picture.layout.LabelSide;
import org.sagwise.picture.layout.PartBox;
import org.sagwise.picture.look.Align;
import org.sagwise.picture.look.Pen;
import org.sagwise.picture.look.SvgRoot;
import org.sagwise.picture.look.TextStyle;
import org.sagwise.picture.look.Theme;
import org.sagwise.picture.look.Tone;
import org.sagwise.picture.look.Typeface;
import org.sagwise.picture.scene.BenchScene;
import org.sagwise.picture.scene.BenchView;
import org.sagwise.picture.scene.Detail;
import org.sagwise.quantity.QuantityFormat;
import org.sagwise.quantity.Unit;
import org.w3c.dom.Element;

/** A bench without its figures: those are for the learner to find. */
public final class BenchFigure {

    /** Width and height of the figure, in pixels of the screen's bench. */
    public static final int WIDTH = 900;

    public static final int HEIGHT = 330;

    /** Paper is read at arm's length, and the figure is smaller there than on screen. */
    private static final double NAME_SCALE = 1.4;

    private static final String SVG = "http://www.w3.org/2000/svg";

    private BenchFigure() {}

    /** Paints the figure in the upper left corner of a surface. */
    public static void paint(Graphics2D surface, Assessment bench, Locale locale) {
        BenchLayout layout = BenchLayout.of(bench.scenario());
        BenchScene scene = BenchScene.of(bench, layout, Theme.LIGHT, locale).with(details());
        BenchView view = BenchView.fit(layout.bounds(), WIDTH, HEIGHT);
        StillPainter.paint(surface, scene, view);
        Pen pen = new Pen(surface, Theme.LIGHT, NAME_SCALE);
        for (PartBox box : layout.parts()) {
            name(pen, name(bench, box, locale), view.toWindow(box.label()), box.side());
        }
    }

    /** Writes a name where the figures would stand, close to the part. */
    private static void name(Pen pen, String name, Rectangle2D room, LabelSide side) {
        double middle = room.getCenterX();
        double level = room.getCenterY() + 6;
        TextStyle style = TextStyle.NAME;
        switch (side) {
            case ABOVE -> pen.text(name, middle, room.getMaxY() - 4, style, Tone.INK, Align.MIDDLE);
            case BELOW -> pen.text(name, middle, room.getY() + 16, style, Tone.INK, Align.MIDDLE);
            case LEFT -> pen.text(name, room.getMaxX(), level, style, Tone.INK, Align.RIGHT);
            case RIGHT -> pen.text(name, room.getX(), level, style, Tone.INK, Align.LEFT);
        }
    }

    /** What a part is called; of a coil also its resistance, which is no reading but given. */
    private static String name(Assessment bench, PartBox box, Locale locale) {
        return bench.readings()
                .coil(box.id())
                .map(coil -> box.part().name()
                        + " "
                        + QuantityFormat.forPeople(locale).print(coil.ohm(), Unit.OHM))
                .orElse(box.part().name());
    }

    private static Set<Detail> details() {
        EnumSet<Detail> details = EnumSet.noneOf(Detail.class);
        details.addAll(Detail.usual());
        details.remove(Detail.FIGURES);
        details.remove(Detail.FLAGS);
        details.remove(Detail.GRID);
        details.remove(Detail.LEGEND);
        return details;
    }

    /** The figure as an element of an HTML page. */
    public static String svg(Assessment bench, Locale locale) {
        var document = GenericDOMImplementation.getDOMImplementation().createDocument(SVG, "svg", null);
        SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
        context.setComment(null);
        context.setPrecision(2);
        SVGGraphics2D surface = new SVGGraphics2D(context, false);
        paint(surface, bench, locale);
        Element root = SvgRoot.of(surface);
        root.setAttributeNS(null, "viewBox", "0 0 " + WIDTH + " " + HEIGHT);
        return written(root).replace("'" + Typeface.FAMILY + "'", Typeface.FALLBACKS.replace('"', '\''));
    }

    private static String written(Element root) {
        StringWriter out = new StringWriter();
        try {
            TransformerFactory factory = TransformerFactory.newInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            Transformer copy = factory.newTransformer();
            copy.setOutputProperty(OutputKeys.OMIT_XML_DECLARATION, "yes");
            copy.transform(new DOMSource(root), new StreamResult(out));
        } catch (TransformerException impossible) {
            throw new IllegalStateException("a picture in memory cannot fail", impossible);
        }
        return out.toString();
    }
}
