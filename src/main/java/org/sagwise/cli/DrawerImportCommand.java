package org.sagwise.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.sagwise.file.DrawerCsv;
import org.sagwise.scenario.Finding;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Adds what a table says to a drawer. */
@Command(name = "import", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class DrawerImportCommand extends DrawerVerb {

    private static final int MOST_BYTES = 8 * 1024 * 1024;

    @Parameters(paramLabel = "CSV", descriptionKey = "drawer.csv")
    private String name;

    @Option(names = "--table-first", descriptionKey = "drawer.table-first")
    private boolean tableFirst;

    DrawerImportCommand(CallContext call) {
        super(call);
    }

    @Override
    public Integer call() {
        ScenarioInput input = new ScenarioInput(context());
        Optional<String> wrong = input.wrongName(name);
        if (wrong.isPresent()) {
            context().problem(context().texts().say("wrong.line", input.shown(name), wrong.get()));
            return ExitStatus.WRONG;
        }
        byte[] bytes;
        try (InputStream stream =
                name.equals(ScenarioInput.STANDARD_INPUT) ? context().in() : Files.newInputStream(Path.of(name))) {
            bytes = stream.readNBytes(MOST_BYTES + 1);
        } catch (IOException failure) {
            context().problem(context().texts().say("wrong.unreadable", failure.getMessage()));
            return ExitStatus.WRONG;
        }
        DrawerCsv.Precedence first = tableFirst ? DrawerCsv.Precedence.TABLE : DrawerCsv.Precedence.NEITHER;
        return change(drawer -> {
            DrawerCsv.Read read = DrawerCsv.read(bytes, drawer, catalogue(), first);
            if (read instanceof DrawerCsv.Read.Ok ok) {
                context().result(words().say("cli.imported", ok.cells(), ok.measurements()));
                return Optional.of(ok.drawer());
            }
            List<Finding> findings = ((DrawerCsv.Read.Refused) read).findings();
            context().problem(context().texts().say("wrong.file", input.shown(name), findings.size()));
            findings.forEach(
                    finding -> context().problem("  " + finding.text(context().locale())));
            return Optional.empty();
        });
    }
}
