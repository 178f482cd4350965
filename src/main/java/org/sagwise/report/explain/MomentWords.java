package org.sagwise.report.explain;

import java.util.List;
import java.util.Map;
import org.sagwise.assessment.Moment;
import org.sagwise.part.PartKind;
import org.sagwise.quantity.Unit;
import org.sagwise.reading.CellState;
import org.sagwise.report.post.Block;
import org.sagwise.scenario.Part;

/** Says of which moment the numbers are, and what time has done to the cells by then. */
final class MomentWords {

    private MomentWords() {}

    static List<Block> of(Speech speech, Moment moment) {
        Map<String, CellState> cells = moment.assessment().states().cells();
        Block told = new Block.Paragraph(speech.say("moment.told", speech.print(moment.atS(), Unit.SECOND)));
        if (cells.isEmpty()) {
            return List.of(told);
        }
        List<String> items = moment.assessment().scenario().partsOf(PartKind.CELL).stream()
                .map(Part::id)
                .map(id -> item(speech, id, cells.get(id)))
                .toList();
        return List.of(told, new Block.Bullets(items));
    }

    private static String item(Speech speech, String id, CellState state) {
        return speech.sentence(speech.say(
                "moment.cell",
                speech.name(id),
                speech.print(state.charge(), Unit.FRACTION),
                speech.print(state.temperatureC(), Unit.CELSIUS)));
    }
}
