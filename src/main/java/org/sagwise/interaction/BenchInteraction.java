package org.sagwise.interaction;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.layout.PartShape;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.TerminalRef;
import org.sagwise.scenario.edit.Edit;
import org.sagwise.scenario.edit.FreshIds;
import org.sagwise.scenario.edit.JoinTerminals;
import org.sagwise.scenario.edit.JointChoice;
import org.sagwise.scenario.edit.MoveEnd;
import org.sagwise.scenario.edit.SetProbes;

/**
 * The one machine behind mouse, clicks and keys: what is in the hand, what is chosen, and what
 * comes of letting go. A drag, two clicks and a few keys go the same ways through it.
 */
public final class BenchInteraction {

    private final Supplier<Surface> surface;
    private final Consumer<Edit> doer;
    private final Runnable changed;
    private Tool tool = Tool.NOTHING;
    private Selection chosen = Selection.NOTHING;
    private JointChoice joint = JointChoice.WIRE;

    /**
     * @param surface the bench as it lies now
     * @param doer makes an edit
     * @param changed hears that grip, choice or kind of joint are others now
     */
    public BenchInteraction(Supplier<Surface> surface, Consumer<Edit> doer, Runnable changed) {
        this.surface = surface;
        this.doer = doer;
        this.changed = changed;
    }

    public Tool tool() {
        return tool;
    }

    /** What helps to let go of it in the right place. */
    public Guides guides() {
        return surface.get().guides(tool);
    }

    /** Parts and links that the next action is meant for. */
    public Selection chosen() {
        return chosen;
    }

    public JointChoice joint() {
        return joint;
    }

    public boolean isBusy() {
        return !(tool instanceof Tool.Nothing);
    }

    /** Sets how joints are made from now on. */
    public void setJoint(JointChoice choice) {
        joint = choice;
        changed.run();
    }

    public void choose(Selection what) {
        chosen = what;
        changed.run();
    }

    /** Adds a part to what is chosen, or takes it out. */
    public void toggle(String part) {
        Set<String> parts = new HashSet<>(chosen.parts());
        if (!parts.remove(part)) {
            parts.add(part);
        }
        choose(Selection.of(parts, Set.of()));
    }

    /** Takes a part from the shelf. */
    public void take(Part part, double x, double y) {
        String id = new FreshIds(surface.get().scenario()).next(part.kind());
        hold(new Tool.Fresh(part.with("id", id), 0, 0, 0));
        moveTo(x, y, 0);
    }

    /** Lifts what is chosen; the point is where it is taken hold of. */
    public void lift(double x, double y) {
        if (!chosen.parts().isEmpty()) {
            hold(new Tool.Lifted(chosen.parts(), x, y, 0, 0));
        } else if (!chosen.notes().isEmpty()) {
            hold(new Tool.Slip(chosen.notes().iterator().next(), x, y, 0, 0));
        }
    }

    /** Begins a joint; where the chosen joint ends, pulls that end off instead. */
    public void pull(TerminalRef from, double x, double y) {
        Optional<Tool.Pulled> end = chosen.links().stream()
                .filter(link ->
                        chosen.isOne() && surface.get().otherEnd(link, from).isPresent())
                .findFirst()
                .map(link -> new Tool.Pulled(link, from));
        TerminalRef held =
                end.flatMap(it -> surface.get().otherEnd(it.link(), from)).orElse(from);
        hold(new Tool.DraftLink(held, x, y, Optional.empty(), end));
    }

    /** Collects a terminal for a plate, or lets it go again; a joint begun is its first one. */
    public void gather(TerminalRef terminal) {
        List<TerminalRef> terminals = new ArrayList<>();
        if (tool instanceof Tool.DraftLink lead) {
            terminals.add(lead.from());
        } else if (tool instanceof Tool.Gathered gathered) {
            terminals.addAll(gathered.terminals());
        }
        if (!terminals.remove(terminal)) {
            terminals.add(terminal);
        }
        gather(terminals);
    }

    /** Collects these terminals for a plate. */
    public void gather(List<TerminalRef> terminals) {
        hold(terminals.isEmpty() ? Tool.NOTHING : new Tool.Gathered(terminals, Optional.empty()));
    }

    /** Joins what is collected by one plate; a single terminal waits for others. */
    public void plate() {
        if (tool instanceof Tool.Gathered gathered) {
            plate(gathered.terminals());
        }
    }

    private void plate(List<TerminalRef> terminals) {
        if (terminals.size() > 1) {
            hold(Tool.NOTHING);
            doer.accept(new JoinTerminals(terminals, joint.plate()));
        }
    }

    /** Takes a probe of the meter. */
    public void takeProbe(Tool.Probe probe, double x, double y) {
        hold(new Tool.Tip(probe, x, y, Optional.empty()));
    }

    /** Begins a frame; {@code kept} stays chosen with what comes into it. */
    public void frame(double x, double y, Set<String> kept) {
        hold(new Tool.Frame(x, y, x, y, kept));
    }

