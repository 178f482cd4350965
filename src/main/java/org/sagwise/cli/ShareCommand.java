package org.sagwise.cli;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.sagwise.file.ShareText;
import org.sagwise.report.picture.QrPicture;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Prints the share text of a scenario. */
@Command(name = "share", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class ShareCommand implements Callable<Integer> {

    private final CallContext call;

    @Mixin
    private GivenFile source;

    @Spec
    private CommandSpec spec;

    @Option(names = "--qr", paramLabel = "OUT", descriptionKey = "share.qr")
    private String qr;

    @Mixin
    private Overwriting overwriting;

    ShareCommand(CallContext call) {
        this.call = call;
    }

    @Override
    public Integer call() {
        ScenarioInput input = new ScenarioInput(call);
        GivenScenario given = source.read(call);
        if (given.scenario().isEmpty()) {
            given.complain(call);
            return ExitStatus.WRONG;
        }
        Optional<String> text = ShareText.of(given.scenario().get());
        if (text.isEmpty()) {
            int most = ShareText.MOST_CHARACTERS / 1024;
            call.problem(call.texts().say("share.too-large", input.shown(source.name()), most));
            return ExitStatus.WRONG;
        }
        if (qr != null) {
            int status = drawn(text.get(), given.scenario().get().title());
            if (status != ExitStatus.DONE) {
                return status;
            }
        }
        call.result(text.get());
        return ExitStatus.DONE;
    }

    private int drawn(String text, String title) {
        PictureFile file = PictureFile.of(call, qr, overwriting, List.of(source.name()), spec);
        Optional<QrPicture> picture = QrPicture.of(text, title, call.locale());
        if (picture.isEmpty()) {
            call.problem(call.texts().say("share.qr-too-large", text.length(), QrPicture.MOST_CHARACTERS));
            return ExitStatus.WRONG;
        }
        return file.write(picture.get()::write);
    }
}
