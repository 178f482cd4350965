package org.sagwise.ui.text;

import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.BulletList;
import org.commonmark.node.Code;
import org.commonmark.node.Emphasis;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.HardLineBreak;
import org.commonmark.node.Heading;
import org.commonmark.node.HtmlBlock;
import org.commonmark.node.HtmlInline;
import org.commonmark.node.IndentedCodeBlock;
import org.commonmark.node.Link;
import org.commonmark.node.ListBlock;
import org.commonmark.node.ListItem;
import org.commonmark.node.Node;
import org.commonmark.node.OrderedList;
import org.commonmark.node.Paragraph;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.StrongEmphasis;
import org.commonmark.node.ThematicBreak;
import org.commonmark.parser.Parser;

/**
 * Shows Markdown as plain running text. Inert: it comes from strangers, so links are shown as
 * written and lead nowhere, markup of other languages is shown as it stands, pictures are their
 * description.
 */
public final class Markdown {

    /** Lists and quotes within one another; beyond that the signs stand as they were written. */
    private static final int DEEPEST = 50;

    private static final Parser PARSER =
            Parser.builder().maxOpenBlockParsers(DEEPEST).build();

    private Markdown() {}

    /** A column of paragraphs. */
    public static VBox column(String markdown) {
        VBox column = new VBox();
        column.getStyleClass().add("markdown");
        PARSER.parse(markdown).accept(new Writer(column));
        return column;
    }

    /** Turns blocks into paragraphs and their words into styled runs. */
    private static final class Writer extends AbstractVisitor {

        private final VBox column;
        private TextFlow flow;
        private String lead = "";
        private int strong;
        private int emphasised;

        Writer(VBox column) {
            this.column = column;
        }

        @Override
        public void visit(Paragraph paragraph) {
            block("paragraph", () -> visitChildren(paragraph));
        }

        @Override
        public void visit(Heading heading) {
            block("heading", () -> strongly(() -> visitChildren(heading)));
        }

        @Override
        public void visit(BulletList list) {
            items(list, 0);
        }

        @Override
        public void visit(OrderedList list) {
            Integer first = list.getMarkerStartNumber();
            items(list, first == null ? 1 : first);
        }

        @Override
        public void visit(FencedCodeBlock code) {
            block("code", () -> run(code.getLiteral().stripTrailing(), "code"));
        }

        @Override
        public void visit(IndentedCodeBlock code) {
            block("code", () -> run(code.getLiteral().stripTrailing(), "code"));
        }

        @Override
        public void visit(HtmlBlock html) {
            block("code", () -> run(html.getLiteral(), "code"));
        }

        @Override
        public void visit(ThematicBreak line) {
            Region rule = new Region();
            rule.getStyleClass().add("rule");
            column.getChildren().add(rule);
        }

        @Override
        public void visit(org.commonmark.node.Text text) {
            run(text.getLiteral(), "run");
        }

        @Override
        public void visit(Code code) {
            run(code.getLiteral(), "code");
        }

        @Override
        public void visit(HtmlInline html) {
            run(html.getLiteral(), "code");
        }

        @Override
        public void visit(SoftLineBreak line) {
            run(" ", "run");
        }

        @Override
        public void visit(HardLineBreak line) {
            run("\n", "run");
        }

        @Override
        public void visit(StrongEmphasis emphasis) {
            strongly(() -> visitChildren(emphasis));
        }

        @Override
        public void visit(Emphasis emphasis) {
            emphasised++;
            visitChildren(emphasis);
            emphasised--;
        }

        @Override
        public void visit(Link link) {
            visitChildren(link);
            run(" (" + link.getDestination() + ")", "run");
        }

        private void items(ListBlock list, int first) {
            int number = first;
            for (Node item = list.getFirstChild(); item != null; item = item.getNext()) {
                lead = first > 0 ? number++ + ". " : "• ";
                visitChildren((ListItem) item);
            }
        }

        private void block(String style, Runnable content) {
            flow = new TextFlow();
            flow.getStyleClass().add(style);
            if (!lead.isEmpty()) {
                flow.getStyleClass().add("item");
                run(lead, "run");
                lead = "";
            }
            content.run();
            column.getChildren().add(flow);
        }

        private void strongly(Runnable content) {
            strong++;
            content.run();
            strong--;
        }

        private void run(String words, String style) {
            if (flow == null) {
                return;
            }
            Text run = new Text(words);
            run.getStyleClass().add(style);
            if (strong > 0) {
                run.getStyleClass().add("strong");
            }
            if (emphasised > 0) {
                run.getStyleClass().add("emphasised");
            }
            flow.getChildren().add(run);
        }
    }
}
