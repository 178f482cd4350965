package org.sagwise.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.part.Alloy;
import org.sagwise.part.CatalogueEntry;
import org.sagwise.part.CoilWinding;
import org.sagwise.part.CoilWire;
import org.sagwise.part.Gauge;
import org.sagwise.part.WireSize;
import org.sagwise.picture.look.Theme;
import org.sagwise.plan.WholeWraps;
import org.sagwise.plan.WoundCoil;
import org.sagwise.plan.WoundWords;
import org.sagwise.quantity.Measure;
import org.sagwise.quantity.Unit;
import org.sagwise.report.picture.PictureSize;
import org.sagwise.report.picture.WindingPicture;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Finds the wraps for wanted ohms or watts, or says what a wound coil comes to. */
@Command(name = "wind", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class WindCommand implements Callable<Integer> {

    /** One cell at its nominal volts: IEC 61960-3 for cells of this chemistry. */
    private static final double USUAL_V = 3.7;

    private static final double USUAL_INNER_M = 3e-3;
    private static final double AIR_C = 20;
    private static final int MOST_STRANDS = 1_000;
    private static final Measure MILLIMETRES = Measure.of(Unit.METRE, "mm");

    private final CallContext call;

    @Spec
    private CommandSpec spec;

    @ArgGroup(multiplicity = "1")
    private Wish wish;

    /** What is asked for. */
    private static final class Wish {
        @Option(names = "--ohm", paramLabel = "OHM", descriptionKey = "wind.ohm")
        private String ohm;

        @Option(names = "--watts", paramLabel = "W", descriptionKey = "wind.watts")
        private String watts;

        @Option(names = "--wraps", paramLabel = "N", descriptionKey = "wind.wraps")
        private String wraps;
    }

    @Option(names = "--volts", paramLabel = "V", descriptionKey = "wind.volts")
    private String volts;

    @Option(names = "--alloy", paramLabel = "ID", defaultValue = "fecral-25-5", descriptionKey = "wind.alloy")
    private String alloy;

    @ArgGroup(multiplicity = "1")
    private Thickness thickness;

    /** How thick the wire is. */
    private static final class Thickness {
        @Option(names = "--awg", paramLabel = "N", descriptionKey = "wind.awg")
        private Integer awg;

        @Option(names = "--diameter", paramLabel = "MM", descriptionKey = "wind.diameter")
        private String diameter;
    }

    @Option(names = "--strands", paramLabel = "N", defaultValue = "1", descriptionKey = "wind.strands")
    private int strands;

    @Option(names = "--inner", paramLabel = "MM", descriptionKey = "wind.inner")
    private String inner;

    @Option(names = "--legs", paramLabel = "MM", descriptionKey = "wind.legs")
    private String legs;

    @Option(names = "-o", paramLabel = "OUT", descriptionKey = "wind.out")
    private String out;

    @Option(names = "--json", descriptionKey = "json")
    private boolean json;

    @Mixin
    private Overwriting overwriting;

    WindCommand(CallContext call) {
        this.call = call;
    }

    @Override
    public Integer call() {
        Amounts amounts = new Amounts(call, spec);
        double atV = volts == null ? USUAL_V : amounts.above("--volts", volts, Unit.VOLT);
        CoilWire wire = wire(amounts);
        double innerM = inner == null ? USUAL_INNER_M : amounts.above("--inner", inner, MILLIMETRES);
        double legsM = legs == null ? 0 : amounts.fromZero("--legs", legs, MILLIMETRES);
        Optional<PictureFile> file = out == null ? Optional.empty() : Optional.of(file(amounts));
        WoundWords words = new WoundWords(call.format());
        OptionalDouble wantedOhm = wantedOhm(amounts, atV);
        Optional<WholeWraps.Answer> answer = wantedOhm.stream()
                .mapToObj(ohm -> WholeWraps.of(wire, innerM, legsM, ohm))
                .findFirst();
        if (answer.isPresent() && !(answer.get() instanceof WholeWraps.Answer.Found)) {
            call.problem(words.refused(answer.get(), wantedOhm.getAsDouble()));
            return ExitStatus.WRONG;
        }
        Optional<WholeWraps.Answer.Found> found = answer.map(WholeWraps.Answer.Found.class::cast);
        CoilWinding winding = found.map(WholeWraps.Answer.Found::nearest)
                .orElseGet(() -> new CoilWinding(wire, wraps(amounts), innerM, legsM));
        WoundCoil coil = new WoundCoil(winding, atV, AIR_C);
        if (file.isPresent()) {
            int written = file.get().write(picture(coil, words)::write);
            if (written != ExitStatus.DONE) {
                return written;
            }
        }
        if (json) {
            WindJson.write(call, coil, wantedOhm, found);
        } else {
            text(coil, words, wantedOhm, found);
        }
        return ExitStatus.DONE;
    }

    private OptionalDouble wantedOhm(Amounts amounts, double atV) {
        if (wish.ohm != null) {
            return OptionalDouble.of(amounts.above("--ohm", wish.ohm, Unit.OHM));
        }
        return wish.watts == null
                ? OptionalDouble.empty()
                : OptionalDouble.of(atV * atV / amounts.above("--watts", wish.watts, Unit.WATT));
    }

    private double wraps(Amounts amounts) {
        double wraps = amounts.above("--wraps", wish.wraps, Measure.of(Unit.FRACTION));
        if (wraps > WholeWraps.MOST) {
            throw amounts.wrong(call.texts().say("wind.too-many", WholeWraps.MOST));
        }
        return wraps;
    }

    private CoilWire wire(Amounts amounts) {
        Optional<Alloy> metal = CatalogueLoader.builtIn().alloys().find(alloy);
        if (metal.isEmpty()) {
            List<String> known = CatalogueLoader.builtIn().alloys().all().stream()
                    .map(CatalogueEntry::id)
                    .toList();
            throw amounts.wrong(WrongValue.words(call.texts(), "--alloy", alloy, known));
        }
        if (strands < 1 || strands > MOST_STRANDS) {
            throw amounts.wrong(call.texts().say("wind.strands", MOST_STRANDS));
        }
        return new CoilWire(metal.get(), diameterM(amounts), strands);
    }

    private double diameterM(Amounts amounts) {
        if (thickness.awg == null) {
            double diameterM = amounts.above("--diameter", thickness.diameter, MILLIMETRES);
            return Gauge.nearest(diameterM).number() == Gauge.THINNEST
                            || diameterM > WireSize.ofDiameterMm(20).diameterM()
                    ? refuse(amounts)
                    : diameterM;
        }
        if (thickness.awg < 0 || thickness.awg > Gauge.THINNEST) {
            return refuse(amounts);
        }
        return new Gauge(thickness.awg).diameterM();
    }

    private double refuse(Amounts amounts) {
        throw amounts.wrong(call.texts().say("wind.thickness", Gauge.THINNEST));
    }

    private PictureFile file(Amounts amounts) {
        if (OutputFile.isStandardOutput(out)) {
            throw amounts.wrong(call.texts().say("out.no-text"));
        }
        return PictureFile.of(call, out, overwriting, List.of(), spec);
    }

    private WindingPicture picture(WoundCoil coil, WoundWords words) {
        List<WindingPicture.Line> lines = words.rows(coil).stream()
                .map(row -> new WindingPicture.Line(row.label(), row.value()))
                .toList();
        return new WindingPicture(
                coil.winding(), words.wire(coil.winding()), lines, call.locale(), Theme.LIGHT, PictureSize.FORUM);
    }

    private void text(
            WoundCoil coil, WoundWords words, OptionalDouble wantedOhm, Optional<WholeWraps.Answer.Found> found) {
        List<String> lines = new ArrayList<>();
        found.ifPresent(answer -> {
            lines.addAll(Paragraph.lines(words.found(answer, wantedOhm.orElseThrow()), ""));
            lines.add("");
        });
        TextTable table = new TextTable(TextTable.Side.LEFT, TextTable.Side.LEFT);
        words.rows(coil).forEach(row -> table.row(call.printable(row.label()), call.printable(row.value())));
        lines.addAll(table.lines());
        lines.add("");
        if (volts == null) {
            lines.addAll(Paragraph.lines(
                    call.texts().say("wind.usual-volts", call.format().print(USUAL_V, Unit.VOLT)), ""));
        }
        words.notes(coil).forEach(note -> lines.addAll(Paragraph.lines(note, "")));
        lines.addAll(Paragraph.lines(call.texts().say("teaching"), ""));
        lines.forEach(call::result);
    }
}
