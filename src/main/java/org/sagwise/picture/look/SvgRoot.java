package org.sagwise.picture.look;

import org.apache.batik.svggen.SVGGraphics2D;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** What was painted, as an element that may stand beside others of its kind in one page. */
public final class SvgRoot {

    private SvgRoot() {}

    /** Without the list of definitions that is always there, of the same name each time, empty. */
    public static Element of(SVGGraphics2D surface) {
        Element root = surface.getRoot();
        Node child = root.getFirstChild();
        while (child != null) {
            Node next = child.getNextSibling();
            if (child.getNodeName().equals("defs") && !child.hasChildNodes()) {
                root.removeChild(child);
            }
            child = next;
        }
        return root;
    }
}
