package org.sagwise.ui.shell;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import java.util.function.Supplier;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.application.Platform;
import javafx.scene.control.Label;
import javafx.scene.control.TextArea;
import javafx.scene.control.TitledPane;
import javafx.scene.layout.VBox;
import org.sagwise.ui.kit.Dialogs;

/**
 * What happens when the program itself fails: it says so once, tells what to do, and goes on. A
 * failure that comes again while it is being told goes to the log alone.
 */
public final class FailureReport implements Thread.UncaughtExceptionHandler {

    private static final Logger LOG = Logger.getLogger(FailureReport.class.getName());

    private final Supplier<Dialogs> dialogs;
    private boolean telling;

    /**
     * @param dialogs makes dialogs in the present language
     */
    public FailureReport(Supplier<Dialogs> dialogs) {
        this.dialogs = dialogs;
    }

    @Override
    public void uncaughtException(Thread thread, Throwable failure) {
        LOG.log(Level.SEVERE, "the program failed", failure);
        // Not from within the failed call, which may have left a layout or an animation half done.
        Platform.runLater(() -> tell(failure));
    }

    private void tell(Throwable failure) {
        if (telling) {
            return;
        }
        telling = true;
        Dialogs now = dialogs.get();
        Label words = new Label(now.wording().say("failure.text"));
        words.setWrapText(true);
        TextArea trace = new TextArea(traceOf(failure));
        trace.setEditable(false);
        TitledPane details = new TitledPane(now.wording().say("failure.details"), trace);
        details.setExpanded(false);
        details.setAnimated(false);
        VBox content = new VBox(words, details);
        content.getStyleClass().add("dialog-words");
        now.ask("failure", now.wording().say("failure.title"), content, List.of(now.leave("dialog.close")));
        telling = false;
    }

    private static String traceOf(Throwable failure) {
        StringWriter text = new StringWriter();
        failure.printStackTrace(new PrintWriter(text));
        return text.toString();
    }
}
