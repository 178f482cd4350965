package org.sagwise.interaction;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.sagwise.picture.layout.PartShape;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.TerminalRef;
import org.sagwise.scenario.edit.Edit;
import org.sagwise.scenario.edit.FreshIds;
import org.sagwise.scenario.edit.JoinTerminals;
import org.sagwise.scenario.edit.SetProbes;

/**
 * The one machine behind mouse, clicks and keys: what is in the hand, what is chosen, and what
 * comes of letting go. A drag, two clicks and a few keys go the same ways through it.
 */
public final class Handwork {

    private final Supplier<Surface> surface;
    private final Consumer<Edit> doer;
    private final Runnable changed;
    private Grip grip = Grip.NOTHING;
    private Lit chosen = Lit.NOTHING;
    private JointChoice joint = JointChoice.WIRE;

    /**
     * @param surface the bench as it lies now
     * @param doer makes an edit
     * @param changed hears that grip, choice or kind of joint are others now
     */
    public Handwork(Supplier<Surface> surface, Consumer<Edit> doer, Runnable changed) {
        this.surface = surface;
        this.doer = doer;
        this.changed = changed;
    }

    public Grip grip() {
        return grip;
    }

    /** Parts and links that the next action is meant for. */
    public Lit chosen() {
        return chosen;
    }

    public JointChoice joint() {
        return joint;
    }

    public boolean isBusy() {
        return !(grip instanceof Grip.Nothing);
    }

    /** Sets how joints are made from now on. */
    public void setJoint(JointChoice choice) {
        joint = choice;
        changed.run();
    }

    public void choose(Lit what) {
        chosen = what;
        changed.run();
    }

    /** Adds a part to what is chosen, or takes it out. */
    public void toggle(String part) {
        Set<String> parts = new HashSet<>(chosen.parts());
        if (!parts.remove(part)) {
            parts.add(part);
        }
        choose(Lit.of(parts, Set.of()));
    }

    /** Takes a part from the shelf. */
    public void take(Part part, double x, double y) {
        String id = new FreshIds(surface.get().scenario()).next(part.kind());
        hold(new Grip.Fresh(part.with("id", id), 0, 0, 0));
        moveTo(x, y, 0);
    }

    /** Lifts what is chosen; the point is where it is taken hold of. */
    public void lift(double x, double y) {
        if (!chosen.parts().isEmpty()) {
            hold(new Grip.Lifted(chosen.parts(), x, y, 0, 0));
        } else if (!chosen.notes().isEmpty()) {
            hold(new Grip.Slip(chosen.notes().iterator().next(), x, y, 0, 0));
        }
    }

    /** Begins a joint. */
    public void pull(TerminalRef from, double x, double y) {
        hold(new Grip.Lead(from, x, y, Optional.empty()));
    }

    /** Collects a terminal for a plate, or lets it go again; a joint begun is its first one. */
    public void gather(TerminalRef terminal) {
        List<TerminalRef> terminals = new ArrayList<>();
        if (grip instanceof Grip.Lead lead) {
            terminals.add(lead.from());
        } else if (grip instanceof Grip.Gathered gathered) {
            terminals.addAll(gathered.terminals());
        }
        if (!terminals.remove(terminal)) {
            terminals.add(terminal);
        }
        gather(terminals);
    }

    /** Collects these terminals for a plate. */
    public void gather(List<TerminalRef> terminals) {
        hold(terminals.isEmpty() ? Grip.NOTHING : new Grip.Gathered(terminals, Optional.empty()));
    }

    /** Joins what is collected by one plate; a single terminal waits for others. */
    public void plate() {
        if (grip instanceof Grip.Gathered gathered) {
            plate(gathered.terminals());
        }
    }

    private void plate(List<TerminalRef> terminals) {
        if (terminals.size() > 1) {
            hold(Grip.NOTHING);
            doer.accept(new JoinTerminals(terminals, joint.plate()));
        }
    }

    /** Takes a probe of the meter. */
    public void takeProbe(Grip.Probe probe, double x, double y) {
        hold(new Grip.Tip(probe, x, y, Optional.empty()));
    }

    /** Begins a frame; {@code kept} stays chosen with what comes into it. */
    public void frame(double x, double y, Set<String> kept) {
        hold(new Grip.Frame(x, y, x, y, kept));
    }

    /**
     * Moves the hand.
     *
     * @param reach within which a terminal is found, bench units
     */
    public void moveTo(double x, double y, double reach) {
        Surface bench = surface.get();
        if (grip instanceof Grip.Fresh fresh) {
            Snap snap = bench.snapped(fresh.part(), fresh.quarters(), x, y);
            hold(new Grip.Fresh(fresh.part(), fresh.quarters(), snap.dx(), snap.dy()));
        } else if (grip instanceof Grip.Lifted lifted) {
            Snap snap = bench.snapped(lifted.ids(), x - lifted.grabX(), y - lifted.grabY());
            hold(new Grip.Lifted(lifted.ids(), lifted.grabX(), lifted.grabY(), snap.dx(), snap.dy()));
        } else if (grip instanceof Grip.Slip slip) {
            hold(new Grip.Slip(slip.note(), slip.grabX(), slip.grabY(), x - slip.grabX(), y - slip.grabY()));
        } else if (grip instanceof Grip.Frame frame) {
            hold(new Grip.Frame(frame.fromX(), frame.fromY(), x, y, frame.kept()));
            Set<String> inside = new HashSet<>(frame.kept());
            inside.addAll(bench.within(areaOf((Grip.Frame) grip)));
            choose(Lit.of(inside, Set.of()));
        } else {
            pointAt(bench.terminalAt(x, y, reach), x, y);
        }
    }

