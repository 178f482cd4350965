package org.sagwise.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** A person's own cells: what was measured on them and when, and which belong together. */
@Command(name = "drawer", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class DrawerCommand implements Callable<Integer> {

    private final CallContext call;

    @Spec
    private CommandSpec spec;

    private DrawerCommand(CallContext call) {
        this.call = call;
    }

    /** The verb with what can be done with it. */
    static CommandLine line(CallContext call) {
        return new CommandLine(new DrawerCommand(call))
                .addSubcommand(new DrawerListCommand(call))
                .addSubcommand(new DrawerAddCommand(call))
                .addSubcommand(new DrawerMeasureCommand(call))
                .addSubcommand(new DrawerMarryCommand(call))
                .addSubcommand(new DrawerRetireCommand(call))
                .addSubcommand(new DrawerRemoveCommand(call))
                .addSubcommand(new DrawerImportCommand(call))
                .addSubcommand(new DrawerExportCommand(call))
                .addSubcommand(new DrawerPairCommand(call))
                .addSubcommand(new DrawerLayCommand(call));
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
