package org.sagwise.report.post;

import java.util.List;
import java.util.Locale;
import org.sagwise.text.Signs;

/**
 * Writes a post as one HTML file that needs nothing else: no scripts, no fonts, no pictures from
 * elsewhere, and a policy inside that forbids them. Prints on paper as it stands.
 */
final class HtmlPost {

    private static final String STYLE = """
            body { font: 1.05rem/1.5 'Source Sans 3', 'Noto Sans', 'DejaVu Sans', sans-serif;
              max-width: 46rem; margin: 2rem auto; padding: 0 1rem; color: #1d2430;
              background: #ffffff; }
            h1 { font-size: 1.8rem; line-height: 1.2; }
            h2 { font-size: 1.25rem; margin-top: 2rem; border-bottom: 1px solid #c5c9d0;
              break-after: avoid; }
            table { border-collapse: collapse; margin: 1rem 0; }
            th, td { padding: 0.2rem 0.7rem; border-bottom: 1px solid #d9dce1; text-align: right; }
            td { white-space: nowrap; }
            th:first-child, td:first-child { text-align: left; padding-left: 0;
              white-space: normal; overflow-wrap: anywhere; min-width: 5rem; }
            .wide { overflow-x: auto; }
            li, p { overflow-wrap: anywhere; }
            .hazard { border-left: 0.35rem solid #8a3b12; padding: 0.1rem 1rem; margin: 1rem 0;
              background: #faf4ef; break-inside: avoid; }
            .hazard p:first-child { font-weight: bold; }
            pre { white-space: pre-wrap; overflow-wrap: anywhere; background: #f3f4f6;
              padding: 0.8rem; font-size: 0.85rem; }
            figure { margin: 1rem 0; overflow-x: auto; }
            figure svg { width: 100%; height: auto; }
            @media screen and (max-width: 40rem) { h1 { font-size: 1.5rem; }
              ul, ol { padding-left: 1.4rem; } figure svg { min-width: 36rem; } }
            .notice { border: 1px solid #1d2430; padding: 0.6rem 1rem; break-inside: avoid; }
            @media print { body { margin: 0; max-width: none; font-size: 11pt; }
              figure, table { break-inside: avoid; } }
            """;

    private final Locale locale;
    private final Lines lines;
    private final StringBuilder out = new StringBuilder();

    HtmlPost(Locale locale, Signs signs) {
        this(locale, new Lines(signs));
    }

    private HtmlPost(Locale locale, Lines lines) {
        this.locale = locale;
        this.lines = lines;
    }

    String write(List<Block> post) {
        String title = post.stream()
                .filter(Block.Title.class::isInstance)
                .map(block -> ((Block.Title) block).text())
                .findFirst()
                .orElse("Sagwise");
        out.append("<!DOCTYPE html>\n<html lang=\"")
                .append(escaped(locale.getLanguage()))
                .append("\">\n<head>\n<meta charset=\"utf-8\">\n")
                .append("<meta http-equiv=\"Content-Security-Policy\" content=\"default-src" + " 'none';")
                .append(" style-src 'unsafe-inline'\">\n")
                .append("<meta name=\"viewport\" content=\"width=device-width\">\n");
        element("title", title);
        out.append("<style>\n").append(STYLE).append("</style>\n</head>\n<body>\n<main>\n");
        return out.append(body(post)).append("</main>\n</body>\n</html>\n").toString();
    }

    /** The blocks alone, to stand in another page. */
    static String body(List<Block> post, Locale locale, Signs signs) {
        return new HtmlPost(locale, signs).body(post);
    }

    private String body(List<Block> post) {
        HtmlPost body = new HtmlPost(locale, lines);
        post.forEach(body::block);
        return body.out.toString();
    }

    private void block(Block block) {
        if (block instanceof Block.Title title) {
            element("h1", title.text());
        } else if (block instanceof Block.Heading heading) {
            element("h2", heading.text());
        } else if (block instanceof Block.Paragraph paragraph) {
            element("p", paragraph.text());
        } else if (block instanceof Block.Notice notice) {
            out.append("<div class=\"notice\">\n");
            element("p", notice.text());
            out.append("</div>\n");
        } else if (block instanceof Block.Code code) {
            element("pre", code.text());
        } else if (block instanceof Block.Table table) {
            table(table);
        } else if (block instanceof Block.Bullets bullets) {
            list("ul", bullets.items());
        } else if (block instanceof Block.Steps steps) {
            list("ol", steps.items());
        } else if (block instanceof Block.Hazard hazard) {
            out.append("<div class=\"hazard\">\n");
            element("p", hazard.signal() + ": " + hazard.title());
            hazard.paragraphs().forEach(text -> element("p", text));
            out.append("</div>\n");
        } else if (block instanceof Block.Picture picture) {
            out.append("<figure role=\"img\" aria-label=\"")
                    .append(escaped(picture.description()))
                    .append("\">\n")
                    .append(picture.svg())
                    .append("\n</figure>\n");
        }
    }

    private void list(String tag, List<String> items) {
        out.append('<').append(tag).append(">\n");
        items.forEach(item -> element("li", item));
        out.append("</").append(tag).append(">\n");
    }

    private void table(Block.Table table) {
        out.append("<div class=\"wide\">\n<table>\n<thead>\n<tr>");
        table.heads()
                .forEach(head ->
                        out.append("<th scope=\"col\">").append(escaped(head)).append("</th>"));
        out.append("</tr>\n</thead>\n<tbody>\n");
        for (List<String> row : table.rows()) {
            out.append("<tr>");
            row.forEach(cell -> out.append("<td>").append(escaped(cell)).append("</td>"));
            out.append("</tr>\n");
        }
        out.append("</tbody>\n</table>\n</div>\n");
    }

    private void element(String tag, String text) {
        out.append('<').append(tag).append('>').append(escaped(text));
        out.append("</").append(tag).append(">\n");
    }

    private String escaped(String text) {
        return lines.plain(text)
                .replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                .replace("'", "&#39;");
    }
}
