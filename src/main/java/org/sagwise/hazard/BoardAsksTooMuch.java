package org.sagwise.hazard;

import java.util.List;
import org.sagwise.part.BoardSpec;
import org.sagwise.part.PartKind;
import org.sagwise.reading.PartReading;

/**
 * A board that stops because the cells give in, and would run them over their limit if they did not: fuller or fresher
 * cells are no cure for it. What each cell would have to give at the very least is the board's input power over the
 * rest volts of all cells, since no cell gives more watts than rest volts times amps.
 */
final class BoardAsksTooMuch implements HazardRule {

    @Override
    public List<CautionBuilder> check(HazardContext context) {
        return context.partsOf(PartKind.BOARD).stream()
                .map(part -> context.held().part(part.id()))
                .filter(BoardAsksTooMuch::hasGivenUp)
                .flatMap(board -> tooMuch(context, board).stream())
                .toList();
    }

    private static boolean hasGivenUp(PartReading board) {
        return switch (board.state()) {
            case STOPPED_CUTOFF, STOPPED_INPUT_LIMIT, STOPPED_NO_POWER -> true;
            default -> false;
        };
    }

    private static List<CautionBuilder> tooMuch(HazardContext context, PartReading board) {
        int island = context.held().island(board.id());
        List<CellView> cells = context.held().cells().values().stream()
                .filter(cell -> context.held().island(cell.id()) == island && cell.restV() > 0)
                .toList();
        BoardSpec spec = context.spec(board.id(), BoardSpec.class);
        double volts = cells.stream().mapToDouble(CellView::restV).sum();
        double bearableW =
                cells.stream().mapToDouble(cell -> cell.restV() * cell.limitA()).sum();
        double askedA = spec.inputA(volts);
        double limitA = bearableW / volts;
        if (cells.isEmpty() || !(askedA > limitA)) {
            return List.of();
        }
        return List.of(new CautionBuilder(context, Gravity.drawn(askedA, limitA))
                .when(Caution.When.FIRED)
                .parts(board.id())
                .parts(cells.stream().map(CellView::id).toList())
                .measured(askedA, limitA, "A")
                .detail("powerW", spec.powerW()));
    }
}
