package org.sagwise.ui.desk;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.sagwise.file.DemoDrawer;
import org.sagwise.file.DrawerFile;
import org.sagwise.part.Catalogue;
import org.sagwise.plan.drawer.Drawer;
import org.sagwise.plan.drawer.DrawerProblem;
import org.sagwise.scenario.Finding;

/**
 * The drawer that a window shows: a person's own, of which every change is on the disk at once, or
 * that of the class, which is there to try things out and is kept nowhere.
 */
public final class DrawerModel {

    /** Whose cells are shown. */
    public enum Whose {
        OWN,
        CLASS
    }

    private static final int MOST_UNDONE = 50;

    private final DrawerFile file;
    private final Catalogue catalogue;
    private final Supplier<Locale> locale;
    private final ReadOnlyObjectWrapper<Drawer> drawer = new ReadOnlyObjectWrapper<>(Drawer.EMPTY);
    private final ReadOnlyObjectWrapper<Whose> whose = new ReadOnlyObjectWrapper<>(Whose.OWN);
    private final ReadOnlyBooleanWrapper undoable = new ReadOnlyBooleanWrapper();
    private final Deque<Drawer> before = new ArrayDeque<>();
    private Optional<DrawerFile.Stamp> stamp = Optional.empty();

    /**
     * @param locale the language of what is told
     */
    public DrawerModel(DrawerFile file, Catalogue catalogue, Supplier<Locale> locale) {
        this.file = file;
        this.catalogue = catalogue;
        this.locale = locale;
    }

    public ReadOnlyObjectProperty<Drawer> drawerProperty() {
        return drawer.getReadOnlyProperty();
    }

    public Drawer drawer() {
        return drawer.get();
    }

    public ReadOnlyObjectProperty<Whose> whoseProperty() {
        return whose.getReadOnlyProperty();
    }

    /** Whether there is a change to take back. */
    public ReadOnlyBooleanProperty undoableProperty() {
        return undoable.getReadOnlyProperty();
    }

    public Catalogue catalogue() {
        return catalogue;
    }

    /** Where the person's own drawer lies. */
    public String place() {
        return file.path().toString();
    }

    /**
     * Shows one of the drawers afresh.
     *
     * @return what is wrong with its file, in sentences; empty if nothing is
     */
    public List<String> open(Whose which) {
        whose.set(which);
        forget();
        if (which == Whose.CLASS) {
            drawer.set(DemoDrawer.of(catalogue, locale.get()));
            return List.of();
        }
        return read();
    }

    /** Takes over what another program wrote meanwhile; what is wrong with it is told by the next change. */
    public void lookAround() {
        if (whose.get() == Whose.OWN
                && file.open() instanceof DrawerFile.Opened.Ok ok
                && !ok.drawer().equals(drawer.get())) {
            take(ok);
            forget();
        }
    }

    private List<String> read() {
        if (file.open() instanceof DrawerFile.Opened.Ok ok) {
            take(ok);
            return List.of();
        }
        stamp = Optional.empty();
        drawer.set(Drawer.EMPTY);
        return ((DrawerFile.Opened.Refused) file.open())
                .findings().stream().map(it -> it.text(locale.get())).toList();
    }

    private void take(DrawerFile.Opened.Ok ok) {
        stamp = Optional.of(ok.stamp());
        drawer.set(ok.drawer());
    }

    private void forget() {
        before.clear();
        undoable.set(false);
    }

    /**
     * Makes a change. Where another program changed the drawer meanwhile, its changes are taken over
     * first, and this one is made on top of them if it still can be.
     *
     * @param against what is against it
     * @return what is against it or kept it from being written, in sentences; empty if it is made
     */
    public List<String> change(Function<Drawer, List<Finding>> against, UnaryOperator<Drawer> change) {
        List<Finding> wrong = made(against, change);
        if (wrong.stream().anyMatch(it -> it.problem() == DrawerProblem.CHANGED_MEANWHILE)
                && file.open() instanceof DrawerFile.Opened.Ok ok) {
            take(ok);
            forget();
            wrong = made(against, change);
        }
        return wrong.stream().map(it -> it.text(locale.get())).toList();
    }

    private List<Finding> made(Function<Drawer, List<Finding>> against, UnaryOperator<Drawer> change) {
        Drawer old = drawer.get();
        List<Finding> wrong = against.apply(old);
        if (!wrong.isEmpty()) {
            return wrong;
        }
        Drawer now = change.apply(old);
        if (now.equals(old)) {
            return List.of();
        }
        List<Finding> failed = kept(now);
        if (failed.isEmpty()) {
            before.push(old);
            while (before.size() > MOST_UNDONE) {
                before.removeLast();
            }
            undoable.set(true);
        }
        return failed;
    }

    private List<Finding> kept(Drawer now) {
        if (whose.get() == Whose.OWN) {
            if (stamp.isEmpty()) {
                return file.open() instanceof DrawerFile.Opened.Refused refused
                        ? refused.findings()
                        : List.of(Finding.of("", DrawerProblem.CHANGED_MEANWHILE, place()));
            }
            DrawerFile.Kept kept = file.keep(now, stamp.get());
            if (kept instanceof DrawerFile.Kept.Failed failed) {
                return List.of(failed.problem());
            }
            stamp = Optional.of(((DrawerFile.Kept.Done) kept).stamp());
        }
        drawer.set(now);
        return List.of();
    }

    /** Takes the last change back; what kept it from being written, in sentences. */
    public List<String> undo() {
        if (before.isEmpty()) {
            return List.of();
        }
        List<Finding> failed = kept(before.peek());
        if (failed.isEmpty()) {
            before.pop();
            undoable.set(!before.isEmpty());
        }
        return failed.stream().map(it -> it.text(locale.get())).toList();
    }
}
