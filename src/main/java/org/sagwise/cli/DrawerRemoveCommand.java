package org.sagwise.cli;

import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Takes cells out of a drawer with all that was measured on them. */
@Command(name = "remove", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class DrawerRemoveCommand extends DrawerVerb {

    @Parameters(arity = "1..*", paramLabel = "MARK", descriptionKey = "drawer.marks")
    private List<String> marks;

    DrawerRemoveCommand(CallContext call) {
        super(call);
    }

    @Override
    public Integer call() {
        return change(
                drawer -> complain(drawer.unknown(marks)) ? Optional.empty() : Optional.of(drawer.without(marks)));
    }
}
