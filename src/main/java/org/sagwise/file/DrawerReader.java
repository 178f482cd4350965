package org.sagwise.file;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.sagwise.part.Catalogue;
import org.sagwise.part.key.Keys;
import org.sagwise.plan.drawer.CellMeasurement;
import org.sagwise.plan.drawer.Drawer;
import org.sagwise.plan.drawer.DrawerKeys;
import org.sagwise.plan.drawer.DrawerProblem;
import org.sagwise.plan.drawer.OwnCell;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.Places;
import org.sagwise.scenario.Problem;

/** Reads the file of a drawer, format 1, and collects everything that is wrong with it. */
public final class DrawerReader {

    static final String FORMAT_KEY = "sagwise_drawer";

    private static final String CELLS = "cells";
    private static final String MEASURED = "measured";

    private final Catalogue catalogue;
    private final List<Finding> findings = new ArrayList<>();

    private DrawerReader(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    /** What came of reading a drawer. */
    public sealed interface Read {

        /** It is one. */
        record Ok(Drawer drawer) implements Read {}

        /** It is none; everything that is wrong, from the top of the file down. */
        record Refused(List<Finding> findings) implements Read {}
    }

    /** Reads the bytes of a file. */
    public static Read read(byte[] bytes, Catalogue catalogue) {
        SourceText source = SourceText.of(bytes);
        return source.problem()
                .<Read>map(problem -> new Read.Refused(List.of(problem)))
                .orElseGet(() -> new DrawerReader(catalogue).read(source.text()));
    }

    private Read read(String text) {
        if (text.isBlank()) {
            return new Read.Refused(List.of(Finding.of("", DrawerProblem.NO_FORMAT)));
        }
        Document document = JsonDocument.read(text).ofObject();
        findings.addAll(document.findings());
        Optional<Drawer> drawer = document.group().filter(this::isOurs).map(this::drawer);
        return drawer.isPresent() && findings.isEmpty()
                ? new Read.Ok(drawer.get())
                : new Read.Refused(findings.stream()
                        .map(document::locate)
                        .sorted(Finding.READING_ORDER)
                        .toList());
    }

    private boolean isOurs(Node.Group file) {
        Optional<Object> format = file.get(FORMAT_KEY).map(Node::plain);
        if (!(format.orElse(null) instanceof Number number) || number.doubleValue() < 1) {
            findings.add(Finding.of(format.isPresent() ? FORMAT_KEY : "", DrawerProblem.NO_FORMAT));
            return false;
        } else if (number.doubleValue() != DrawerKeys.FORMAT) {
            findings.add(Finding.of(
                    FORMAT_KEY, DrawerProblem.NEWER_FORMAT, number.toString(), String.valueOf(DrawerKeys.FORMAT)));
            return false;
        }
        return true;
    }

    private Drawer drawer(Node.Group file) {
        for (String name : file.entries().keySet()) {
            if (!List.of(FORMAT_KEY, CELLS, Keys.FOREIGN).contains(name)) {
                findings.add(Finding.of(
                        name,
                        Problem.UNKNOWN_KEY,
                        name,
                        Places.near(name, List.of(CELLS)),
                        String.join(", ", FORMAT_KEY, CELLS, Keys.FOREIGN)));
            }
        }
        List<OwnCell> cells = new ArrayList<>();
        Set<String> marks = new HashSet<>();
        List<Node.Group> groups = groups(file, "", CELLS, DrawerKeys.MOST_CELLS, DrawerProblem.TOO_MANY_CELLS);
        for (int i = 0; i < groups.size(); i++) {
            String place = Places.item(CELLS, i);
            cell(groups.get(i), place).ifPresent(cell -> {
                if (marks.add(cell.mark())) {
                    cells.add(cell);
                } else {
                    findings.add(Finding.of(Places.key(place, "mark"), DrawerProblem.DUPLICATE_MARK, cell.mark()));
                }
            });
        }
        return new Drawer(cells, file.get(Keys.FOREIGN).map(Node::plain));
    }

    private Optional<OwnCell> cell(Node.Group group, String place) {
        List<CellMeasurement> measured = new ArrayList<>();
        List<Node.Group> groups =
                groups(group, place, MEASURED, DrawerKeys.MOST_MEASUREMENTS, DrawerProblem.TOO_MANY_MEASUREMENTS);
        for (int i = 0; i < groups.size(); i++) {
            Keys keys = groups.get(i).keys();
            List<Finding> wrong = DrawerKeys.checkMeasured(keys, Places.item(Places.key(place, MEASURED), i));
            findings.addAll(wrong);
            if (wrong.isEmpty()) {
                measured.add(CellMeasurement.of(keys));
            }
        }
        Keys keys = group.keys().without(MEASURED);
        List<Finding> wrong = DrawerKeys.checkCell(keys, place, catalogue);
        findings.addAll(wrong);
        return wrong.isEmpty() ? Optional.of(OwnCell.of(keys, measured)) : Optional.empty();
    }

    /** The objects of a list under a key. */
    private List<Node.Group> groups(Node.Group owner, String place, String name, int most, DrawerProblem tooMany) {
        Optional<Node> node = owner.get(name);
        String where = Places.key(place, name);
        if (node.isEmpty()) {
            return List.of();
        }
        if (!(node.get() instanceof Node.Items list)) {
            findings.add(Finding.of(
                    where, Problem.WRONG_TYPE, "list", Places.typeOf(node.get().sample())));
            return List.of();
        }
        if (list.items().size() > most) {
            findings.add(Finding.of(where, tooMany, String.valueOf(most)));
            return List.of();
        }
        List<Node.Group> groups = new ArrayList<>();
        for (int i = 0; i < list.items().size(); i++) {
            Node item = list.items().get(i);
            if (item instanceof Node.Group group) {
                groups.add(group);
            } else {
                findings.add(Finding.of(Places.item(where, i), Problem.NOT_AN_OBJECT, Places.typeOf(item.sample())));
                groups.add(new Node.Group(item.line(), item.column(), Map.of()));
            }
        }
        return groups;
    }
}
