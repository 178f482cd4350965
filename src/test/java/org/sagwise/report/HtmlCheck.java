package org.sagwise.report;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import nu.validator.validation.SimpleDocumentValidator;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;

/**
 * What the Nu Html Checker, which also stands behind the W3C's service, says about a page. It reads
 * its rules once: that takes longer than a page.
 */
public final class HtmlCheck {

    /** HTML as it is checked by that service. */
    private static final String RULES = "http://s.validator.nu/html5-rdfalite.rnc";

    /** It reads its rules by calls within calls, deeper than a thread usually may go. */
    private static final int STACK_BYTES = 32 * 1024 * 1024;

    private static final ExecutorService CHECKER = Executors.newSingleThreadExecutor(task -> {
        Thread thread = new Thread(null, task, "html-check", STACK_BYTES);
        thread.setDaemon(true);
        return thread;
    });

    private static HtmlCheck checker;

    private final SimpleDocumentValidator validator = new SimpleDocumentValidator();
    private final Found found = new Found();

    private HtmlCheck() throws Exception {
        validator.setUpMainSchema(RULES, found);
        validator.setUpValidatorAndParsers(found, true, false);
    }

    /** Errors and warnings, each with its line and column; none for a sound page. */
    public static List<String> findings(String page) {
        try {
            return CHECKER.submit(() -> check(page)).get();
        } catch (InterruptedException | ExecutionException broken) {
            throw new AssertionError(broken);
        }
    }

    private static List<String> check(String page) throws Exception {
        if (checker == null) {
            checker = new HtmlCheck();
        }
        checker.found.all.clear();
        try {
            InputSource source = new InputSource(new ByteArrayInputStream(page.getBytes(StandardCharsets.UTF_8)));
            checker.validator.checkHtmlInputSource(source);
        } catch (SAXException broken) {
            checker.found.all.add(String.valueOf(broken.getMessage()));
        }
        return List.copyOf(checker.found.all);
    }

    private static final class Found implements ErrorHandler {

        private final List<String> all = new ArrayList<>();

        @Override
        public void warning(SAXParseException warning) {
            add("warning", warning);
        }

        @Override
        public void error(SAXParseException error) {
            add("error", error);
        }

        @Override
        public void fatalError(SAXParseException error) {
            add("fatal", error);
        }

        private void add(String kind, SAXParseException what) {
            all.add(what.getLineNumber() + "." + what.getColumnNumber() + ": " + kind + ": " + what.getMessage());
        }
    }
}
