package org.sagwise.hazard;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.sagwise.reading.LinkReading;
import org.sagwise.reading.ResolvedCell;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.TerminalRef;

/**
 * The can of a cell whose wrap is torn touches something that is not its own minus. On common round
 * cells the can is the minus side (from memory, no source at hand).
 */
final class TornWrapTouching implements HazardRule {
    @Override
    public List<CautionBuilder> check(HazardContext context) {
        List<CautionBuilder> found = new ArrayList<>();
        Set<LinkReading> told = new HashSet<>();
        for (String id : context.torn()) {
            ResolvedCell cell = context.bench().cells().get(id);
            List<LinkReading> touches = touches(context, cell).filter(told::add).toList();
            if (!touches.isEmpty()) {
                found.add(caution(context, cell, touches));
            }
        }
        return found;
    }

    /** The wraps that are torn, whatever they touch. */
    static List<CautionBuilder> torn(HazardContext context) {
        return context.torn().isEmpty()
                ? List.of()
                : List.of(new CautionBuilder(context, Signal.CAUTION).parts(context.torn()));
    }

    private static Stream<LinkReading> touches(HazardContext context, ResolvedCell cell) {
        TerminalRef can = cell.part().terminal("can");
        List<Link> links = context.bench().scenario().links();
        return context.held().readings().links().stream()
                .filter(link -> link.from().equals(can) || link.to().equals(can))
                .filter(link -> !isOwnMinus(link.from(), link.to(), cell.id()))
                .filter(link -> context.bench().joins(links.get(link.index())));
    }

    private static boolean isOwnMinus(TerminalRef from, TerminalRef to, String cell) {
        return from.part().equals(cell)
                && to.part().equals(cell)
                && !from.terminal().equals("+")
                && !to.terminal().equals("+");
    }

    private static CautionBuilder caution(HazardContext context, ResolvedCell cell, List<LinkReading> touches) {
        SwitchView view =
                strongestA(context.atRest(), touches) < SwitchView.NO_CURRENT_A ? context.held() : context.atRest();
        double currentA = strongestA(view, touches);
        double limitA = cell.spec().limitA();
        return new CautionBuilder(context, Gravity.unchecked(currentA, limitA))
                .when(currentA < SwitchView.NO_CURRENT_A ? Caution.When.ALWAYS : view.when())
                .parts(cell.id())
                .parts(touches.stream().map(link -> otherEnd(link, cell.id())).toList())
                .links(touches.stream().map(LinkReading::index).toList())
                .measured(currentA, limitA, "A")
                .variant(currentA < SwitchView.NO_CURRENT_A ? "quiet" : "current")
                .terminal("touched", otherTerminal(touches.get(0), cell.id()));
    }

    /** The largest current in these links, A; NaN where one cannot be told. */
    private static double strongestA(SwitchView view, List<LinkReading> touches) {
        return touches.stream()
                .mapToDouble(link ->
                        Math.abs(view.readings().links().get(link.index()).currentA()))
                .max()
                .orElse(0);
    }

    private static String otherEnd(LinkReading link, String cell) {
        return otherTerminal(link, cell).part();
    }

    private static TerminalRef otherTerminal(LinkReading link, String cell) {
        return link.from().equals(new TerminalRef(cell, "can")) ? link.to() : link.from();
    }
}
