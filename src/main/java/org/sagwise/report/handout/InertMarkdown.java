package org.sagwise.report.handout;

import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;

/** Takes links and pictures out of Markdown, which may come from strangers: their words stay. */
final class InertMarkdown extends AbstractVisitor {

    /** Lists and quotes within one another; beyond that the signs stand as they were written. */
    private static final int DEEPEST = 50;

    private static final Parser PARSER =
            Parser.builder().maxOpenBlockParsers(DEEPEST).build();

    private InertMarkdown() {}

    /** The document in a text: a link is its words and its address, a picture its words. */
    static Node parse(String text) {
        Node document = PARSER.parse(text);
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
