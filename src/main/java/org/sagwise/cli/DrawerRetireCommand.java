package org.sagwise.cli;

import java.util.List;
import java.util.Optional;
import org.sagwise.plan.drawer.Drawer;
import org.sagwise.plan.drawer.DrawerKeys;
import org.sagwise.plan.drawer.Retirement;
import org.sagwise.text.Texts;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Notes that cells are used no more, or that they are again. */
@Command(name = "retire", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class DrawerRetireCommand extends DrawerVerb {

    @Parameters(arity = "1..*", paramLabel = "MARK", descriptionKey = "drawer.marks")
    private List<String> marks;

    @Option(names = "--why", paramLabel = "WORDS", descriptionKey = "drawer.why")
    private String why;

    @Option(names = "--on", paramLabel = "DAY", descriptionKey = "drawer.on")
    private String on;

    @Option(names = "--back", descriptionKey = "drawer.back")
    private boolean back;

    DrawerRetireCommand(CallContext call) {
        super(call);
    }

    @Override
    public Integer call() {
        Optional<Retirement> retired =
                back ? Optional.empty() : Optional.of(new Retirement(Optional.of(day("--on", on)), word()));
        int status = change(drawer -> retired(drawer, retired));
        if (status == ExitStatus.DONE && !back) {
            context().result(Texts.in("notices", context().locale()).say("safety.damaged-cell.text"));
        }
        return status;
    }

    private String word() {
        return why == null ? "" : why.strip();
    }

    private Optional<Drawer> retired(Drawer drawer, Optional<Retirement> retired) {
        if (complain(drawer.unknown(marks))) {
            return Optional.empty();
        }
        Drawer now = drawer;
        for (String mark : marks) {
            now = now.change(mark, cell -> cell.withRetirement(retired));
            if (complain(DrawerKeys.checkCell(now.find(mark).orElseThrow().keys(), "", catalogue()))) {
                return Optional.empty();
            }
        }
        return Optional.of(now);
    }
}
