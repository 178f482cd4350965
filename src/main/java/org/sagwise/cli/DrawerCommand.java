package org.sagwise.cli;

import picocli.CommandLine;
import picocli.CommandLine.Command;

/** A person's own cells: what was measured on them and when, and which belong together. */
@Command(name = "drawer", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class DrawerCommand extends NeedsSubverb {

    private DrawerCommand(CallContext call) {
        super(call);
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
}
