package org.sagwise.cli;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
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
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Puts two scenarios side by side: what differs in build and in outcome. */
@Command(name = "compare", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class CompareCommand implements Callable<Integer> {

    private final CallContext call;

    @Parameters(index = "0", paramLabel = "FILE", descriptionKey = "compare.first")
    private String first;

    @Parameters(index = "1", paramLabel = "FILE", descriptionKey = "compare.second")
    private String second;

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
        if (first.equals(second) && first.equals(ScenarioInput.STANDARD_INPUT)) {
            call.problem(call.texts().say("wrong.standard-input-twice"));
            return ExitStatus.WRONG;
        }
        List<GivenScenario> given = List.of(read(first), read(second));
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
                            ComparisonPost.of(comparison, call.locale(), call.signs()), call.locale(), call.signs()));
        }
        return comparison.differs() ? ExitStatus.FOUND : ExitStatus.DONE;
    }

    private int picture(Comparison comparison) {
        Optional<PictureFormat> format = PictureFormat.ofFileName(out);
        if (format.isEmpty()) {
            call.problem(call.texts().say("picture.ending", out, "png, svg, pdf"));
            return ExitStatus.WRONG;
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            StairsPicture.write(
                    comparison.first().with(Press.HELD),
                    comparison.second().with(Press.HELD),
                    format.get(),
                    call.locale(),
                    Theme.LIGHT,
                    PictureSize.FORUM,
                    bytes);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return new OutputFile(call, out, overwriting, List.of(first, second)).write(bytes.toByteArray());
    }

    private GivenScenario read(String name) {
        return new ScenarioInput(call).read(name);
    }

    private static Assessment assess(GivenScenario given) {
        return Assessment.of(given.scenario().orElseThrow(), CatalogueLoader.builtIn());
    }
}
