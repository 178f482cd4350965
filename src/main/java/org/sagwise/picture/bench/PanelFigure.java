package org.sagwise.picture.bench;

import org.sagwise.part.MeterMode;
import org.sagwise.picture.scene.BenchScene;
import org.sagwise.picture.scene.Figures;
import org.sagwise.quantity.Unit;
import org.sagwise.reading.MeterDisplay;
import org.sagwise.reading.MeterTexts;
import org.sagwise.reading.PartReading;
import org.sagwise.scenario.Part;

/** What a meter among the parts shows. */
final class PanelFigure {

    private PanelFigure() {}

    static String of(BenchScene scene, Part meter) {
        Figures figures = Figures.of(scene);
        MeterDisplay ohms = scene.readings().ohmmeters().get(meter.id());
        if (ohms != null) {
            return MeterTexts.in(scene.locale()).figure(ohms);
        }
        return scene.readings()
                .part(meter.id())
                .map(part -> value(figures, part, meter.isTurnedTo(MeterMode.AMPS)))
                .orElse(figures.print(Double.NaN, Unit.VOLT));
    }

    private static String value(Figures figures, PartReading part, boolean amps) {
        return amps ? figures.print(part.currentA(), Unit.AMPERE) : figures.print(part.voltsV(), Unit.VOLT);
    }
}
