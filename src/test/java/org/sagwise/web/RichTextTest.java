package org.sagwise.web;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Emphasis;
import org.commonmark.node.Paragraph;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.StrongEmphasis;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;
import org.junit.jupiter.api.Test;
import org.sagwise.file.LessonLibrary;
import org.sagwise.lesson.LessonFixture;
import org.sagwise.lesson.Step;
import org.sagwise.text.LocalText;
import org.sagwise.web.lesson.RichText;
import org.sagwise.web.lesson.RichText.Block;
import org.sagwise.web.lesson.RichText.Run;
import org.sagwise.web.lesson.RichText.Style;

class RichTextTest {

    /** What the library of the window makes of a text, as one line: {@code |} ends a paragraph. */
    private static String byLibrary(String text) {
        StringBuilder out = new StringBuilder();
        Parser.builder().build().parse(text).accept(new AbstractVisitor() {
            @Override
            public void visit(Paragraph paragraph) {
                visitChildren(paragraph);
                out.append('|');
            }

            @Override
            public void visit(Emphasis emphasis) {
                out.append('<');
                visitChildren(emphasis);
                out.append('>');
            }

            @Override
            public void visit(StrongEmphasis emphasis) {
                out.append("<<");
                visitChildren(emphasis);
                out.append(">>");
            }

            @Override
            public void visit(SoftLineBreak line) {
                out.append(' ');
            }

            @Override
            public void visit(Text words) {
                out.append(words.getLiteral());
            }
        });
        return out.toString();
    }

    private static String byPage(String text) {
        StringBuilder out = new StringBuilder();
        for (Block block : RichText.of(text)) {
            for (Run run : block.runs()) {
                String around = run.style() == Style.STRONG ? "<<" : run.style() == Style.EMPHASIS ? "<" : "";
                out.append(around).append(run.text()).append(around.replace('<', '>'));
            }
            out.append('|');
        }
        return out.toString();
    }

    @Test
    void of_everyTextOfTheLessons_isWhatTheWindowShows() {
        List<LocalText> texts = new ArrayList<>();
        for (String id : LessonLibrary.ids()) {
            for (Step step : LessonFixture.builtIn(id).steps()) {
                texts.add(step.head().text());
                texts.addAll(step.hints());
                if (step instanceof Step.Choose choose) {
                    choose.choices().forEach(it -> {
                        texts.add(it.text());
                        texts.add(it.reply());
                    });
                }
            }
        }
        for (LocalText text : texts) {
            for (Locale locale : List.of(Locale.ENGLISH, Locale.GERMAN)) {
                assertEquals(byLibrary(text.in(locale)), byPage(text.in(locale)));
            }
        }
    }

    @Test
    void of_listsAndParagraphs_standApart() {
        assertEquals(
                List.of("", "• ", "2. ", ""),
                RichText.of("Words\nmore\n\n- one\n2. two\n\nend").stream()
                        .map(Block::lead)
                        .toList());
        assertEquals("Words more|", byPage("Words\nmore"));
    }

    @Test
    void of_signsThatStandForThemselves_areKept() {
        assertEquals("2 * 3 * 4 ** 5|", byPage("2 * 3 * 4 ** 5"));
        assertEquals("<b>a</b> & [x](y)|", byPage("<b>a</b> & [x](y)"));
        assertEquals("*|", byPage("*"));
        assertEquals("", byPage(" \n\n "));
        assertEquals(
                List.of(new Run("a*b", Style.CODE)), RichText.of("`a*b`").get(0).runs());
    }
}