    /**
     * Moves the hand.
     *
     * @param reach within which a terminal is found, bench units
     */
    public void moveTo(double x, double y, double reach) {
        Surface bench = surface.get();
        if (tool instanceof Tool.Fresh fresh) {
            Snap snap = bench.snapped(fresh.part(), fresh.quarters(), x, y);
            hold(new Tool.Fresh(fresh.part(), fresh.quarters(), snap.dx(), snap.dy()));
        } else if (tool instanceof Tool.Lifted lifted) {
            Snap snap = bench.snapped(lifted.ids(), x - lifted.grabX(), y - lifted.grabY());
            hold(new Tool.Lifted(lifted.ids(), lifted.grabX(), lifted.grabY(), snap.dx(), snap.dy()));
        } else if (tool instanceof Tool.Slip slip) {
            hold(new Tool.Slip(slip.note(), slip.grabX(), slip.grabY(), x - slip.grabX(), y - slip.grabY()));
        } else if (tool instanceof Tool.Frame frame) {
            hold(new Tool.Frame(frame.fromX(), frame.fromY(), x, y, frame.kept()));
            Set<String> inside = new HashSet<>(frame.kept());
            inside.addAll(bench.within(areaOf((Tool.Frame) tool)));
            choose(Selection.of(inside, Set.of()));
        } else {
            pointAt(bench.terminalAt(x, y, reach), x, y);
        }
    }

    /** Brings the free end of a joint, or a probe, to a terminal. */
    public void pointAt(Optional<TerminalRef> terminal, double x, double y) {
        if (tool instanceof Tool.DraftLink lead) {
            Optional<TerminalRef> over = terminal.filter(end -> !end.equals(lead.from())
                    && lead.pulled().filter(it -> it.end().equals(end)).isEmpty());
            hold(new Tool.DraftLink(lead.from(), x, y, over, lead.pulled()));
        } else if (tool instanceof Tool.Gathered gathered) {
            hold(new Tool.Gathered(gathered.terminals(), terminal));
        } else if (tool instanceof Tool.Tip tip) {
            hold(new Tool.Tip(tip.probe(), x, y, terminal));
        }
    }

    /** Moves what is held, or else what is chosen, by steps of the lattice. */
    public void nudge(int right, int down) {
        int dx = right * PartShape.LATTICE;
        int dy = down * PartShape.LATTICE;
        if (tool instanceof Tool.Fresh fresh) {
            hold(new Tool.Fresh(fresh.part(), fresh.quarters(), fresh.x() + dx, fresh.y() + dy));
        } else if (tool instanceof Tool.Lifted lifted) {
            hold(new Tool.Lifted(lifted.ids(), lifted.grabX(), lifted.grabY(), lifted.dx() + dx, lifted.dy() + dy));
        } else if (tool instanceof Tool.Slip slip) {
            hold(new Tool.Slip(slip.note(), slip.grabX(), slip.grabY(), slip.dx() + dx, slip.dy() + dy));
        } else if (!isBusy() && !chosen.parts().isEmpty()) {
            place(chosen.parts(), dx, dy);
        } else if (!isBusy()) {
            chosen.notes().forEach(note -> layNote(note, dx, dy));
        }
    }

    /** Turns a part from the shelf that is held. */
    public void turnHeld(int quarters) {
        if (tool instanceof Tool.Fresh fresh) {
            int turned = Math.floorMod(fresh.quarters() + quarters, 4);
            hold(new Tool.Fresh(fresh.part(), turned, fresh.x(), fresh.y()));
        }
    }

    /**
     * Lets go of what is held, here.
     *
     * @return whether the hand is empty now; a joint or a plate that is over no terminal stays, and
     *     so does a probe of a meter that lies beside the bench
     */
    public boolean drop() {
        Tool held = tool;
        if (held instanceof Tool.Tip tip && tip.over().isEmpty()) {
            return putAway();
        }
        if (held instanceof Tool.DraftLink lead && lead.over().isEmpty()
                || held instanceof Tool.Gathered gathered && gathered.over().isEmpty()) {
            return false;
        }
        if (held instanceof Tool.Gathered gathered) {
            plate(gathered.all());
            return !isBusy();
        }
        hold(Tool.NOTHING);
        if (held instanceof Tool.Fresh fresh) {
            doer.accept(new Drops(surface.get()).lay(fresh));
            choose(Selection.part(fresh.part().id()));
        } else if (held instanceof Tool.Lifted lifted) {
            place(lifted.ids(), lifted.dx(), lifted.dy());
        } else if (held instanceof Tool.Slip slip) {
            layNote(slip.note(), slip.dx(), slip.dy());
        } else if (held instanceof Tool.DraftLink lead) {
            TerminalRef over = lead.over().orElseThrow();
            doer.accept(lead.pulled()
                    .<Edit>map(it -> new MoveEnd(it.link(), it.end(), over))
                    .orElseGet(() -> new JoinTerminals(List.of(lead.from(), over), joint.joint())));
        } else if (held instanceof Tool.Tip tip) {
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
            hold(Tool.NOTHING);
            doer.accept(new SetProbes(Optional.empty()));
        }
        return there;
    }

    /** Puts everything back as it was before it was taken up. */
    public void cancel() {
        if (tool instanceof Tool.Frame frame) {
            chosen = Selection.of(frame.kept(), Set.of());
        }
        hold(Tool.NOTHING);
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
    public static Box areaOf(Tool.Frame frame) {
        return new Box(
                Math.min(frame.fromX(), frame.x()),
                Math.min(frame.fromY(), frame.y()),
                Math.abs(frame.x() - frame.fromX()),
                Math.abs(frame.y() - frame.fromY()));
    }

    private void hold(Tool next) {
        tool = next;
        changed.run();
    }
}
