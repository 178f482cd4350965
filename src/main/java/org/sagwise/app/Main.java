package org.sagwise.app;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import org.sagwise.cli.SagwiseCommand;

/**
 * Starts Sagwise, as a command line or as a window.
 *
 * <p>It is no {@code javafx.application.Application}: the JVM refuses to start one from the class
 * path, and a verb of the command line must start without JavaFX.
 */
public final class Main {

    /** Exit status when the program itself failed. */
    private static final int FAILED = 3;

    private Main() {}

    public static void main(String[] args) {
        // Pictures are painted without a display, also where one could be had.
        System.setProperty("java.awt.headless", "true");
        PrintWriter out = writer(FileDescriptor.out);
        PrintWriter err = writer(FileDescriptor.err);
        Thread.currentThread().setUncaughtExceptionHandler((thread, failure) -> {
            out.flush();
            failure.printStackTrace(err);
            err.flush();
            Runtime.getRuntime().halt(FAILED);
        });
        int status = SagwiseCommand.run(args, new FxWindow(), out, err, System.in);
        out.flush();
        err.flush();
        System.exit(status);
    }

    private static PrintWriter writer(FileDescriptor stream) {
        return new PrintWriter(new OutputStreamWriter(new ReaderStream(new FileOutputStream(stream)), charset()));
    }

    /**
     * UTF-8, also where the locale knows only ASCII, since Ω and ° must arrive; on Windows what the
     * console expects.
     */
    private static Charset charset() {
        boolean windowsConsole = System.getProperty("os.name").startsWith("Windows") && System.console() != null;
        return windowsConsole ? System.console().charset() : StandardCharsets.UTF_8;
    }
}
