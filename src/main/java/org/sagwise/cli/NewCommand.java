package org.sagwise.cli;

import java.util.List;
import java.util.concurrent.Callable;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.words.TradeWords;
import org.sagwise.words.WordsBench;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Makes a scenario from one line of trade words, and says what it assumed. */
@Command(name = "new", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class NewCommand implements Callable<Integer> {

    private final CallContext call;

    @Parameters(arity = "1..*", paramLabel = "WORDS", descriptionKey = "new.words")
    private List<String> words;

    @Mixin
    private ScenarioOutput output;

    NewCommand(CallContext call) {
        this.call = call;
    }

    @Override
    public Integer call() {
        String line = String.join(" ", words);
        WordsBench answer = TradeWords.read(line, CatalogueLoader.builtIn(), call.locale());
        if (!(answer instanceof WordsBench.Built built)) {
            new WordsAnswer(call).complain(line, ((WordsBench.Refused) answer).complaints());
            return ExitStatus.WRONG;
        }
        int status = output.write(call, built.bench());
        if (status == ExitStatus.DONE) {
            WordsAnswer.assumed(call, built).ifPresent(output.isPrinted() ? call::problem : call::result);
        }
        return status;
    }
}
