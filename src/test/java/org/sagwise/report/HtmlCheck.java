package org.sagwise.report;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import nu.validator.client.EmbeddedValidator;
import org.xml.sax.SAXException;

/** What the Nu Html Checker, which also stands behind the W3C's service, says about a page. */
public final class HtmlCheck {

    /** It reads its rules by calls within calls, deeper than a thread usually may go. */
    private static final int STACK_BYTES = 32 * 1024 * 1024;

    private HtmlCheck() {}

    /** Errors and warnings, each with its line and column; none for a sound page. */
    public static List<String> findings(String page) {
        FutureTask<List<String>> check = new FutureTask<>(() -> check(page));
        new Thread(null, check, "html-check", STACK_BYTES).start();
        try {
            return check.get();
        } catch (InterruptedException | ExecutionException broken) {
            throw new AssertionError(broken);
        }
    }

    private static List<String> check(String page) throws IOException {
        EmbeddedValidator validator = new EmbeddedValidator();
        validator.setOutputFormat(EmbeddedValidator.OutputFormat.GNU);
        validator.setNoStream(true);
        byte[] bytes = page.getBytes(StandardCharsets.UTF_8);
        try {
            return validator
                    .validate(new ByteArrayInputStream(bytes))
                    .lines()
                    .filter(line -> !line.isBlank())
                    .toList();
        } catch (SAXException broken) {
            return List.of(String.valueOf(broken.getMessage()));
        }
    }
}
