package org.sagwise.cli;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.sagwise.assessment.Assessment;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.picture.layout.Drawing;
import org.sagwise.picture.look.Theme;
import org.sagwise.report.picture.BenchPicture;
import org.sagwise.report.picture.PictureSize;
import org.sagwise.run.RunPlan;
import org.sagwise.scenario.Press;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Writes a picture of the bench: exactly what the window shows, without a display. */
@Command(name = "picture", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class PictureCommand implements Callable<Integer> {

    private static final Pattern SIZE = Pattern.compile("(\\d{1,5})[xX×](\\d{1,5})");

    private static final Map<String, Theme> THEMES =
            Map.of("light", Theme.LIGHT, "dark", Theme.DARK, "contrast", Theme.HIGH_CONTRAST);

    private final CallContext call;

    @Spec
    private CommandSpec spec;

    @Mixin
    private GivenFile source;

    @Option(names = "-o", paramLabel = "OUT", required = true, descriptionKey = "picture.out")
    private String out;

    @ArgGroup
    private Button button;

    @Option(names = "--size", paramLabel = "WxH", descriptionKey = "picture.size")
    private String size;

    @Option(
            names = "--theme",
            paramLabel = "light|dark|contrast",
            descriptionKey = "picture.theme",
            defaultValue = "light")
    private String theme;

    @Option(names = "--schematic", descriptionKey = "picture.schematic")
    private boolean schematic;

    @Mixin
    private MomentOptions moment;

    /** In which position of the button. */
    private static final class Button {
        @Option(names = "--fired", descriptionKey = "fired")
        private boolean fired;

        @Option(names = "--rest", descriptionKey = "rest")
        private boolean rest;
    }

    @Mixin
    private Overwriting overwriting;

    PictureCommand(CallContext call) {
        this.call = call;
    }

    @Override
    public Integer call() {
        PictureFile file = PictureFile.orPrinted(call, out, overwriting, List.of(source.name()), spec);
        if (file.wrong().isPresent()) {
            call.problem(file.wrong().get());
            return ExitStatus.WRONG;
        }
        PictureSize wanted = size == null ? PictureSize.FORUM : wantedSize();
        Optional<Theme> colours = Optional.ofNullable(THEMES.get(theme));
        if (colours.isEmpty()) {
            throw new ParameterException(
                    spec.commandLine(),
                    WrongValue.words(call.texts(), "--theme", theme, List.of("light", "dark", "contrast")));
        }
        RunPlan until = moment.plan(call, spec.commandLine());
        GivenScenario given = source.read(call);
        if (given.scenario().isEmpty()) {
            given.complain(call);
            return ExitStatus.WRONG;
        }
        Press press = Press.of(button == null || !button.rest);
        Assessment assessment = Assessment.of(given.scenario().get(), CatalogueLoader.builtIn());
        return file.write((format, bytes) -> BenchPicture.write(
                MomentOptions.reached(assessment, until).with(press),
                schematic ? Drawing.SCHEMATIC : Drawing.BENCH,
                format,
                call.locale(),
                colours.get(),
                wanted,
                bytes));
    }

    private PictureSize wantedSize() {
        Matcher sides = SIZE.matcher(size);
        if (sides.matches()) {
            int width = Integer.parseInt(sides.group(1));
            int height = Integer.parseInt(sides.group(2));
            if (isInRange(width) && isInRange(height)) {
                return new PictureSize(width, height);
            }
        }
        throw wrong("picture.wrong-size", size, String.valueOf(PictureSize.LEAST), String.valueOf(PictureSize.MOST));
    }

    private static boolean isInRange(int side) {
        return side >= PictureSize.LEAST && side <= PictureSize.MOST;
    }

    private ParameterException wrong(String key, Object... words) {
        return new ParameterException(spec.commandLine(), call.texts().say(key, words));
    }
}
