package org.sagwise.picture.look;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.sagwise.picture.geometry.Line;
import org.sagwise.picture.pen.Colour;
import org.sagwise.report.pen.Java2dPen;

class LineScaleTest {

    private static final int SIDE = 60;

    /** Rows that a level line of some width darkens. */
    private static double thickness(double width, double lineScale) {
        BufferedImage image = new BufferedImage(SIDE, SIDE, BufferedImage.TYPE_INT_RGB);
        Graphics2D surface = image.createGraphics();
        surface.setColor(Color.WHITE);
        surface.fillRect(0, 0, SIDE, SIDE);
        ThemedPen pen = new ThemedPen(new Java2dPen(surface), Theme.LIGHT, 1, 1, lineScale);
        pen.draw(new Line(0, SIDE / 2.0, SIDE, SIDE / 2.0), Colour.BLACK, width);
        surface.dispose();
        return IntStream.range(0, SIDE)
                .mapToDouble(y -> 1 - (image.getRGB(SIDE / 2, y) & 0xff) / 255.0)
                .sum();
    }

    /** Thin lines become twice as thick; broad ones grow by as much as the broadest thin one. */
    @ParameterizedTest
    @CsvSource({"1, 1, 1", "8, 1, 8", "1, 2, 2", "2.4, 2, 4.8", "8, 2, 11"})
    void draw_withAScale_thickensThinLinesMost(double width, double lineScale, double expected) {
        assertEquals(expected, thickness(width, lineScale), 0.1);
    }
}
