package org.sagwise.cli;

import java.util.concurrent.Callable;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.words.SaidBench;
import org.sagwise.words.TradeWords;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Prints a bench as one line of trade words, or says what cannot be said so. */
@Command(name = "words", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class WordsCommand implements Callable<Integer> {

    private final CallContext call;

    @Mixin
    private GivenFile source;

    WordsCommand(CallContext call) {
        this.call = call;
    }

    @Override
    public Integer call() {
        GivenScenario given = source.read(call);
        if (given.scenario().isEmpty()) {
            given.complain(call);
            return ExitStatus.WRONG;
        }
        SaidBench said = TradeWords.write(given.scenario().get(), CatalogueLoader.builtIn(), call.locale());
        if (said instanceof SaidBench.Unsaid unsaid) {
            call.problem(call.texts().say("words.unsaid", new ScenarioInput(call).shown(source.name())));
            unsaid.reasons().forEach(reason -> call.problem("  " + reason));
            return ExitStatus.WRONG;
        }
        call.result(said.line().orElseThrow());
        return ExitStatus.DONE;
    }
}