    /** Brings the free end of a joint, or a probe, to a terminal. */
    public void pointAt(Optional<TerminalRef> terminal, double x, double y) {
        if (grip instanceof Grip.Lead lead) {
            hold(new Grip.Lead(lead.from(), x, y, terminal.filter(end -> !end.equals(lead.from()))));
        } else if (grip instanceof Grip.Gathered gathered) {
            hold(new Grip.Gathered(gathered.terminals(), terminal));
        } else if (grip instanceof Grip.Tip tip) {
            hold(new Grip.Tip(tip.probe(), x, y, terminal));
        }
    }

    /** Moves what is held, or else what is chosen, by steps of the lattice. */
    public void nudge(int right, int down) {
        int dx = right * PartShape.LATTICE;
        int dy = down * PartShape.LATTICE;
        if (grip instanceof Grip.Fresh fresh) {
            hold(new Grip.Fresh(fresh.part(), fresh.quarters(), fresh.x() + dx, fresh.y() + dy));
        } else if (grip instanceof Grip.Lifted lifted) {
            hold(new Grip.Lifted(lifted.ids(), lifted.grabX(), lifted.grabY(), lifted.dx() + dx, lifted.dy() + dy));
        } else if (grip instanceof Grip.Slip slip) {
            hold(new Grip.Slip(slip.note(), slip.grabX(), slip.grabY(), slip.dx() + dx, slip.dy() + dy));
        } else if (!isBusy() && !chosen.parts().isEmpty()) {
            place(chosen.parts(), dx, dy);
        } else if (!isBusy()) {
            chosen.notes().forEach(note -> layNote(note, dx, dy));
        }
    }

    /** Turns a part from the shelf that is held. */
    public void turnHeld(int quarters) {
        if (grip instanceof Grip.Fresh fresh) {
            int turned = Math.floorMod(fresh.quarters() + quarters, 4);
            hold(new Grip.Fresh(fresh.part(), turned, fresh.x(), fresh.y()));
        }
    }

    /**
     * Lets go of what is held, here.
     *
     * @return whether the hand is empty now; a joint or a plate that is over no terminal stays, and
     *     so does a probe of a meter that lies beside the bench
     */
    public boolean drop() {
        Grip held = grip;
        if (held instanceof Grip.Tip tip && tip.over().isEmpty()) {
            return putAway();
        }
        if (held instanceof Grip.Lead lead && lead.over().isEmpty()
                || held instanceof Grip.Gathered gathered && gathered.over().isEmpty()) {
            return false;
        }
        if (held instanceof Grip.Gathered gathered) {
            plate(gathered.all());
            return !isBusy();
        }
        hold(Grip.NOTHING);
        if (held instanceof Grip.Fresh fresh) {
            doer.accept(new Drops(surface.get()).lay(fresh));
            choose(Lit.part(fresh.part().id()));
        } else if (held instanceof Grip.Lifted lifted) {
            place(lifted.ids(), lifted.dx(), lifted.dy());
        } else if (held instanceof Grip.Slip slip) {
            layNote(slip.note(), slip.dx(), slip.dy());
        } else if (held instanceof Grip.Lead lead) {
            doer.accept(new JoinTerminals(List.of(lead.from(), lead.over().orElseThrow()), joint.joint()));
        } else if (held instanceof Grip.Tip tip) {
            doer.accept(new Drops(surface.get()).probe(tip));
        }
        return true;
    }

    /**
     * Takes the meter off the bench, if it is there.
     *
     * @return whether it was
     */
    public boolean putAway() {
        boolean there = surface.get().scenario().probes().isPresent();
        if (there) {
            hold(Grip.NOTHING);
            doer.accept(new SetProbes(Optional.empty()));
        }
        return there;
    }

    /** Puts everything back as it was before it was taken up. */
    public void cancel() {
        if (grip instanceof Grip.Frame frame) {
            chosen = Lit.of(frame.kept(), Set.of());
        }
        hold(Grip.NOTHING);
    }

    private void place(Set<String> ids, int dx, int dy) {
        if (dx != 0 || dy != 0) {
            doer.accept(new Drops(surface.get()).place(ids, dx, dy));
        }
    }

    private void layNote(int note, double dx, double dy) {
        if (dx != 0 || dy != 0) {
            new Drops(surface.get()).layNote(note, dx, dy).ifPresent(doer);
        }
    }

    /** The area of a frame. */
    public static Rectangle2D areaOf(Grip.Frame frame) {
        return new Rectangle2D.Double(
                Math.min(frame.fromX(), frame.x()),
                Math.min(frame.fromY(), frame.y()),
                Math.abs(frame.x() - frame.fromX()),
                Math.abs(frame.y() - frame.fromY()));
    }

    private void hold(Grip next) {
        grip = next;
        changed.run();
    }
}
