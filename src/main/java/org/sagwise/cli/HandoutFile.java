package org.sagwise.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import org.sagwise.report.handout.Handout;
import org.sagwise.report.handout.HandoutHtml;
import org.sagwise.report.handout.HandoutPdf;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** A file of pages to print; its ending says of which kind. */
final class HandoutFile {

    private final OutputFile file;
    private final boolean isHtml;

    /**
     * @param out as the call named it
     * @param overwriting whether it may replace a file
     * @param spec the verb, for who is told what is wrong with the call
     * @throws ParameterException if pages cannot be written with such an ending
     */
    HandoutFile(CallContext call, String out, Overwriting overwriting, CommandSpec spec) {
        String ending = out.substring(out.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
        if (!List.of("html", "pdf").contains(ending)) {
            throw new ParameterException(spec.commandLine(), call.texts().say("picture.ending", out, "html, pdf"));
        }
        file = new OutputFile(call, out, overwriting, List.of());
        isHtml = ending.equals("html");
    }

    /** Writes the pages and gives the exit status. */
    int write(List<Handout> pages) {
        return file.write(isHtml ? HandoutHtml.write(pages).getBytes(StandardCharsets.UTF_8) : pdf(pages));
    }

    private static byte[] pdf(List<Handout> pages) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            HandoutPdf.write(pages, bytes);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return bytes.toByteArray();
    }
}
