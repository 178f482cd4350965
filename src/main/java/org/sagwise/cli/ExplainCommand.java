package org.sagwise.cli;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.sagwise.assessment.Assessment;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.ShareText;
import org.sagwise.report.explain.ExplainedPost;
import org.sagwise.report.post.PostFormat;
import org.sagwise.run.RunPlan;
import org.sagwise.scenario.Scenario;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Writes a post that explains a scenario to somebody who has never seen it. */
@Command(name = "explain", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class ExplainCommand implements Callable<Integer> {

    private static final Map<String, PostFormat> ENDINGS = Map.of(
            "md", PostFormat.MARKDOWN,
            "bbcode", PostFormat.BBCODE,
            "txt", PostFormat.TEXT,
            "html", PostFormat.HTML,
            "htm", PostFormat.HTML);

    private final CallContext call;

    @Spec
    private CommandSpec spec;

    @Mixin
    private GivenFile source;

    @Option(names = "--format", paramLabel = "markdown|bbcode|text|html", descriptionKey = "explain.format")
    private String format;

    @Option(names = "--short", descriptionKey = "explain.short")
    private boolean brief;

    @Option(names = "--symptom", paramLabel = "WORDS", descriptionKey = "explain.symptom")
    private String symptom;

    @Option(names = "--page", paramLabel = "WHERE", descriptionKey = "explain.page")
    private String page;

    @Option(names = "-o", paramLabel = "OUT", descriptionKey = "out")
    private String out;

    @Mixin
    private MomentOptions moment;

    @Mixin
    private Overwriting overwriting;

    ExplainCommand(CallContext call) {
        this.call = call;
    }

    @Override
    public Integer call() {
        PostFormat wanted = wanted();
        OutputFile target = new OutputFile(call, out == null ? "-" : out, overwriting, List.of(source.name()));
        if (out != null && !OutputFile.isStandardOutput(out) && target.wrong().isPresent()) {
            call.problem(target.wrong().get());
            return ExitStatus.WRONG;
        }
        RunPlan until = moment.plan(call, spec.commandLine());
        GivenScenario given = source.read(call);
        if (given.scenario().isEmpty()) {
            given.complain(call);
            return ExitStatus.WRONG;
        }
        String post = post(given.scenario().get(), until, wanted);
        if (out == null) {
            call.out().print(post);
            return ExitStatus.DONE;
        }
        return target.write(post);
    }

    private String post(Scenario scenario, RunPlan until, PostFormat wanted) {
        Assessment assessment =
                Assessment.of(scenario, CatalogueLoader.builtIn()).lookingAhead();
        return ExplainedPost.write(
                MomentOptions.reached(assessment, until),
                wanted,
                ShareText::of,
                new ExplainedPost.Wish(
                        brief ? ExplainedPost.Size.SHORT : ExplainedPost.Size.LONG,
                        Optional.ofNullable(symptom),
                        Optional.ofNullable(page).filter(where -> !where.isBlank())),
                call.locale(),
                call.signs());
    }

    /** The format asked for; else that of the file's ending; else Markdown. */
    private PostFormat wanted() {
        if (format != null) {
            return PostFormat.ofWord(format)
                    .orElseThrow(() -> new ParameterException(
                            spec.commandLine(), WrongValue.words(call.texts(), "--format", format, words())));
        }
        String ending = out == null ? "" : OutputFile.ending(out);
        if (!ending.isEmpty() && !ENDINGS.containsKey(ending)) {
            throw new ParameterException(
                    spec.commandLine(),
                    call.texts()
                            .say(
                                    "out.ending",
                                    out,
                                    String.join(
                                            ", ",
                                            ENDINGS.keySet().stream().sorted().toList())));
        }
        return ENDINGS.getOrDefault(ending, PostFormat.MARKDOWN);
    }

    private static List<String> words() {
        return Stream.of(PostFormat.values()).map(PostFormat::word).toList();
    }
}
