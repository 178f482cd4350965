package org.sagwise.cli;

import java.util.concurrent.Callable;
import org.sagwise.text.Glossary;
import picocli.CommandLine.Command;

/** Prints the words that the program explains. */
@Command(name = "glossary", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class LessonGlossaryCommand implements Callable<Integer> {

    private final CallContext call;

    LessonGlossaryCommand(CallContext call) {
        this.call = call;
    }

    @Override
    public Integer call() {
        for (Glossary.Entry entry : Glossary.in(call.locale()).alphabetical()) {
            call.result(entry.term());
            Paragraph.lines(entry.text(), "    ").forEach(call::result);
        }
        return ExitStatus.DONE;
    }
}
