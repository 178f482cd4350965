package org.sagwise.web;

import java.util.AbstractMap.SimpleImmutableEntry;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.DemoScenarios;
import org.sagwise.file.ScenarioReader;
import org.sagwise.scenario.Scenario;
import org.sagwise.text.Texts;

/**
 * Writes a site of live pages, files alone: a page for each demo, and an index that opens any share text
 * from a paste or from behind the {@code #} of its address, which no server ever sees.
 */
public final class SiteWriter {

    private SiteWriter() {}

    /** Each file's name with its text, made one after the other when it is asked for. */
    public static Iterable<Map.Entry<String, String>> pages(byte[] engine, Locale locale) {
        PageWriter writer = new PageWriter(engine, locale);
        List<String> names = DemoScenarios.names();
        return () -> Stream.concat(
                        Stream.of(entry("index", index(names, locale))),
                        names.stream().map(name -> entry(name, writer.write(demo(name, locale)))))
                .iterator();
    }

    private static Map.Entry<String, String> entry(String name, String text) {
        return new SimpleImmutableEntry<>(name + ".html", text);
    }

    private static Scenario demo(String name, Locale locale) {
        return new ScenarioReader(CatalogueLoader.builtIn())
                .read(DemoScenarios.bytes(name, locale))
                .scenario()
                .orElseThrow();
    }

    private static String index(List<String> names, Locale locale) {
        Texts texts = Texts.in("page", locale);
        StringBuilder list = new StringBuilder();
        for (String name : names) {
            list.append("<li><a href=\"")
                    .append(name)
                    .append(".html\">")
                    .append(PageWriter.escaped(demo(name, locale).title()))
                    .append("</a></li>\n");
        }
        String style = PageStyle.of("");
        String script = PageWriter.resource("index.js").replace("{{first}}", names.get(0));
        return PageWriter.filled(
                PageWriter.resource("index.html"),
                Map.of(
                        "language", locale.getLanguage(),
                        "policy", PageWriter.policy(style, script),
                        "style", style,
                        "list", list.toString(),
                        "script", script),
                key -> PageWriter.escaped(texts.say(key)));
    }
}
