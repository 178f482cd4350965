package org.sagwise.web;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.GZIPOutputStream;
import org.sagwise.assessment.Assessment;
import org.sagwise.assessment.Moment;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.ScenarioWriter;
import org.sagwise.file.ShareText;
import org.sagwise.picture.layout.BenchLayout;
import org.sagwise.picture.layout.Drawing;
import org.sagwise.picture.layout.KnownLayouts;
import org.sagwise.picture.look.Theme;
import org.sagwise.picture.pen.Plain;
import org.sagwise.picture.scene.BenchScene;
import org.sagwise.picture.scene.BenchView;
import org.sagwise.picture.scene.Emphasis;
import org.sagwise.report.explain.ExplainedPost;
import org.sagwise.scenario.Press;
import org.sagwise.scenario.Scenario;
import org.sagwise.text.Signs;
import org.sagwise.web.engine.Facts;
import org.sagwise.web.engine.Pictures;
import org.sagwise.web.engine.Words;

/**
 * Writes the live page: one file of HTML that holds a bench, what there is to say about it, and the
 * engine that lets a reader try it. Asks for nothing from anywhere, and forbids itself to.
 *
 * <p>What comes from a scenario stands as escaped text, or in a block of JSON in which no sign can end
 * it. The policy names the scripts and styles that may be used by their hashes, so that nothing else
 * would run even if it got in.
 */
public final class PageWriter {

    private static final String FOLDER = "/org/sagwise/web/";
    private static final Pattern BLANK = Pattern.compile("\\{\\{([\\w.-]+)}}");
    private static final String SAY = "say.";
    private static final double FIRST_WIDTH = 700;

    private static final double PHONE_WIDTH = 390;

    private static final double FIRST_HEIGHT = 460;

    private final Locale locale;
    private final String engine;
    private final String packed;
    private final Words words;

    /**
     * @param engine the script that {@code LivePage} was compiled to
     */
    public PageWriter(byte[] engine, Locale locale) {
        this.engine = EngineScript.of(engine, false);
        packed = packed(this.engine);
        this.locale = locale;
        words = Words.in(locale);
    }

    /** The page of a scenario. Looks for a cure and runs the bench down, so it may take a while. */
    public String write(Scenario scenario) {
        Assessment bench = Assessment.of(scenario, CatalogueLoader.builtIn()).lookingAhead();
        String still = ExplainedPost.htmlBody(Moment.start(bench), ShareText::of, locale, Signs.PRINT);
        String json = ScenarioWriter.writeCompact(scenario);
        KnownLayouts layouts = new KnownLayouts();
        String style = PageStyle.of(json + still) + width(bench, layouts);
        String loader = resource("loader.js");
        Map<String, String> blanks = new LinkedHashMap<>();
        blanks.put("language", locale.getLanguage());
        blanks.put("policy", policy(style, loader, engine));
        blanks.put("title", escaped(title(scenario)));
        blanks.put("style", style);
        blanks.put("bench", firstPicture(bench.with(Press.RELEASED), locale, layouts));
        blanks.put("watts", escaped(new Facts(bench.with(Press.RELEASED), words).watts()));
        blanks.put("way", escaped(new Facts(bench.with(Press.RELEASED), words).way()));
        blanks.put("still", "<p class=\"small\">" + escaped(words.say("no-script")) + "</p>\n" + still);
        blanks.put("kind", "bench");
        blanks.put("lesson", "");
        blanks.put("lesson-data", "");
        blanks.put("scenario", inert(json));
        blanks.put("engine", packed);
        blanks.put("loader", loader);
        return filled(resource("page.html"), blanks, key -> said(key, words));
    }

    /** How wide the sheet is at least until the script has seen how wide its column is. */
    private static String width(Assessment bench, KnownLayouts layouts) {
        return "\n#sheet { min-width: " + width(bench, PHONE_WIDTH, layouts) + "px; }\n"
                + "@media (min-width: 60rem) { #sheet { min-width: " + width(bench, FIRST_WIDTH, layouts) + "px; } }";
    }

    private static long width(Assessment bench, double column, KnownLayouts layouts) {
        BenchLayout layout = Pictures.layout(bench, Drawing.BENCH, column, layouts);
        BenchView whole = BenchView.fit(layout.bounds(), column, Pictures.height(layout, column, FIRST_HEIGHT));
        return Pictures.isTooSmall(layout, whole) ? (long) Pictures.readableWidth(layout) : 0;
    }

    private String title(Scenario scenario) {
        String title = Plain.text(scenario.title());
        return title.isBlank() ? words.say("untitled") : title;
    }

    static String firstPicture(Assessment bench, Locale locale) {
        return firstPicture(bench, locale, new KnownLayouts());
    }

    private static String firstPicture(Assessment bench, Locale locale, KnownLayouts layouts) {
        BenchLayout layout = Pictures.layout(bench, Drawing.BENCH, FIRST_WIDTH, layouts);
        double height = Pictures.height(layout, FIRST_WIDTH, FIRST_HEIGHT);
        BenchScene scene = Pictures.scene(bench, layout, Theme.LIGHT, locale, Emphasis.NONE, FIRST_WIDTH);
        return Pictures.bench(scene, Pictures.view(scene, FIRST_WIDTH, height));
    }

    static String said(String key, Words words) {
        return escaped(words.page().has(key) ? words.say(key) : words.clock().word(key));
    }

    /**
     * A form with its blanks filled, in one pass, so that what is filled in is never looked at for blanks.
     *
     * @param said what stands for {@code say.KEY}
     */
    static String filled(String form, Map<String, String> blanks, UnaryOperator<String> said) {
        return BLANK.matcher(form).replaceAll(blank -> {
            String name = blank.group(1);
            return Matcher.quoteReplacement(
                    name.startsWith(SAY) ? said.apply(name.substring(SAY.length())) : blanks.get(name));
        });
    }

    static String policy(String style, String... scripts) {
        StringBuilder policy = new StringBuilder("default-src 'none'; font-src data:; base-uri 'none';"
                + " form-action 'none'; style-src " + hash(style) + "; script-src");
        for (String script : scripts) {
            policy.append(' ').append(hash(script));
        }
        return policy.toString();
    }

    private static String hash(String text) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return "'sha256-" + Base64.getEncoder().encodeToString(digest) + "'";
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }

    /** JSON in which nothing can end the block that it stands in, or begin a comment in it. */
    static String inert(String json) {
        return json.replace("<", "\\u003c").replace(">", "\\u003e").replace("&", "\\u0026");
    }

    /** A script as a page holds it. */
    static String packed(String script) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (GZIPOutputStream gzip = new BestGzip(out)) {
            gzip.write(script.getBytes(StandardCharsets.UTF_8));
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return Base85.of(out.toByteArray());
    }

    /** A second more of packing is nothing against the time of everyone who loads it. */
    private static final class BestGzip extends GZIPOutputStream {
        BestGzip(ByteArrayOutputStream out) throws IOException {
            super(out);
            def.setLevel(9);
        }
    }

    static String resource(String name) {
        return file(FOLDER + name).strip();
    }

    /** A text file of the program. */
    static String file(String path) {
        try (InputStream file = PageWriter.class.getResourceAsStream(path)) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    static String escaped(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                .replace("'", "&#39;");
    }
}
