package org.sagwise.ui.desk;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javafx.stage.Window;
import org.sagwise.plan.drawer.CellMeasurement;
import org.sagwise.plan.drawer.Drawer;
import org.sagwise.plan.drawer.DrawerBench;
import org.sagwise.plan.drawer.DrawerProblem;
import org.sagwise.plan.drawer.OwnCell;
import org.sagwise.plan.drawer.Retirement;
import org.sagwise.plan.pairing.DrawerWords;
import org.sagwise.scenario.Finding;
import org.sagwise.text.Texts;
import org.sagwise.ui.desk.DrawerModel.Whose;
import org.sagwise.ui.kit.Dialogs;

/** What can be done with a drawer, each deed told in a sentence. */
final class DrawerActions {

    private final DrawerModel model;
    private final DrawerWords words;
    private final DrawerLaying laying;
    private final View view;
    private final Function<Window, Dialogs> dialogs;

    /** Where the drawer is looked at. */
    interface View {

        /** The cells that are chosen. */
        List<OwnCell> chosen();

        /** The one that was chosen last. */
        Optional<OwnCell> only();

        void choose(List<String> marks);

        void say(String sentence);

        Window window();
    }

    /**
     * @param dialogs dialogs over a window
     */
    DrawerActions(
            DrawerModel model, DrawerWords words, DrawerLaying laying, View view, Function<Window, Dialogs> dialogs) {
        this.model = model;
        this.words = words;
        this.laying = laying;
        this.view = view;
        this.dialogs = dialogs;
    }

    private DrawerForms forms() {
        return new DrawerForms(dialogs.apply(view.window()), words, model.catalogue());
    }

    private List<String> marks() {
        return view.chosen().stream().map(OwnCell::mark).toList();
    }

    private void tell(List<String> sentences) {
        view.say(String.join("\n", sentences));
    }

    private void say(String key, Object... details) {
        view.say(words.say(key, details));
    }

    void undo() {
        tell(model.undo());
    }

    /** Takes one of the drawers, and says what is wrong with it. */
    void open(Whose whose) {
        tell(model.open(whose));
    }

    void add() {
        forms().cell("window.add.title", Optional.empty(), this::add);
    }

    private List<String> add(OwnCell cell) {
        List<String> wrong = model.change(
                drawer -> drawer.find(cell.mark()).isPresent()
                        ? List.of(Finding.of("", DrawerProblem.DUPLICATE_MARK, cell.mark()))
                        : List.of(),
                drawer -> drawer.with(cell));
        if (wrong.isEmpty()) {
            view.choose(List.of(cell.mark()));
            say("window.added", cell.mark());
        }
        return wrong;
    }

    void edit() {
        view.only()
                .ifPresent(old -> forms().cell("window.edit.title", Optional.of(old), now -> {
                    List<String> wrong = model.change(
                            drawer -> !now.mark().equals(old.mark())
                                            && drawer.find(now.mark()).isPresent()
                                    ? List.of(Finding.of("", DrawerProblem.DUPLICATE_MARK, now.mark()))
                                    : drawer.unknown(List.of(old.mark())),
                            drawer -> drawer.change(old.mark(), same -> now));
                    if (wrong.isEmpty()) {
                        view.choose(List.of(now.mark()));
                    }
                    return wrong;
                }));
    }

    void measure() {
        view.only()
                .ifPresent(cell -> forms().measurement(
                                cell.mark(),
                                LocalDate.now(),
                                Optional.empty(),
                                measured -> measured(cell, measured.orElseThrow())));
    }

    void correct() {
        view.only().filter(cell -> !cell.measurements().isEmpty()).ifPresent(cell -> {
            CellMeasurement last = cell.measurements().get(cell.measurements().size() - 1);
            forms().measurement(
                            cell.mark(), LocalDate.now(), Optional.of(last), now -> corrected(cell.mark(), last, now));
        });
    }

    private List<String> corrected(String mark, CellMeasurement last, Optional<CellMeasurement> now) {
        return model.change(
                drawer -> drawer.unknown(List.of(mark)),
                drawer -> drawer.change(mark, cell -> {
                    List<CellMeasurement> all = new ArrayList<>(cell.measurements());
                    all.remove(last);
                    now.ifPresent(all::add);
                    return cell.withMeasurements(all);
                }));
    }

    private List<String> measured(OwnCell cell, CellMeasurement measured) {
        List<String> wrong = model.change(
                drawer -> drawer.unknown(List.of(cell.mark())),
                drawer -> drawer.change(cell.mark(), it -> it.with(measured)));
        if (wrong.isEmpty()) {
            say("window.written", cell.mark());
        }
        return wrong;
    }

