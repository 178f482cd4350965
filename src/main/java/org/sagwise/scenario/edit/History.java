package org.sagwise.scenario.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.sagwise.scenario.Scenario;

/**
 * What was done to a document: every scenario it has been, each with the name of the edit that made
 * it. Immutable.
 *
 * <p>Whether something is unsaved is decided by comparing documents, not by counting edits, so that
 * undoing back to what was saved is saved, whichever way one got there.
 *
 * @param entries every state in order, never empty
 * @param at place of the present state
 * @param onDisk what the file holds; empty if it was never in a file
 */
public record History(List<Entry> entries, int at, Optional<Scenario> onDisk) {

    public History {
        entries = List.copyOf(entries);
        if (at < 0 || at >= entries.size()) {
            throw new IllegalArgumentException("no entry " + at + " of " + entries.size());
        }
    }

    /**
     * One state of the document.
     *
     * @param edit name of the edit that led to it, for people; empty for the first
     * @param scenario the document
     */
    public record Entry(String edit, Scenario scenario) {}

    /** The history of a document that was just opened or begun. */
    public static History of(Scenario opened) {
        return new History(List.of(new Entry("", opened)), 0, Optional.of(opened));
    }

    /** The history of a document that came from elsewhere and is in no file yet. */
    public static History ofUnsaved(Scenario received) {
        return new History(List.of(new Entry("", received)), 0, Optional.empty());
    }

    public Scenario present() {
        return entries.get(at).scenario();
    }

    /**
     * This history after one more edit. What had been undone is gone; an edit that changes nothing
     * leaves no trace.
     *
     * @param edit name of the edit, for people
     */
    public History edited(String edit, Scenario result) {
        if (result.equals(present())) {
            return this;
        }
        List<Entry> kept = new ArrayList<>(entries.subList(0, at + 1));
        kept.add(new Entry(edit, result));
        return new History(kept, at + 1, onDisk);
    }

    /** The same history with every document in other words. */
    public History rewritten(UnaryOperator<Scenario> words) {
        return new History(
                entries.stream()
                        .map(entry -> new Entry(entry.edit(), words.apply(entry.scenario())))
                        .toList(),
                at,
                onDisk.map(words));
    }

    /** Name of the edit that {@link #undone()} takes back. */
    public Optional<String> undoable() {
        return at > 0 ? Optional.of(entries.get(at).edit()) : Optional.empty();
    }

    /** Name of the edit that {@link #redone()} makes again. */
    public Optional<String> redoable() {
        return at + 1 < entries.size() ? Optional.of(entries.get(at + 1).edit()) : Optional.empty();
    }

    /** One edit back; the same history if there is none. */
    public History undone() {
        return at > 0 ? new History(entries, at - 1, onDisk) : this;
    }

    /** One edit forward; the same history if there is none. */
    public History redone() {
        return at + 1 < entries.size() ? new History(entries, at + 1, onDisk) : this;
    }

    /** This history once the present state has been written to a file. */
    public History saved() {
        return new History(entries, at, Optional.of(present()));
    }

    public boolean isSaved() {
        return onDisk.filter(present()::equals).isPresent();
    }
}
