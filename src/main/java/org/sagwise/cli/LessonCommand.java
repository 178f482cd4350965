package org.sagwise.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Lessons: which there are, whether they hold, and what is printed for a class. */
@Command(name = "lesson", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class LessonCommand implements Callable<Integer> {

    private final CallContext call;

    @Spec
    private CommandSpec spec;

    private LessonCommand(CallContext call) {
        this.call = call;
    }

    /** The verb with what can be done with it. */
    static CommandLine line(CallContext call) {
        return new CommandLine(new LessonCommand(call))
                .addSubcommand(new LessonListCommand(call))
                .addSubcommand(new LessonLintCommand(call))
                .addSubcommand(new LessonHandoutCommand(call))
                .addSubcommand(new LessonPageCommand(call))
                .addSubcommand(new LessonGlossaryCommand(call))
                .addSubcommand(new LessonCheckCommand(call));
    }

    @Override
    public Integer call() {
        throw new ParameterException(
                spec.commandLine(),
                call.texts()
                        .say(
                                "wrong.missing",
                                String.join("|", spec.subcommands().keySet())));
    }
}