    void marry() {
        marry(marks());
    }

    private void marry(List<String> marks) {
        List<Finding> wrong = model.drawer().againstMarrying("", marks);
        if (!wrong.isEmpty()) {
            tell(wrong.stream().map(it -> it.text(words.format().locale())).toList());
            return;
        }
        forms().line(
                        "drawer-marry-form",
                        words.say("window.marry.title", String.join(", ", marks)),
                        "window.key.set",
                        freshSet(),
                        set -> {
                            List<String> refused = set.isEmpty() || set.length() > 32
                                    ? List.of(words.say("window.set-name"))
                                    : model.change(
                                            drawer -> drawer.againstMarrying(set, marks),
                                            drawer -> drawer.marry(set, marks, Optional.of(LocalDate.now())));
                            if (refused.isEmpty()) {
                                view.say(Texts.in("cautions", words.format().locale())
                                        .raw("married-apart.advice"));
                            }
                            return refused;
                        });
    }

    private String freshSet() {
        int number = 1;
        while (model.drawer().sets().containsKey(words.say("window.set", number))) {
            number++;
        }
        return words.say("window.set", number);
    }

    void part() {
        List<String> sets = view.chosen().stream()
                .flatMap(cell -> cell.marriage().stream())
                .map(it -> it.set())
                .distinct()
                .toList();
        if (sets.isEmpty()) {
            say("window.no-set");
            return;
        }
        tell(model.change(drawer -> List.of(), drawer -> {
            Drawer now = drawer;
            for (String set : sets) {
                now = now.divorce(set);
            }
            return now;
        }));
    }

    void retire() {
        List<String> marks = marks();
        forms().line(
                        "drawer-retire-form",
                        words.say("window.retire.title", String.join(", ", marks)),
                        "window.key.why",
                        "",
                        why -> {
                            List<String> wrong = changeAll(
                                    marks,
                                    cell -> cell.withRetirement(
                                            Optional.of(new Retirement(Optional.of(LocalDate.now()), why))));
                            if (wrong.isEmpty()) {
                                view.say(Texts.in("notices", words.format().locale())
                                        .raw("safety.damaged-cell.text"));
                            }
                            return wrong;
                        });
    }

    void back() {
        tell(changeAll(marks(), cell -> cell.withRetirement(Optional.empty())));
    }

    private List<String> changeAll(List<String> marks, Function<OwnCell, OwnCell> change) {
        return model.change(drawer -> drawer.unknown(marks), drawer -> {
            Drawer now = drawer;
            for (String mark : marks) {
                now = now.change(mark, change::apply);
            }
            return now;
        });
    }

    void remove() {
        List<String> marks = marks();
        List<String> wrong = model.change(drawer -> drawer.unknown(marks), drawer -> drawer.without(marks));
        if (wrong.isEmpty()) {
            say("window.removed", String.join(", ", marks));
        } else {
            tell(wrong);
        }
    }

    void inHand() {
        view.only().ifPresent(cell -> {
            if (DrawerBench.canLie(cell)) {
                laying.inHand(DrawerBench.part(cell, model.drawer(), model.catalogue()));
            } else {
                say("lay.unknown", cell.mark());
            }
        });
    }

    void inPlace() {
        inPlace(marks());
    }

    private void inPlace(List<String> marks) {
        List<OwnCell> cells = marks.stream()
                .flatMap(mark -> model.drawer().find(mark).stream())
                .toList();
        Optional<OwnCell> unknown =
                cells.stream().filter(cell -> !DrawerBench.canLie(cell)).findFirst();
        if (unknown.isPresent()) {
            say("lay.unknown", unknown.get().mark());
            return;
        }
        List<String> onBench = laying.places(cells.size());
        if (onBench.isEmpty()) {
            say("window.no-place", cells.size());
            return;
        }
        List<String> wrong = new ArrayList<>();
        for (int i = 0; i < cells.size(); i++) {
            wrong.addAll(laying.perform(
                    DrawerBench.inPlaceOf(onBench.get(i), cells.get(i), model.drawer(), model.catalogue())));
        }
        if (wrong.isEmpty()) {
            say("window.laid", String.join(", ", marks), String.join(", ", onBench));
        } else {
            tell(wrong);
        }
    }

    /** Takes a set that belongs together: onto the bench, or to be used together from now on. */
    void takeSet(List<String> marks, boolean lays) {
        if (lays) {
            inPlace(marks);
        } else {
            marry(marks);
        }
    }
}
