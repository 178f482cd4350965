package org.sagwise.cli;

import java.util.List;
import java.util.concurrent.Callable;
import org.sagwise.lesson.IdeasCheck.Form;
import org.sagwise.report.handout.Handout;
import org.sagwise.report.handout.IdeasCheckPages;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
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
        HandoutFile file = new HandoutFile(call, out, overwriting, spec);
        Handout page = IdeasCheckPages.form(form, key ? Handout.Kind.KEY : Handout.Kind.SHEET, call.locale());
        return file.write(List.of(page));
    }
}
