package org.sagwise.picture.export;

import java.awt.Dimension;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Locale;
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
import org.sagwise.picture.look.Plain;
import org.sagwise.picture.look.SvgRoot;
import org.sagwise.picture.look.Typeface;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/**
 * Writes a page as SVG. Text stays text: it can be searched, copied and read aloud. Since the
 * reader may not have our typeface, every text carries the width it was laid out with, and other
 * families stand behind ours.
 */
final class SvgPicture {

    private static final String SVG = "http://www.w3.org/2000/svg";
    private static final int DECIMALS = 3;

    private final Document document;
    private final Element root;

    private SvgPicture(Document document, Element root) {
        this.document = document;
        this.root = root;
    }

    static void write(Sheet page, String title, Locale locale, PictureSize size, OutputStream out) throws IOException {
        Document document = GenericDOMImplementation.getDOMImplementation().createDocument(SVG, "svg", null);
        SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
        context.setComment(null);
        context.setPrecision(DECIMALS);
        SVGGraphics2D surface = new SVGGraphics2D(context, false);
        surface.setSVGCanvasSize(new Dimension(size.width(), size.height()));
        page.paint(surface);
        Element root = SvgRoot.of(surface);
        new SvgPicture(document, root).finish(title, locale, size);
        serialize(root, out);
    }

    /** Without a document type, so that no reader goes and fetches one. */
    private static void serialize(Element root, OutputStream out) throws IOException {
        try {
            TransformerFactory factory = TransformerFactory.newInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            Transformer copy = factory.newTransformer();
            copy.setOutputProperty(OutputKeys.ENCODING, "UTF-8");
            copy.transform(new DOMSource(root), new StreamResult(out));
        } catch (TransformerException failure) {
            throw new IOException("the picture could not be written", failure);
        }
    }

    private void finish(String title, Locale locale, PictureSize size) {
        root.setAttributeNS(null, "viewBox", "0 0 " + size.width() + " " + size.height());
        root.setAttributeNS(null, "role", "img");
        root.setAttributeNS("http://www.w3.org/XML/1998/namespace", "xml:lang", tag(locale));
        Element name = document.createElementNS(SVG, "title");
        name.appendChild(document.createTextNode(Plain.text(title)));
        root.insertBefore(name, root.getFirstChild());
        visit(root, "12", "normal");
    }

    private static String tag(Locale locale) {
        return locale.toLanguageTag();
    }

    /** Goes through all elements with the size and weight of text that hold there. */
    private void visit(Element element, String inheritedSize, String inheritedWeight) {
        String size = own(element, "font-size", inheritedSize);
        String weight = own(element, "font-weight", inheritedWeight);
        if (element.hasAttributeNS(null, "font-family")) {
            element.setAttributeNS(null, "font-family", Typeface.FALLBACKS);
        }
        if (element.getTagName().equals("text")) {
            fix(element, size, weight);
        }
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element inner) {
                visit(inner, size, weight);
            }
        }
    }

    private static String own(Element element, String name, String inherited) {
        return element.hasAttributeNS(null, name) ? element.getAttributeNS(null, name) : inherited;
    }

    private static void fix(Element text, String size, String weight) {
        Typeface.Weight drawn = weight.equals("bold") ? Typeface.Weight.BOLD : Typeface.Weight.REGULAR;
        double points = Double.parseDouble(size.replaceAll("[^0-9.]", ""));
        double width = Typeface.width(text.getTextContent(), drawn, points);
        text.setAttributeNS(null, "textLength", String.format(Locale.ROOT, "%.2f", width));
        text.setAttributeNS(null, "lengthAdjust", "spacingAndGlyphs");
    }
}
