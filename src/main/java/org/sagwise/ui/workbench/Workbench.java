package org.sagwise.ui.workbench;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import org.sagwise.interaction.BenchInteraction;
import org.sagwise.interaction.Selection;
import org.sagwise.interaction.Surface;
import org.sagwise.picture.geometry.Point;
import org.sagwise.picture.layout.BenchLayout;
import org.sagwise.scenario.Note;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.ScenarioRules;
import org.sagwise.scenario.TerminalRef;
import org.sagwise.scenario.edit.AddNote;
import org.sagwise.scenario.edit.ArrangeCells;
import org.sagwise.scenario.edit.ChangeNote;
import org.sagwise.scenario.edit.DeleteNotes;
import org.sagwise.scenario.edit.Edit;
import org.sagwise.scenario.edit.MeterInLine;
import org.sagwise.scenario.edit.SetAmbient;
import org.sagwise.scenario.edit.SetLinkKeys;
import org.sagwise.scenario.edit.SetPartKeys;
import org.sagwise.scenario.edit.SetProbes;
import org.sagwise.scenario.edit.SetTexts;
import org.sagwise.ui.document.BenchModel;
import org.sagwise.ui.text.Wording;

/**
 * What a person works with at the bench: the document, the hands on it, and the ground on which
 * both meet. All edits go through here.
 */
public final class Workbench {

    /** The place on the screen where the bench lies. */
    public interface Ground {

        /** Where everything lies on the bench, whatever is shown. */
        BenchLayout lying();

        /** Where everything is seen: on the bench, or in a schematic. */
        BenchLayout seen();

        /** The middle of what is seen, bench units. */
        Point middle();

        /** Takes the focus, so that keys are meant for the bench. */
        void takeFocus();

        /** Gives the focus to a part. */
        void focusPart(String id);

        /** Lets a note be written on what is chosen, or the chosen note be changed. */
        void writeNote();

        /** Gives the focus to a terminal, and brings to it what is in the hand. */
        void focusTerminal(TerminalRef terminal);

        /** Moves the hand to a point of the scene; says whether that is on the bench. */
        boolean handTo(double sceneX, double sceneY);
    }

    private final BenchModel bench;
    private final ScenarioRules rules;
    private final Supplier<Locale> locale;
    private final BenchInteraction hands;
    private final PartsBoard board = new PartsBoard(this);
    private final WrittenDown written = new WrittenDown();
    private final ReadOnlyIntegerWrapper moves = new ReadOnlyIntegerWrapper();
    private final ReadOnlyStringWrapper message = new ReadOnlyStringWrapper("");
    private Ground ground;
    private List<List<TerminalRef>> links = List.of();
    private List<String> notes = List.of();

    /**
     * @param rules what every document has to keep
     * @param locale language in which edits are named
     */
    public Workbench(BenchModel bench, ScenarioRules rules, Supplier<Locale> locale) {
        this.bench = bench;
        this.rules = rules;
        this.locale = locale;
        this.hands = new BenchInteraction(this::surface, this::perform, () -> moves.set(moves.get() + 1));
        bench.historyProperty().subscribe((before, now) -> follow());
    }

    /** The bench is shown here from now on. */
    public void lieOn(Ground place) {
        ground = place;
    }

    public Ground ground() {
        return ground;
    }

    public BenchModel bench() {
        return bench;
    }

    /** Where parts are copied to and pasted from. */
    public PartsBoard board() {
        return board;
    }

    /** Words for the person at the bench. */
    Wording wording() {
        return Wording.in(locale.get());
    }

    /** Readings that were written down. */
    public WrittenDown written() {
        return written;
    }

    public BenchInteraction hands() {
        return hands;
    }

    /** Changes whenever grip, choice or kind of joint do. */
    public ReadOnlyIntegerProperty movesProperty() {
        return moves.getReadOnlyProperty();
    }

    /** What there is to say about the last action; empty for nothing. */
    public ReadOnlyStringProperty messageProperty() {
        return message.getReadOnlyProperty();
    }

    public void say(String words) {
        message.set(words);
    }

    /** Makes an edit, if it changes anything, under its own name. */
    public void perform(Edit edit) {
        Scenario before = isAboutPlaces(edit) ? settled() : bench.scenario();
        Scenario after = edit.apply(before);
        if (!after.equals(before)) {
            bench.edit(edit.name(before).in(locale.get()), same -> after);
        }
    }

    /**
     * Makes an edit if the rules have nothing against what comes of it.
     *
     * @return what they have against it, in sentences; empty if it is made
     */
    public List<String> tryOut(Edit edit) {
        List<String> troubles = edit.refusal(bench.scenario(), rules).stream()
                .map(finding -> finding.sentence(locale.get()))
                .toList();
        if (troubles.isEmpty()) {
            perform(edit);
        }
        return troubles;
    }

    /** Edits that leave everything where it lies, or lay it all out anew, need no places. */
    private static boolean isAboutPlaces(Edit edit) {
        return !(edit instanceof ArrangeCells
                || edit instanceof AddNote
                || edit instanceof ChangeNote
                || edit instanceof DeleteNotes
                || edit instanceof SetAmbient
                || edit instanceof SetTexts
                || edit instanceof SetPartKeys
                || edit instanceof SetLinkKeys
                || edit instanceof SetProbes
                || edit instanceof MeterInLine);
    }

    /** The document with every part where it is seen: what is moved must not move the rest. */
    private Scenario settled() {
        return bench.scenario().withPlacement(ground.lying().placements());
    }

    /** Gives the focus to a terminal that is not joined to anything, if there is one. */
    public void focusFreeTerminal() {
        Set<TerminalRef> joined = bench.scenario().links().stream()
                .flatMap(link -> Stream.of(link.from(), link.to()))
                .collect(Collectors.toSet());
        bench.scenario().parts().stream()
                .flatMap(part -> part.kind().terminals().stream().map(name -> new TerminalRef(part.id(), name)))
                .filter(terminal -> !joined.contains(terminal))
                .findFirst()
                .ifPresent(ground::focusTerminal);
    }

    private Surface surface() {
        return new Surface(bench.scenario(), ground.lying());
    }

    /** Forgets what is no longer there; joints are counted anew when other ends are joined. */
    private void follow() {
        say("");
        Selection old = hands.chosen();
        Set<String> there = new HashSet<>(old.parts());
        there.retainAll(bench.scenario().parts().stream().map(Part::id).toList());
        List<List<TerminalRef>> ends = bench.scenario().links().stream()
                .map(link -> List.of(link.from(), link.to()))
                .toList();
        boolean sameLinks = links.equals(ends);
        links = ends;
        List<String> noted = bench.scenario().notes().stream().map(Note::on).toList();
        boolean sameNotes = notes.equals(noted);
        notes = noted;
        Selection kept = new Selection(there, sameLinks ? old.links() : Set.of(), sameNotes ? old.notes() : Set.of());
        if (bench.history().entries().size() == 1) {
            kept = Selection.NOTHING;
            hands.cancel();
        }
        if (!kept.equals(old)) {
            hands.choose(kept);
        }
    }
}
