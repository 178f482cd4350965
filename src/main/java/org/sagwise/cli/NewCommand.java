package org.sagwise.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.Saved;
import org.sagwise.file.ScenarioFiles;
import org.sagwise.file.ScenarioWriter;
import org.sagwise.scenario.Scenario;
import org.sagwise.words.TradeWords;
import org.sagwise.words.WordsBench;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Makes a scenario from one line of trade words, and says what it assumed. */
@Command(name = "new", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class NewCommand implements Callable<Integer> {

    private final CallContext call;

    @Parameters(arity = "1..*", paramLabel = "WORDS", descriptionKey = "new.words")
    private List<String> words;

    @Option(names = "-o", paramLabel = "FILE", descriptionKey = "out")
    private String out;

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
        return out == null || OutputFile.isStandardOutput(out) ? printed(built) : saved(built);
    }

    /** The file alone goes to standard output, so that another call can read it. */
    private int printed(WordsBench.Built built) {
        WordsAnswer.assumed(call, built).ifPresent(call::problem);
        call.out().print(ScenarioWriter.write(built.bench()));
        return ExitStatus.DONE;
    }

    private int saved(WordsBench.Built built) {
        int status = save(built.bench());
        if (status == ExitStatus.DONE) {
            call.result(call.texts().say("out.written", out));
            WordsAnswer.assumed(call, built).ifPresent(call::result);
        }
        return status;
    }

    private int save(Scenario scenario) {
        Optional<String> wrong = new OutputFile(call, out).wrong();
        if (wrong.isPresent()) {
            call.problem(wrong.get());
            return ExitStatus.WRONG;
        }
        if (ScenarioFiles.save(Path.of(out), scenario) instanceof Saved.Failed failed) {
            call.problem(failed.problem().text(call.locale()));
            return ExitStatus.WRONG;
        }
        return ExitStatus.DONE;
    }
}
