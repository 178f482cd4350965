package org.sagwise.web;

import java.nio.charset.StandardCharsets;
import java.util.StringJoiner;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.sagwise.file.JsonWords;

/**
 * The engine as it stands in a page. The compiler of the script writes the texts, the catalogue and the
 * widths of letters into it in base64, which packs badly; here they stand as what they are, and are turned
 * into base64 again when the page is opened. That makes a page a fifth smaller.
 */
final class EngineScript {

    private static final String FILE =
            "\"(?:org/sagwise/[^\"]+)\":\\s*\"[A-Za-z0-9+/=]*\"(?:\\s*\\+\\s*\"[A-Za-z0-9+/=]*\")*+";
    private static final Pattern FILES = Pattern.compile("\\{\\s*" + FILE + "(?:\\s*,\\s*" + FILE + ")*+\\s*}");

    /**
     * What the compiler's class library knows of the world: names of currencies, which country pays in which, towns of
     * time zones, and in which script each language is likely written. It does without what is not there, and nothing
     * on a bench asks for any; all of it makes a page thirty-nine thousand bytes larger. A blank stands for any space.
     */
    private static final Pattern WORLD = Pattern.compile("""
            (?:"[A-Z]{3}" : \\{ "name" : "[^"]*" , "symbol" : "[^"]*" }\
            |\\{ "code" : "[A-Z]{3}" , "numericCode" : \\d+ , "fractionDigits" : \\d+ }\
            |"[A-Z]{2}" : \\{ "value" : "[A-Z]{3}" }\
            |"[A-Z][A-Za-z_-]{2,}" : \\{ "value" : "[^"]*" }\
            |"[\\w-]+" : \\{ "value" : "[a-z]{2,3}-[A-Z][a-z]{3}-\\w+" }) ,?\\s*""".replace(" ", "\\s*"));

    private EngineScript() {}

    /**
     * The script with its files in front.
     *
     * @param isLesson whether a lesson is played on this page, whose words a page of a bench does without
     * @throws IllegalArgumentException if this is not the script of a page
     */
    static String of(byte[] compiled, boolean isLesson) {
        String script = new String(compiled, StandardCharsets.UTF_8);
        Matcher files = FILES.matcher(script);
        if (!files.find()) {
            throw new IllegalArgumentException("this is no engine of a page: there are no files in it");
        }
        StringJoiner texts = new StringJoiner(",", "{", "}");
        for (String file : isLesson ? PageResources.files() : PageResources.benchFiles()) {
            texts.add(quoted(file) + ":" + quoted(text(file, isLesson)));
        }
        return PageWriter.resource("files.js").replace("{{files}}", texts.toString()) + "\n"
                + withoutWorld(script.substring(0, files.start())) + "sagwiseFiles"
                + withoutWorld(script.substring(files.end()));
    }

    private static String withoutWorld(String script) {
        return WORLD.matcher(script).replaceAll("");
    }

    private static String quoted(String text) {
        return JsonWords.text(text).replace("\u2028", "\\u2028").replace("\u2029", "\\u2029");
    }

    /** Without remarks, which are for who writes texts, and without what the page never says. */
    private static String text(String file, boolean isLesson) {
        String whole = PageWriter.file("/" + file);
        if (!file.endsWith(".properties")) {
            return whole;
        }
        return whole.lines()
                .filter(line -> !line.startsWith("#") && PageResources.isSaid(file, line, isLesson))
                .collect(Collectors.joining("\n"));
    }
}
