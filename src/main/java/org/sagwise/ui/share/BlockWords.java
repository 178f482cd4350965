package org.sagwise.ui.share;

import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.sagwise.report.post.Block;
import org.sagwise.ui.kit.WrappedLabel;

/** Shows a post in a window. */
final class BlockWords extends VBox {

    BlockWords() {
        getStyleClass().add("block-words");
    }

    void show(List<Block> blocks) {
        getChildren().clear();
        blocks.forEach(this::add);
    }

    private void add(Block block) {
        if (block instanceof Block.Heading heading) {
            getChildren().add(WrappedLabel.of(heading.text(), "section-title"));
        } else if (block instanceof Block.Paragraph paragraph) {
            getChildren().add(WrappedLabel.of(paragraph.text(), "words"));
        } else if (block instanceof Block.Bullets bullets) {
            bullets.items().forEach(item -> getChildren().add(WrappedLabel.of("•  " + item, "bullet")));
        } else if (block instanceof Block.Table table) {
            getChildren().add(table(table));
        }
    }

    private static GridPane table(Block.Table table) {
        GridPane grid = new GridPane();
        grid.getStyleClass().add("block-table");
        for (int column = 0; column < table.heads().size(); column++) {
            ColumnConstraints width = new ColumnConstraints();
            width.setHgrow(column == 0 ? Priority.ALWAYS : Priority.NEVER);
            grid.getColumnConstraints().add(width);
            grid.add(cell(table.heads().get(column), column, "quiet"), column, 0);
        }
        int row = 1;
        for (List<String> cells : table.rows()) {
            boolean alike = cells.stream().skip(1).distinct().count() == 1;
            for (int column = 0; column < cells.size(); column++) {
                String style = alike ? "alike" : column == 0 ? "words" : "differs";
                grid.add(cell(cells.get(column), column, style), column, row);
            }
            row++;
        }
        return grid;
    }

    private static Label cell(String words, int column, String style) {
        Label label = WrappedLabel.of(words, style);
        label.setMaxWidth(Double.MAX_VALUE);
        if (column > 0) {
            label.getStyleClass().add("number");
            label.setMinWidth(USE_PREF_SIZE);
        }
        return label;
    }
}
