package org.sagwise.cli;

import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Prints the cautions of one or several scenarios. */
@Command(name = "check", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class CheckCommand implements Callable<Integer> {

    private final CallContext call;

    @Spec
    private CommandSpec spec;

    @Parameters(arity = "0..*", paramLabel = "FILE", descriptionKey = "files")
    private List<String> files = List.of();

    @Option(names = GivenFile.OF, paramLabel = "WORDS", descriptionKey = "of")
    private List<String> words = List.of();

    @Option(names = "--json", descriptionKey = "json")
    private boolean json;

    CheckCommand(CallContext call) {
        this.call = call;
    }

    @Override
    public Integer call() {
        if (files.isEmpty() && words.isEmpty()) {
            String missing = call.texts().say("wrong.no-scenario");
            throw new ParameterException(spec.commandLine(), missing);
        }
        ScenarioInput input = new ScenarioInput(call);
        List<CheckedFile> checked = Stream.concat(
                        files.stream().map(input::read), words.stream().map(input::readWords))
                .map(this::check)
                .toList();
        if (json) {
            CheckJson.write(call, checked);
        } else {
            CheckText text = new CheckText(call);
            checked.forEach(text::print);
        }
        return checked.stream().mapToInt(CheckCommand::status).max().orElse(ExitStatus.DONE);
    }

    private CheckedFile check(GivenScenario given) {
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
