package org.sagwise.ui.kit;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What stands in which menu or bar, and in which order: ids of commands, {@code -} for a line,
 * {@code >id} for a menu within the menu. A menu without a row of its own fills itself, with files
 * or lessons.
 */
public final class MenuTable {

    /** A line between two groups. */
    static final String LINE = "-";

    private static final String MENU = ">";

    private static final Map<String, List<String>> ROWS = """
            bar           >file >edit >bench >time >learn >view >help
            file          new new-words open >recent >examples paste measured reread - save save-as - share post picture page - quit
            edit          undo redo - cut copy duplicate delete select-all find-part \
                          - card note title >placing - >joining same-watts
            placing       turn flip move - align-row align-column
            joining       parallel series rows plate
            bench         latch >joints >meter - fit zoom-in zoom-out - table compare vary drawer choose-pack
            meter         probe-red probe-black - meter-volts meter-amps meter-ohms - meter-in-line write-down meter-away
            time          clock - time-go time-slower time-faster \
                          - time-step-back time-step-on time-press-back time-press-on time-start \
                          - time-run-down time-curves time-save time-forget
            learn         >lessons - lesson-next lesson-back lesson-hint lesson-show lesson-reset lesson-restart \
                          lesson-leave lesson-forget lesson-shuffle \
                          - ideas-check - lessons-open >lessons-recent author lessons-again lessons-away - instructor
            view          schematic examples readings projector full-screen - >looks text-larger text-smaller less-motion sound >language
            looks         looks-system looks-light looks-dark looks-high-contrast
            help          manual doors keys glossary notice about
            on-the-bench  card vary note - turn flip move duplicate - delete
            hand-bar      card note turn flip move duplicate delete
            instructing   lesson-back lesson-next lesson-hint lesson-show lesson-reset lesson-restart \
                          instructor-freeze instructor-unlock instructor-reset projector author
            """.lines()
            .map(line -> List.of(line.strip().split(" +")))
            .collect(Collectors.toUnmodifiableMap(row -> row.get(0), row -> row.subList(1, row.size())));

    private MenuTable() {}

    /** What stands in a menu or bar, in order. */
    public static List<String> row(String id) {
        return Optional.ofNullable(ROWS.get(id)).orElseThrow(() -> new IllegalArgumentException("no row " + id));
    }

    /** The menu that an entry stands for; empty for a command or a line. */
    static Optional<String> menu(String entry) {
        return entry.startsWith(MENU) ? Optional.of(entry.substring(MENU.length())) : Optional.empty();
    }

    /** Every menu that has a title. */
    public static Set<String> menus() {
        return entries(MenuTable::menu);
    }

    /** Every command that stands somewhere. */
    public static Set<String> commands() {
        return entries(entry -> entry.equals(LINE) || entry.startsWith(MENU) ? Optional.empty() : Optional.of(entry));
    }

    private static Set<String> entries(Function<String, Optional<String>> kind) {
        return ROWS.values().stream()
                .flatMap(List::stream)
                .flatMap(entry -> kind.apply(entry).stream())
                .collect(Collectors.toCollection(TreeSet::new));
    }
}
