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
                + script.substring(0, files.start()) + "sagwiseFiles" + script.substring(files.end());
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
        boolean isOfWindow = PageResources.isOfWindow(file);
        return whole.lines()
                .filter(line -> !line.startsWith("#") && !(isOfWindow && !PageResources.isSaid(line, isLesson)))
                .collect(Collectors.joining("\n"));
    }
}
