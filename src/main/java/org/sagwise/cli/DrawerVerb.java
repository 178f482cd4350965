package org.sagwise.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.DemoDrawer;
import org.sagwise.file.DrawerFile;
import org.sagwise.part.Catalogue;
import org.sagwise.plan.drawer.Drawer;
import org.sagwise.plan.drawer.DrawerKeys;
import org.sagwise.plan.drawer.DrawerProblem;
import org.sagwise.plan.pairing.DrawerWords;
import org.sagwise.scenario.Finding;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** A verb about a drawer. */
abstract class DrawerVerb implements Callable<Integer> {

    private static final String TODAY = "today";

    private final CallContext call;

    @Spec
    private CommandSpec spec;

    @Option(names = "--drawer", paramLabel = "FILE", descriptionKey = "drawer.file")
    private String file;

    DrawerVerb(CallContext call) {
        this.call = call;
    }

    final CallContext context() {
        return call;
    }

    final Amounts amounts() {
        return new Amounts(call, spec);
    }

    final Catalogue catalogue() {
        return CatalogueLoader.builtIn();
    }

    final DrawerWords words() {
        return new DrawerWords(call.format(), catalogue());
    }

    private GivenDrawer given() {
        return new GivenDrawer(Optional.ofNullable(file), amounts());
    }

    /** Where the drawer is, as people see it. */
    final String place() {
        return given().isDemo() ? DemoDrawer.NAME : given().path().toString();
    }

    /** Looks into the drawer, and gives the exit status. */
    final int look(Function<Drawer, Integer> then) {
        if (given().isDemo()) {
            return then.apply(DemoDrawer.of(catalogue(), call.locale()));
        }
        DrawerFile.Opened opened = given().file().open();
        return opened instanceof DrawerFile.Opened.Ok ok
                ? then.apply(ok.drawer())
                : refused((DrawerFile.Opened.Refused) opened);
    }

    /**
     * Changes the drawer, and gives the exit status.
     *
     * @param change makes the new one; empty if it must not be, which is told already
     */
    final int change(Function<Drawer, Optional<Drawer>> change) {
        if (given().isDemo()) {
            call.problem(words().say("cli.demo", DemoDrawer.NAME));
            return ExitStatus.WRONG;
        }
        DrawerFile drawers = given().file();
        DrawerFile.Opened opened = drawers.open();
        if (!(opened instanceof DrawerFile.Opened.Ok ok)) {
            return refused((DrawerFile.Opened.Refused) opened);
        }
        Optional<Drawer> changed = change.apply(ok.drawer());
        if (changed.isEmpty()) {
            return ExitStatus.WRONG;
        }
        if (drawers.keep(changed.get(), ok.stamp()) instanceof DrawerFile.Kept.Failed failed) {
            complain(List.of(failed.problem()));
            return ExitStatus.WRONG;
        }
        return ExitStatus.DONE;
    }

    private int refused(DrawerFile.Opened.Refused refused) {
        call.problem(call.texts()
                .say("wrong.file", given().path().toString(), refused.findings().size()));
        refused.findings().forEach(finding -> call.problem("  " + finding.text(call.locale())));
        Path copy = given().file().copy();
        if (Files.exists(copy)) {
            complain(List.of(Finding.of("", DrawerProblem.COPY_THERE, copy.toString())));
        }
        return ExitStatus.WRONG;
    }

    /** Tells what is wrong; whether anything is. */
    final boolean complain(Collection<Finding> findings) {
        findings.forEach(finding -> call.problem(finding.text(call.locale())));
        return !findings.isEmpty();
    }

    /** A day behind an option; today where the call names none. */
    final LocalDate day(String option, String text) {
        return text == null || text.equals(TODAY)
                ? LocalDate.now()
                : DrawerKeys.parseDate(text)
                        .orElseThrow(() -> amounts()
                                .wrong(option + ": "
                                        + Finding.of("", DrawerProblem.BAD_DATE, text)
                                                .sentence(call.locale())));
    }
}
