package org.sagwise.report.handout;

import java.util.List;
import java.util.Locale;
import org.commonmark.renderer.html.HtmlRenderer;
import org.sagwise.report.figure.BenchFigure;
import org.sagwise.report.handout.Handout.Blank;
import org.sagwise.report.handout.Handout.Frame;
import org.sagwise.report.handout.Handout.Item;
import org.sagwise.report.handout.Handout.Option;

/** Sets handouts as one HTML file that needs nothing else and prints as it stands. */
public final class HandoutHtml {

    private static final String STYLE = """
            body { font: 1rem/1.45 'Source Sans 3', 'Noto Sans', 'DejaVu Sans', sans-serif;
              max-width: 44rem; margin: 2rem auto; padding: 0 1rem; color: #000;
              background: #fff; }
            h1 { font-size: 1.6rem; margin-bottom: 0; }
            .line { margin-top: 0.2rem; color: #333; }
            article + article { break-before: page; margin-top: 4rem; }
            .item { break-inside: avoid; margin: 0.9rem 0; padding-left: 2rem;
              position: relative; }
            .item p { margin: 0 0 0.3rem; }
            .number { position: absolute; left: 0; font-weight: bold; }
            .warning, .box { border: 1px solid #000; padding: 0.5rem 0.8rem; }
            .warning { border-width: 3px; }
            ul { list-style: none; margin: 0.2rem 0; padding: 0; }
            li { display: grid; grid-template-columns: 1.1rem 1.2rem 1fr; gap: 0.4rem;
              margin: 0.25rem 0; }
            .tick { width: 0.95rem; height: 0.95rem; border: 1.5px solid #000;
              line-height: 0.95rem; text-align: center; margin-top: 0.2rem; }
            .remark { color: #333; font-size: 0.92rem; font-style: italic; }
            .blank { display: flex; gap: 0.5rem; align-items: baseline; margin: 0.4rem 0; }
            .rule { flex: 1; border-bottom: 1px solid #000; min-height: 1.5rem; }
            figure { margin: 0; overflow-x: auto; }
            figure svg { width: 100%; height: auto; }
            @media screen and (max-width: 40rem) { figure svg { min-width: 30rem; } }
            footer { border-top: 1px solid #000; margin-top: 2rem; font-size: 0.85rem; }
            @media print { body { margin: 0; max-width: none; font-size: 10.5pt; } }
            """;

    private final HtmlRenderer renderer =
            HtmlRenderer.builder().escapeHtml(true).sanitizeUrls(true).build();

    private final StringBuilder out = new StringBuilder();

    private HandoutHtml() {}

    /** The page with all these handouts, one after the other. */
    public static String write(List<Handout> handouts) {
        return new HandoutHtml().page(handouts);
    }

    private String page(List<Handout> handouts) {
        Locale locale = handouts.get(0).locale();
        out.append("<!DOCTYPE html>\n<html lang=\"")
                .append(locale.getLanguage())
                .append("\">\n<head>\n<meta charset=\"utf-8\">\n")
                .append("<meta http-equiv=\"Content-Security-Policy\" ")
                .append("content=\"default-src 'none'; style-src 'unsafe-inline'\">\n")
                .append("<meta name=\"viewport\" content=\"width=device-width\">\n<title>")
                .append(escaped(handouts.get(0).title()))
                .append("</title>\n<style>\n")
                .append(STYLE)
                .append("</style>\n</head>\n<body>\n");
        handouts.forEach(this::article);
        return out.append("</body>\n</html>\n").toString();
    }

    private void article(Handout handout) {
        out.append("<article>\n<h1>")
                .append(escaped(handout.title()))
                .append("</h1>\n<p class=\"line\">")
                .append(escaped(handout.line()))
                .append("</p>\n");
        handout.items().forEach(item -> item(item, handout.locale()));
        out.append("<footer><p>").append(escaped(handout.notice())).append("</p></footer>\n</article>\n");
    }

    private void item(Item item, Locale locale) {
        out.append("<div class=\"item")
                .append(
                        item.frame() == Frame.NONE
                                ? ""
                                : " " + item.frame().name().toLowerCase(Locale.ROOT))
                .append("\">\n");
        if (!item.number().isEmpty()) {
            out.append("<span class=\"number\">").append(item.number()).append("</span>\n");
        }
        out.append(markdown(item.text()));
        item.picture()
                .ifPresent(bench -> out.append("<figure role=\"img\" aria-label=\"")
                        .append(escaped(bench.scenario().title()))
                        .append("\">")
                        .append(BenchFigure.svg(bench, locale))
                        .append("</figure>\n"));
        options(item.options());
        item.blanks().forEach(this::blank);
        remark(item.remark());
        out.append("</div>\n");
    }

    private void options(List<Option> options) {
        if (options.isEmpty()) {
            return;
        }
        out.append("<ul>\n");
        for (Option option : options) {
            out.append("<li><span class=\"tick\">")
                    .append(option.ticked() ? "✓" : "")
                    .append("</span><span>")
                    .append(option.letter())
                    .append("</span><div>")
                    .append(markdown(option.text()));
            remark(option.remark());
            out.append("</div></li>\n");
        }
        out.append("</ul>\n");
    }

    private void blank(Blank blank) {
        if (blank.lines() == 0) {
            out.append("<div class=\"blank\"><span class=\"tick\">")
                    .append(blank.filled())
                    .append("</span><span>")
                    .append(escaped(blank.label()))
                    .append("</span></div>\n");
        }
        for (int i = 0; i < blank.lines(); i++) {
            out.append("<div class=\"blank\"><span>")
                    .append(i == 0 ? escaped(blank.label()) : "")
                    .append("</span><span class=\"rule\">")
                    .append(i == 0 ? escaped(blank.filled()) : "")
                    .append("</span></div>\n");
        }
    }

    private void remark(String remark) {
        if (!remark.isEmpty()) {
            out.append("<div class=\"remark\">").append(markdown(remark)).append("</div>\n");
        }
    }

    private String markdown(String text) {
        return renderer.render(InertMarkdown.parse(text));
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
    }
}
