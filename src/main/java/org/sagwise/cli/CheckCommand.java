package org.sagwise.cli;

import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Prints the cautions of one or several scenarios. */
@Command(name = "check", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class CheckCommand implements Callable<Integer> {

    private final CallContext call;

    @Parameters(arity = "1..*", paramLabel = "FILE", descriptionKey = "files")
    private List<String> files;

    @Option(names = "--json", descriptionKey = "json")
    private boolean json;

    CheckCommand(CallContext call) {
        this.call = call;
    }

    @Override
    public Integer call() {
        List<CheckedFile> checked = files.stream().map(this::check).toList();
        if (json) {
            CheckJson.write(call, checked);
        } else {
            CheckText text = new CheckText(call);
            checked.forEach(text::print);
        }
        return checked.stream().mapToInt(CheckCommand::status).max().orElse(ExitStatus.DONE);
    }

    private CheckedFile check(String name) {
        GivenScenario given = new ScenarioInput(call).read(name);
        given.complain(call);
        return CheckedFile.of(given);
    }

    /** A file that could not be read weighs more than any caution in another one. */
    private static int status(CheckedFile checked) {
        if (checked.given().scenario().isEmpty()) {
            return ExitStatus.WRONG;
        }
        return checked.cautions().stream().anyMatch(it -> it.signal().isGrave()) ? ExitStatus.FOUND : ExitStatus.DONE;
    }
}
