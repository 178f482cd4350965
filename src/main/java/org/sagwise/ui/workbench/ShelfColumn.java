package org.sagwise.ui.workbench;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.sagwise.part.PartKind;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.edit.ShelfItem;
import org.sagwise.ui.kit.ColumnScroll;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.kit.WrappedLabel;
import org.sagwise.ui.text.Wording;

/** Where parts are taken from: by family, each with its picture, with a search above. */
public final class ShelfColumn extends VBox {

    /** What nobody builds a circuit without, in the order in which it is built. */
    private static final List<PartKind> FIRST = List.of(PartKind.CELL, PartKind.COIL, PartKind.SWITCH);

    /** With these a first circuit stays well within its limits; without them in the catalogue, the first of a kind. */
    private static final Set<String> GENTLE = Set.of("inr18650-2500-20A", "coil-1ohm-40W");

    /** What stands on the shelf. */
    public record Stock(List<ShelfItem> goods, ShelfPictures pictures) {}

    private final Workbench work;
    private final Wording wording;
    private final Label begin;
    private final TextField search = new TextField();
    private final Label none = new Label();
    private final VBox list = new VBox();
    private final Map<PartKind, Label> headings = new EnumMap<>(PartKind.class);
    private final Map<PartKind, List<ShelfButton>> families = new EnumMap<>(PartKind.class);

    public ShelfColumn(Stock stock, Workbench work, Wording wording, Subscriptions subscriptions) {
        this.work = work;
        this.wording = wording;
        begin = title(wording.say("shelf.begin"));
        setId("shelf");
        getStyleClass().add("shelf");
        for (ShelfItem good : stock.goods()) {
            families.computeIfAbsent(good.part().kind(), kind -> new ArrayList<>())
                    .add(new ShelfButton(good, stock.pictures(), work, wording));
        }
        families.keySet().forEach(kind -> headings.put(kind, heading(kind)));
        search.setId("shelf-search");
        search.setPromptText(wording.say("shelf.search"));
        search.setAccessibleText(wording.say("shelf.search"));
        search.textProperty().subscribe(text -> arrange());
        subscriptions.watch(work.bench().historyProperty().map(now -> needed(now.present())), this::tick);
        arrange();
        search.addEventHandler(KeyEvent.KEY_PRESSED, this::key);
        none.setWrapText(true);
        none.getStyleClass().add("quiet");
        list.getStyleClass().add("shelf-list");
        ColumnScroll scroll = new ColumnScroll(subscriptions);
        scroll.setContent(list);
        scroll.setFocusTraversable(false);
        setVgrow(scroll, Priority.ALWAYS);
        Label hint = WrappedLabel.of(wording.say("shelf.hint"), "quiet");
        getChildren().addAll(search, hint, scroll);
    }

    private Label heading(PartKind kind) {
        return title(wording.say("family." + kind.word()));
    }

    private static Label title(String words) {
        Label label = new Label(words);
        label.getStyleClass().add("section-title");
        return label;
    }

    /** What one begins with says whether the bench has such a part. */
    private void tick(Set<PartKind> lacking) {
        FIRST.forEach(kind -> beginners(kind).ifPresent(item -> item.setThere(!lacking.contains(kind))));
    }

    private void arrange() {
        String wanted = search.getText().strip();
        List<Node> shown = wanted.isEmpty() ? all() : shown(item -> item.isCalled(wanted, wording));
        if (shown.isEmpty()) {
            shown = shown(item -> item.answers(wanted, wording));
        }
        if (shown.isEmpty()) {
            none.setText(wording.say("shelf.none", wanted));
            shown.add(none);
        }
        list.getChildren().setAll(shown);
    }

    /**
     * Everything there is. One each of what every circuit needs stands first: nobody has to scroll
     * past all cells to find a coil. They stay once the bench has them, so that nothing slips under
     * the pointer.
     */
    private List<Node> all() {
        List<ShelfButton> beginners =
                FIRST.stream().flatMap(kind -> beginners(kind).stream()).toList();
        List<Node> shown = new ArrayList<>();
        if (!beginners.isEmpty()) {
            shown.add(begin);
            shown.addAll(beginners);
        }
        families.values().stream().flatMap(List::stream).forEach(item -> item.nameKind(beginners.contains(item)));
        families.forEach((kind, items) -> {
            List<ShelfButton> rest =
                    items.stream().filter(item -> !beginners.contains(item)).toList();
            if (!rest.isEmpty()) {
                shown.add(headings.get(kind));
                shown.addAll(rest);
            }
        });
        return shown;
    }

    private static Set<PartKind> needed(Scenario bench) {
        return FIRST.stream().filter(kind -> bench.partsOf(kind).isEmpty()).collect(Collectors.toSet());
    }

    /** Stands at the first part of a kind. */
    public void lead(PartKind kind) {
        search.clear();
        applyCss();
        beginners(kind).ifPresent(Node::requestFocus);
    }

    /** Which of a kind one begins with. */
    private Optional<ShelfButton> beginners(PartKind kind) {
        List<ShelfButton> all = families.getOrDefault(kind, List.of());
        return all.stream()
                .filter(each -> GENTLE.contains(each.name()))
                .findFirst()
                .or(() -> all.stream().findFirst());
    }

    /** What is found, and of what the bench lacks first what one begins with: Enter takes the first. */
    private List<Node> shown(Predicate<ShelfButton> wanted) {
        List<Node> shown = new ArrayList<>();
        Set<PartKind> lacking = needed(work.bench().scenario());
        families.forEach((kind, items) -> {
            Optional<ShelfButton> gentle = beginners(kind).filter(it -> lacking.contains(kind));
            List<ShelfButton> found = Stream.concat(gentle.stream(), items.stream())
                    .distinct()
                    .filter(wanted)
                    .toList();
            found.forEach(item -> item.nameKind(false));
            if (!found.isEmpty()) {
                shown.add(headings.get(kind));
                shown.addAll(found);
            }
        });
        return shown;
    }

    /** Shows all there is, and stands at the first of it: a bench is empty and wants a part. */
    public void beginAnew() {
        search.clear();
        // Before its first layout a list is not yet in the window, and takes no focus.
        applyCss();
        first().ifPresent(Node::requestFocus);
    }

    /** Stands ready to be told what to look for. */
    public void focusSearch() {
        search.requestFocus();
        search.selectAll();
    }

    private void key(KeyEvent event) {
        boolean done = switch (event.getCode()) {
            case ESCAPE -> clear();
            case DOWN -> atFirst(Node::requestFocus);
            case ENTER -> !search.getText().isBlank() && atFirst(ShelfButton::fire);
            default -> false;
        };
        if (done) {
            event.consume();
        }
    }

    private boolean clear() {
        boolean searched = !search.getText().isEmpty();
        search.clear();
        return searched;
    }

    private boolean atFirst(Consumer<ShelfButton> act) {
        Optional<ShelfButton> first = first();
        first.ifPresent(act);
        return first.isPresent();
    }

    private Optional<ShelfButton> first() {
        return list.getChildren().stream()
                .filter(ShelfButton.class::isInstance)
                .map(ShelfButton.class::cast)
                .findFirst();
    }
}
