package org.sagwise.cli;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;
import org.sagwise.assessment.Assessment;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.picture.look.Theme;
import org.sagwise.report.compare.Comparison;
import org.sagwise.report.compare.ComparisonPost;
import org.sagwise.report.picture.PictureFormat;
import org.sagwise.report.picture.PictureSize;
import org.sagwise.report.picture.StairsPicture;
import org.sagwise.report.post.PostFormat;
import org.sagwise.scenario.Press;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Puts two scenarios side by side: what differs in build and in outcome. */
@Command(name = "compare", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class CompareCommand implements Callable<Integer> {

    private final CallContext call;

    @Spec
    private CommandSpec spec;

    @Parameters(arity = "0..2", paramLabel = "FILE", descriptionKey = "compare.files")
    private List<String> files = List.of();

    @Option(names = GivenFile.OF, paramLabel = "WORDS", descriptionKey = "of")
    private List<String> words = List.of();

    @Option(names = "-o", paramLabel = "OUT", descriptionKey = "compare.out")
    private String out;

    @Option(names = "--json", descriptionKey = "json")
    private boolean json;

    @Mixin
    private Overwriting overwriting;

    CompareCommand(CallContext call) {
        this.call = call;
    }

    @Override
    public Integer call() {
        if (files.size() + words.size() != 2) {
            String missing = call.texts().say("compare.two");
            throw new ParameterException(spec.commandLine(), missing);
        }
        if (Collections.frequency(files, ScenarioInput.STANDARD_INPUT) > 1) {
            call.problem(call.texts().say("wrong.standard-input-twice"));
            return ExitStatus.WRONG;
        }
        List<GivenScenario> given = given();
        given.forEach(each -> each.complain(call));
        if (given.stream().anyMatch(each -> each.scenario().isEmpty())) {
            return ExitStatus.WRONG;
        }
        Comparison comparison = Comparison.of(assess(given.get(0)), assess(given.get(1)));
        if (out != null) {
            int written = picture(comparison);
            if (written != ExitStatus.DONE) {
                return written;
            }
        }
        if (json) {
            CompareJson.write(call, comparison);
        } else {
            call.out()
                    .print(PostFormat.TEXT.write(
                            ComparisonPost.of(comparison, names(given), call.locale(), call.signs()),
                            call.locale(),
                            call.signs()));
        }
        return comparison.differs() ? ExitStatus.FOUND : ExitStatus.DONE;
    }

    private List<String> names(List<GivenScenario> given) {
        ScenarioInput input = new ScenarioInput(call);
        return given.stream().map(GivenScenario::name).map(input::shown).toList();
    }

    private int picture(Comparison comparison) {
        Optional<PictureFormat> format = PictureFormat.ofFileName(out);
        if (format.isEmpty()) {
            call.problem(PictureFile.wrongEnding(call, out));
            return ExitStatus.WRONG;
        }
        return new PictureFile(new OutputFile(call, out, overwriting, files), format.get(), false)
                .write((kind, bytes) -> StairsPicture.write(
                        comparison.first().with(Press.HELD),
                        comparison.second().with(Press.HELD),
                        kind,
                        call.locale(),
                        Theme.LIGHT,
                        PictureSize.FORUM,
                        bytes));
    }

    /** Both, in the order in which the call names them. */
    private List<GivenScenario> given() {
        ScenarioInput input = new ScenarioInput(call);
        List<GivenScenario> given = new ArrayList<>();
        files.forEach(file -> given.add(input.read(file)));
        words.forEach(line -> given.add(input.readWords(line)));
        List<String> said = spec.commandLine().getParseResult().originalArgs();
        if (files.size() == 1 && firstWords(said) < said.indexOf(files.get(0))) {
            Collections.reverse(given);
        }
        return given;
    }

    private static int firstWords(List<String> said) {
        return IntStream.range(0, said.size())
                .filter(i -> said.get(i).startsWith(GivenFile.OF))
                .findFirst()
                .orElse(-1);
    }

    private static Assessment assess(GivenScenario given) {
        return Assessment.of(given.scenario().orElseThrow(), CatalogueLoader.builtIn());
    }
}
