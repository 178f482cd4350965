package org.sagwise.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.sagwise.report.picture.PictureFormat;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/**
 * A picture that a call asked for; the ending of its name says of which kind.
 *
 * @param format its kind
 * @param isPrinted whether it goes to standard output
 */
record PictureFile(OutputFile file, PictureFormat format, boolean isPrinted) {

    /** What makes a picture. */
    interface Drawing {

        void write(PictureFormat format, OutputStream out) throws IOException;
    }

    /**
     * @param out as the call named it
     * @param overwriting whether it may replace a file
     * @param inputs what the call reads: never replaced
     * @param verb for who is told what is wrong with the call
     * @throws ParameterException if no picture can be written with such an ending
     */
    static PictureFile of(
            CallContext call, String out, Overwriting overwriting, List<String> inputs, CommandSpec verb) {
        PictureFormat format = PictureFormat.ofFileName(out)
                .orElseThrow(() -> new ParameterException(verb.commandLine(), wrongEnding(call, out)));
        return new PictureFile(new OutputFile(call, out, overwriting, inputs), format, false);
    }

    /** The same, or SVG on standard output where the call says so. */
    static PictureFile orPrinted(
            CallContext call, String out, Overwriting overwriting, List<String> inputs, CommandSpec verb) {
        return OutputFile.isStandardOutput(out)
                ? new PictureFile(new OutputFile(call, out, overwriting, inputs), PictureFormat.SVG, true)
                : of(call, out, overwriting, inputs, verb);
    }

    static String wrongEnding(CallContext call, String out) {
        return call.texts().say("picture.ending", out, "png, svg, pdf");
    }

    /** What keeps it from being written, as far as can be told ahead. */
    Optional<String> wrong() {
        return isPrinted ? Optional.empty() : file.wrong();
    }

    /** Draws it and gives the exit status. */
    int write(Drawing drawing) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            drawing.write(format, bytes);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return isPrinted ? file.write(bytes.toString(StandardCharsets.UTF_8)) : file.write(bytes.toByteArray());
    }
}
