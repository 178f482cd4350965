package org.sagwise.cli;

import java.util.List;
import java.util.Optional;
import org.sagwise.plan.drawer.Drawer;
import org.sagwise.plan.drawer.DrawerKeys;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Makes cells a set that is used, charged and rested together; or parts one. */
@Command(name = "marry", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class DrawerMarryCommand extends DrawerVerb {

    @Parameters(index = "0", paramLabel = "SET", descriptionKey = "drawer.set")
    private String set;

    @Parameters(index = "1..*", arity = "0..*", paramLabel = "MARK", descriptionKey = "drawer.marks")
    private List<String> marks = List.of();

    @Option(names = "--since", paramLabel = "DAY", descriptionKey = "drawer.since")
    private String since;

    @Option(names = "--apart", descriptionKey = "drawer.apart")
    private boolean apart;

    DrawerMarryCommand(CallContext call) {
        super(call);
    }

    @Override
    public Integer call() {
        return change(drawer -> apart ? parted(drawer) : married(drawer));
    }

    private Optional<Drawer> parted(Drawer drawer) {
        if (!drawer.sets().containsKey(set)) {
            context()
                    .problem(words().say(
                                    "cli.no-set",
                                    set,
                                    String.join(", ", drawer.sets().keySet())));
            return Optional.empty();
        }
        return Optional.of(drawer.divorce(set));
    }

    private Optional<Drawer> married(Drawer drawer) {
        if (complain(drawer.againstMarrying(set, marks))) {
            return Optional.empty();
        }
        Drawer now = drawer.marry(set, marks, Optional.of(day("--since", since)));
        boolean wrong = complain(
                DrawerKeys.checkCell(now.find(marks.get(0)).orElseThrow().keys(), "", catalogue()));
        return wrong ? Optional.empty() : Optional.of(now);
    }
}
