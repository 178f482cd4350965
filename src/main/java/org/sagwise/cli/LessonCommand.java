package org.sagwise.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;

/** Lessons: which there are, whether they hold, and what is printed for a class. */
@Command(name = "lesson", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class LessonCommand extends NeedsSubverb {

    private LessonCommand(CallContext call) {
        super(call);
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
}
