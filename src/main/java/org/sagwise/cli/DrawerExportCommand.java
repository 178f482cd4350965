package org.sagwise.cli;

import java.util.List;
import org.sagwise.file.DrawerCsv;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Writes a drawer as a table for spreadsheets. */
@Command(name = "export", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class DrawerExportCommand extends DrawerVerb {

    @Option(names = "-o", paramLabel = "CSV", defaultValue = "-", descriptionKey = "out")
    private String out;

    @Option(names = "--decimal-comma", descriptionKey = "drawer.decimal-comma")
    private boolean comma;

    @Mixin
    private Overwriting overwriting;

    DrawerExportCommand(CallContext call) {
        super(call);
    }

    @Override
    public Integer call() {
        DrawerCsv.Style style = comma ? DrawerCsv.Style.COMMA : DrawerCsv.Style.POINT;
        return look(drawer ->
                new OutputFile(context(), out, overwriting, List.of(place())).write(DrawerCsv.write(drawer, style)));
    }
}
