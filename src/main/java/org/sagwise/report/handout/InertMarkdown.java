package org.sagwise.report.handout;

import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.Text;

/** Takes links and pictures out of Markdown, which may come from strangers: their words stay. */
final class InertMarkdown extends AbstractVisitor {

    private InertMarkdown() {}

    /** The same document, changed: a link is its words and its address, a picture its words. */
    static Node of(Node document) {
        document.accept(new InertMarkdown());
        return document;
    }

    @Override
    public void visit(Link link) {
        visitChildren(link);
        link.insertAfter(new Text(" (" + link.getDestination() + ")"));
        unwrap(link);
    }

    @Override
    public void visit(Image picture) {
        visitChildren(picture);
        unwrap(picture);
    }

    private static void unwrap(Node node) {
        Node child = node.getFirstChild();
        while (child != null) {
            Node next = child.getNext();
            node.insertBefore(child);
            child = next;
        }
        node.unlink();
    }
}
