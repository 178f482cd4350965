package org.sagwise.hazard;

import java.util.List;
import org.sagwise.part.BoardSpec;
import org.sagwise.part.PartKind;
import org.sagwise.reading.PartReading;

/** A regulated board that cannot do what it is set to, when the button is held. */
final class BoardTrouble implements HazardRule {
    @Override
    public List<CautionBuilder> check(HazardContext context) {
        return context.fired().parts().stream()
                .filter(part -> part.kind() == PartKind.BOARD)
                .filter(board -> !variant(board.state()).isEmpty())
                .map(board -> caution(context, board))
                .toList();
    }

    private static String variant(PartReading.State state) {
        return switch (state) {
            case STOPPED_CUTOFF -> "cutoff";
            case STOPPED_INPUT_LIMIT -> "input-limit";
            case STOPPED_NO_POWER -> "no-power";
            case STOPPED_OUTPUT_SHORTED -> "output-shorted";
            case OUTPUT_AT_MAX -> "at-max";
            case OUTPUT_AT_MIN -> "at-min";
            default -> "";
        };
    }

    private static CautionBuilder caution(HazardContext context, PartReading board) {
        BoardSpec spec = context.spec(board.id(), BoardSpec.class);
        boolean hurts = board.state() == PartReading.State.OUTPUT_AT_MIN
                || board.state() == PartReading.State.STOPPED_OUTPUT_SHORTED;
        return new CautionBuilder(context, hurts ? Signal.CAUTION : Signal.NOTICE)
                .when(Caution.When.FIRED)
                .parts(board.id())
                .variant(variant(board.state()))
                .detail("powerW", spec.powerW())
                .detail("cutoffV", spec.cutoffV())
                .detail("maxInputA", spec.maxInputA())
                .detail("outMinV", spec.outMinV())
                .detail("outMaxV", spec.outMaxV());
    }
}
