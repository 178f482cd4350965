package org.sagwise.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import org.sagwise.lesson.IdeasCheck.Form;
import org.sagwise.report.handout.Handout;
import org.sagwise.report.handout.HandoutHtml;
import org.sagwise.report.handout.HandoutPdf;
import org.sagwise.report.handout.IdeasCheckPages;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Writes the check of ideas on paper: form A before a course, form B after it, and the key. */
@Command(name = "check", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class LessonCheckCommand implements Callable<Integer> {

    private final CallContext call;

    @Spec
    private CommandSpec spec;

    @Option(names = "--form", paramLabel = "FORM", defaultValue = "A", descriptionKey = "lesson.form")
    private Form form;

    @Option(names = "--key", descriptionKey = "lesson.key")
    private boolean key;

    @Option(names = "-o", paramLabel = "OUT", required = true, descriptionKey = "lesson.out")
    private String out;

    @Mixin
    private Overwriting overwriting;

    LessonCheckCommand(CallContext call) {
        this.call = call;
    }

    @Override
    public Integer call() {
        String ending = out.substring(out.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
        if (!List.of("html", "pdf").contains(ending)) {
            throw new ParameterException(spec.commandLine(), call.texts().say("picture.ending", out, "html, pdf"));
        }
        Handout page = IdeasCheckPages.form(form, key ? Handout.Kind.KEY : Handout.Kind.SHEET, call.locale());
        return new OutputFile(call, out, overwriting, List.of()).write(bytes(List.of(page), ending));
    }

    /** Pages as a file of one kind or the other. */
    static byte[] bytes(List<Handout> pages, String ending) {
        if (ending.equals("html")) {
            return HandoutHtml.write(pages).getBytes(StandardCharsets.UTF_8);
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            HandoutPdf.write(pages, bytes);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return bytes.toByteArray();
    }
}
