package org.sagwise.picture.layout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.sagwise.part.PartKind;
import org.sagwise.picture.geometry.GridPoint;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;

/** Computes where the parts of a scenario lie when nobody has said so. */
final class AutoPlacement {

    private static final int BETWEEN_PIECES = PartShape.GRID;
    private static final int ROW_WIDTH = 1600;

    private final Scenario scenario;
    private final Arranger arranger;
    private final LoopArranger loops;
    private final List<Block> placed = new ArrayList<>();

    private AutoPlacement(Scenario scenario, Sizes sizes) {
        this.scenario = scenario;
        this.arranger = new Arranger(scenario, sizes);
        this.loops = new LoopArranger(scenario, arranger);
    }

    /** Spots of all parts by id, in file order. */
    static Map<String, Spot> of(Scenario scenario, Sizes sizes) {
        AutoPlacement placement = new AutoPlacement(scenario, sizes);
        placement.placePieces(sizes.drawing());
        Map<String, Spot> spots = new LinkedHashMap<>();
        placement.placed.forEach(block -> spots.putAll(block.spots()));
        return new FreeSpots(scenario, sizes).completed(spots);
    }

    private void placePieces(Drawing drawing) {
        List<Plan> waiting = new ArrayList<>(Planner.of(scenario, drawing));
        while (!waiting.isEmpty()) {
            Plan next = waiting.stream()
                    .filter(plan -> placedBoard(plan).isPresent())
                    .findFirst()
                    .orElseGet(() -> firstWithoutBoardAsPack(waiting));
            waiting.remove(next);
            place(next);
        }
    }

    private static Plan firstWithoutBoardAsPack(List<Plan> waiting) {
        return waiting.stream()
                .filter(plan -> boardAsPack(plan).isEmpty())
                .findFirst()
                .orElse(waiting.get(0));
    }

    private void place(Plan plan) {
        Block block = block(plan);
        Optional<Spot> board = placedBoard(plan);
        if (board.isPresent()) {
            Spot own = block.spots().get(boardAsPack(plan).orElseThrow().id());
            placed.add(block.moved(board.get().x() - own.x(), board.get().y() - own.y()));
        } else if (!block.isEmpty()) {
            placed.add(beside(block));
        }
    }

    private Block block(Plan plan) {
        if (plan.pack().isPresent() && plan.load().isPresent()) {
            return loops.arrange(plan.pack().get(), plan.load().get());
        }
        if (plan.pack().isPresent()) {
            return loops.arrange(plan.pack().get());
        }
        if (plan.load().isPresent()) {
            return arranger.arrange(plan.load().get(), Bearing.RIGHT);
        }
        return plan.rest()
                .map(rest -> arranger.arrange(rest, Bearing.DOWN))
                .orElseGet(() -> Block.empty(new GridPoint(0, 0)));
    }

    private static Optional<Part> boardAsPack(Plan plan) {
        return plan.pack()
                .flatMap(pack -> pack.strands().findFirst())
                .map(Strand::part)
                .filter(part -> part.kind() == PartKind.BOARD);
    }

    private Optional<Spot> placedBoard(Plan plan) {
        return boardAsPack(plan)
                .flatMap(board -> placed.stream()
                        .map(block -> block.spots().get(board.id()))
                        .filter(spot -> spot != null)
                        .findFirst());
    }

    /** The block moved right of all others, or into a new row. */
    private Block beside(Block block) {
        if (placed.isEmpty()) {
            return block;
        }
        var all = Block.union(placed, new GridPoint(0, 0), new GridPoint(0, 0)).bounds();
        var mine = block.bounds();
        boolean newRow = all.width() + mine.width() > ROW_WIDTH;
        double x = newRow ? all.x() : all.right() + BETWEEN_PIECES;
        double y = newRow ? all.bottom() + BETWEEN_PIECES : all.y();
        return block.moved(Spot.toLattice(x - mine.x()), Spot.toLattice(y - mine.y()));
    }
}
