package org.sagwise.scenario.edit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.sagwise.part.PartKind;
import org.sagwise.part.key.Keys;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Placement;
import org.sagwise.scenario.Probes;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;

/** Edits of every kind, drawn for a scenario; some of them make no sense for it. */
final class RandomEdits {

    private final Random random;
    private final Scenario scenario;
    private final Scenario other;

    RandomEdits(Random random, Scenario scenario, Scenario other) {
        this.random = random;
        this.scenario = scenario;
        this.other = other;
    }

    /** One of each kind that can be drawn, in no order. */
    List<Edit> all() {
        List<Edit> edits = new ArrayList<>();
        edits.add(new AddPart(Part.of("A", PartKind.COIL, "ohm", 0.5), place()));
        edits.add(new AddNote(new NoteTarget.OnPart("p-1"), "n".repeat(5_000)));
        edits.add(new AddNote(new NoteTarget.OnJoint(random.nextInt(6)), "Two\nlines"));
        edits.add(new ChangeNote(random.nextInt(3), new ChangeNote.Text("Otherwise")));
        edits.add(new ChangeNote(random.nextInt(3), new ChangeNote.Place(2, 1e9)));
        edits.add(new DeleteNotes(Set.of(random.nextInt(3), 7)));
        edits.add(new AlignParts(ids(), AlignParts.Line.ROW));
        edits.add(new AlignParts(ids(), AlignParts.Line.COLUMN));
        edits.add(new CutLinks(Set.of(random.nextInt(10), 10 + random.nextInt(10))));
        edits.add(new DeleteParts(ids()));
        edits.add(new DuplicateParts(ids(), 2, 2));
        edits.add(new FlipParts(ids()));
        edits.add(new FreeParts(ids()));
        edits.add(new MendJoint("j-1", random.nextInt(9)));
        edits.add(new PressButton(random.nextBoolean()));
        edits.add(new PutPart(Part.of("p-1", PartKind.COIL, "ohm", 0.5)));
        edits.add(new SwapParts("p-1", "p-" + random.nextInt(4)));
        edits.add(new MeterInLine(random.nextInt(20)));
        edits.add(new PasteParts(other, random.nextInt(5), random.nextInt(30_000)));
        edits.add(new PlaceParts(Map.of("p-1", place(), "p-2", place(), "nobody", place())));
        edits.add(new SetAmbient(random.nextInt(1_000) - 500));
        edits.add(new SetLinkKeys(random.nextInt(20), Keys.of("contact_mohm", 4)));
        edits.add(SetPartKeys.set("p-1", "label", "Renamed"));
        edits.add(new SetTexts("t".repeat(300), "About"));
        edits.add(new TurnParts(ids(), random.nextInt(9) - 4));
        List<TerminalRef> terminals = new ArrayList<>();
        scenario.parts().forEach(part -> terminals.addAll(part.terminals()));
        terminals.add(new TerminalRef("nobody", "1"));
        Collections.shuffle(terminals, random);
        edits.add(new JoinTerminals(
                terminals.subList(0, Math.min(terminals.size(), 1 + random.nextInt(5))), Keys.of("contact_mohm", 4)));
        if (!scenario.parts().isEmpty()) {
            Part one = scenario.parts().get(0);
            TerminalRef end = one.terminals().get(0);
            edits.add(new SetProbes(Optional.of(Probes.of(end, one.terminals().get(1)))));
            edits.add(new CutBetween(end, terminals.get(0)));
            edits.add(JoinTerminals.jumper(end, one.terminals().get(1), 18, 60));
        }
        List<String> cells =
                scenario.partsOf(PartKind.CELL).stream().map(Part::id).toList();
        for (int rows : cells.isEmpty() ? List.<Integer>of() : ArrangeCells.choices(cells.size())) {
            edits.add(new ArrangeCells(cells, rows, 4));
        }
        Collections.shuffle(edits, random);
        return edits;
    }

    private Set<String> ids() {
        return scenario.parts().stream()
                .map(Part::id)
                .filter(id -> random.nextBoolean())
                .collect(Collectors.toSet());
    }

    private Placement place() {
        return new Placement(random.nextInt(60_000) - 30_000, random.nextInt(20), 90);
    }
}
