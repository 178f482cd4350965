package org.sagwise.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.sagwise.web.PageWriter;
import org.sagwise.web.SiteWriter;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Writes a live page: one file in which whoever opens it can try the bench; or a whole site of them. */
@Command(name = "page", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class PageCommand implements Callable<Integer> {

    private final CallContext call;

    @Spec
    private CommandSpec spec;

    @Mixin
    private GivenFile source;

    @Option(names = "-o", paramLabel = "OUT", descriptionKey = "page.out")
    private String out;

    @Option(names = "--site", paramLabel = "FOLDER", descriptionKey = "page.site")
    private String site;

    @Mixin
    private Overwriting overwriting;

    PageCommand(CallContext call) {
        this.call = call;
    }

    @Override
    public Integer call() {
        if (source.isNamed() == (site != null) || (site == null) == (out == null)) {
            throw new ParameterException(spec.commandLine(), call.texts().say("page.either"));
        }
        Optional<GivenScenario> given = source.isNamed() ? Optional.of(source.read(call)) : Optional.empty();
        if (given.isPresent() && given.get().scenario().isEmpty()) {
            given.get().complain(call);
            return ExitStatus.WRONG;
        }
        Optional<byte[]> engine = PageEngine.read();
        if (engine.isEmpty()) {
            call.problem(call.texts().say("page.no-engine"));
            return ExitStatus.FAILED;
        }
        if (given.isPresent()) {
            PageWriter writer = new PageWriter(engine.get(), call.locale());
            return new OutputFile(call, out, overwriting, List.of(source.name()))
                    .write(writer.write(given.get().scenario().get()));
        }
        return site(engine.get());
    }

    private int site(byte[] engine) {
        Path folder;
        try {
            folder = Files.createDirectories(Path.of(site));
        } catch (IOException | InvalidPathException failure) {
            call.problem(call.texts().say("out.failed", site, String.valueOf(failure.getMessage())));
            return ExitStatus.WRONG;
        }
        for (Map.Entry<String, String> page : SiteWriter.pages(engine, call.locale())) {
            int status = new OutputFile(call, folder.resolve(page.getKey()).toString(), overwriting, List.of())
                    .write(page.getValue());
            if (status != ExitStatus.DONE) {
                return status;
            }
        }
        return ExitStatus.DONE;
    }
}
