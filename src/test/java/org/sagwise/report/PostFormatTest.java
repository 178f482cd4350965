package org.sagwise.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.HtmlBlock;
import org.commonmark.node.HtmlInline;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;
import org.commonmark.renderer.text.TextContentRenderer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.sagwise.part.PartKind;
import org.sagwise.report.post.Block;
import org.sagwise.report.post.PostFormat;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;
import org.sagwise.text.Signs;
import org.w3c.dom.Document;

/** Whatever a file says, a post shows it and does nothing with it. */
class PostFormatTest {

    private static final String NASTY =
            "<script>alert(1)</script> [url=http://a.example]x[/url] ![i](http://b.example/i.png)"
                    + " [l](javascript:x) **b** `c` <img src=x onerror=y> & \"q\" 'r' @all x@y.example mailto:x@y.example ``` ]]>"
                    + " www.c.example \u202e\u001b[31m";

    private static String nasty(PostFormat format) {
        Scenario scenario = Scenario.of(
                NASTY,
                List.of(
                        Part.of("A", PartKind.CELL, "label", NASTY, "model", "inr18650-2500-20A", "charge", 1),
                        Part.of("coil", PartKind.COIL, "ohm", 0.05, "label", NASTY)),
                List.of());
        return Stories.post(scenario, format, Locale.ENGLISH, Signs.PRINT);
    }

    @Test
    void html_ofNastyNames_isWellFormedAndHasNoScript() throws Exception {
        String html = nasty(PostFormat.HTML);
        assertFalse(html.contains("<script"), html);
        assertFalse(html.contains("<img"), html);
        assertTrue(html.contains("&lt;script&gt;"));
        String asXml = html.replace("<!DOCTYPE html>", "")
                .replace("<meta charset=\"utf-8\">", "")
                .replaceAll("(<meta [^>]*[^/])>", "$1/>");
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        Document document = factory.newDocumentBuilder()
                .parse(new ByteArrayInputStream(asXml.strip().getBytes(StandardCharsets.UTF_8)));
        assertEquals("html", document.getDocumentElement().getTagName());
        assertEquals("en", document.getDocumentElement().getAttribute("lang"));
        assertEquals(0, document.getElementsByTagName("a").getLength());
    }

    @Test
    void markdown_ofNastyNames_hasNoHtmlLinkOrImage() {
        Node root = Parser.builder().build().parse(nasty(PostFormat.MARKDOWN));
        root.accept(new AbstractVisitor() {
            @Override
            public void visit(HtmlInline node) {
                throw new AssertionError(node.getLiteral());
            }

            @Override
            public void visit(HtmlBlock node) {
                throw new AssertionError(node.getLiteral());
            }

            @Override
            public void visit(Link node) {
                throw new AssertionError(node.getDestination());
            }

            @Override
            public void visit(Image node) {
                throw new AssertionError(node.getDestination());
            }
        });
        String shown = TextContentRenderer.builder().build().render(root);
        assertTrue(shown.contains("<script>alert(1)</script>"), "shown as it was written");
        assertTrue(shown.contains("**b** `c`"), "shown as it was written");
    }

    /** Tables too, which many forums read for addresses and names though they stand in a block of code. */
    @ParameterizedTest
    @EnumSource(
            value = PostFormat.class,
            names = {"MARKDOWN", "BBCODE"})
    void post_ofNastyNames_linksToNothingAndCallsNobody(PostFormat format) {
        String post = nasty(format);
        assertTrue(post.contains("@ all") && post.contains("x@ y.example"), post);
        assertFalse(
                Pattern.compile("(?i)@\\w|[a-z]:/|mailto:\\S|www\\.")
                        .matcher(post)
                        .find(),
                post);
    }

    @Test
    void bbcode_ofNastyNames_hasOurTagsAlone() {
        String post = nasty(PostFormat.BBCODE);
        String left = post.replaceAll("\\[/?(b|i|list|list=1|code|\\*)\\]", "");
        assertFalse(left.contains("[") || left.contains("]"), left);
        assertFalse(post.contains("http://"), "no address becomes a link");
    }

    @Test
    void everyFormat_ofNastyNames_steersNoTerminal() {
        for (PostFormat format : PostFormat.values()) {
            String post = nasty(format);
            assertFalse(post.contains("\u001b") || post.contains("\u202e"), format.word());
        }
    }

    @Test
    void markdown_ofAStory_rendersHeadingsListsAndTables() {
        String markdown = Stories.post(Stories.story("thin-jumpers"), PostFormat.MARKDOWN, Locale.ENGLISH, Signs.PRINT);
        String html =
                HtmlRenderer.builder().build().render(Parser.builder().build().parse(markdown));
        assertTrue(html.startsWith("<h1>Why do the wires in my box smell?</h1>"), html);
        assertTrue(html.contains("<li>Cell A's plus touches cell B's plus (3 mΩ)</li>"), html);
        assertTrue(html.contains("<pre><code class=\"language-text\">cell"), html);
    }

    @Test
    void picture_inHtml_isInlineAndDescribed() {
        List<Block> post = List.of(new Block.Picture("two \"cells\"", "<svg xmlns=\"x\"></svg>"));
        String html = PostFormat.HTML.write(post, Locale.ENGLISH, Signs.PRINT);
        assertTrue(html.contains("aria-label=\"two &quot;cells&quot;\""), html);
        assertTrue(html.contains("<svg xmlns=\"x\"></svg>"), html);
        assertEquals("\n", PostFormat.TEXT.write(post, Locale.ENGLISH, Signs.PRINT));
    }
}
