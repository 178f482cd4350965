package org.sagwise.plan.drawer;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.sagwise.scenario.Finding;

/**
 * A person's own cells. Immutable: a change makes a new one.
 *
 * @param cells in the order in which they were put in; marks are unique
 * @param foreign what other tools left under {@code x} at the top of the file
 */
public record Drawer(List<OwnCell> cells, Optional<Object> foreign) {

    /** Nothing in it. */
    public static final Drawer EMPTY = new Drawer(List.of(), Optional.empty());

    /**
     * @throws IllegalArgumentException if a mark stands twice
     */
    public Drawer {
        cells = List.copyOf(cells);
        if (cells.stream().map(OwnCell::mark).distinct().count() != cells.size()) {
            throw new IllegalArgumentException("a mark stands twice");
        }
    }

    /** The cell of this mark. */
    public Optional<OwnCell> find(String mark) {
        return cells.stream().filter(cell -> cell.mark().equals(mark)).findFirst();
    }

    public List<String> marks() {
        return cells.stream().map(OwnCell::mark).toList();
    }

    /** The cells that are still used. */
    public List<OwnCell> inUse() {
        return cells.stream().filter(OwnCell::isInUse).toList();
    }

    /** The sets of married cells by their names, with the marks that belong to each. */
    public Map<String, List<String>> sets() {
        Map<String, List<String>> sets = new LinkedHashMap<>();
        for (OwnCell cell : cells) {
            cell.marriage()
                    .ifPresent(it -> sets.computeIfAbsent(it.set(), name -> new ArrayList<>())
                            .add(cell.mark()));
        }
        return sets;
    }

    /** With one more cell, or in place of the one of its mark. */
    public Drawer with(OwnCell cell) {
        if (find(cell.mark()).isPresent()) {
            return change(cell.mark(), old -> cell);
        }
        List<OwnCell> more = new ArrayList<>(cells);
        more.add(cell);
        return new Drawer(more, foreign);
    }

    /** With one cell changed; it may get another mark that is free. */
    public Drawer change(String mark, UnaryOperator<OwnCell> change) {
        return new Drawer(
                cells.stream()
                        .map(cell -> cell.mark().equals(mark) ? change.apply(cell) : cell)
                        .toList(),
                foreign);
    }

    public Drawer without(Collection<String> marks) {
        return new Drawer(
                cells.stream().filter(cell -> !marks.contains(cell.mark())).toList(), foreign);
    }

    /** With some cells as a set; those that belonged to it before, and no more, belong to none. */
    public Drawer marry(String set, Collection<String> marks, Optional<LocalDate> since) {
        return new Drawer(
                cells.stream()
                        .map(cell -> marks.contains(cell.mark())
                                ? cell.withMarriage(Optional.of(new Marriage(set, since)))
                                : cell)
                        .toList(),
                foreign);
    }

    /** With the cells of a set belonging to none. */
    public Drawer divorce(String set) {
        return new Drawer(
                cells.stream()
                        .map(cell -> cell.marriage()
                                        .filter(it -> it.set().equals(set))
                                        .isPresent()
                                ? cell.withMarriage(Optional.empty())
                                : cell)
                        .toList(),
                foreign);
    }

    /** Everything that is against marrying some cells under a name. */
    public List<Finding> againstMarrying(String set, List<String> marks) {
        List<Finding> found = new ArrayList<>(unknown(marks));
        if (marks.stream().distinct().count() < 2) {
            found.add(Finding.of("", DrawerProblem.SET_OF_ONE));
        }
        if (sets().containsKey(set)) {
            found.add(Finding.of("", DrawerProblem.SET_TAKEN, set, String.join(", ", sets().get(set))));
        }
        for (String mark : marks) {
            find(mark)
                    .flatMap(OwnCell::marriage)
                    .ifPresent(it -> found.add(Finding.of("", DrawerProblem.MARRIED_ALREADY, mark, it.set())));
            find(mark)
                    .filter(cell -> !cell.isInUse())
                    .ifPresent(cell -> found.add(Finding.of("", DrawerProblem.RETIRED_CELL, mark)));
        }
        return found;
    }

    /** Marks that no cell of this drawer has. */
    public List<Finding> unknown(Collection<String> marks) {
        return marks.stream()
                .filter(mark -> find(mark).isEmpty())
                .map(mark -> Finding.of(
                        "",
                        DrawerProblem.UNKNOWN_MARK,
                        mark,
                        Optional.of(DrawerProblem.near(mark, marks()))
                                .filter(near -> !near.isEmpty())
                                .orElse(cells.isEmpty() ? "—" : String.join(", ", marks()))))
                .toList();
    }
}
