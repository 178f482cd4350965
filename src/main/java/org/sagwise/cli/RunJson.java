package org.sagwise.cli;

import java.util.List;
import org.sagwise.run.Basis;
import org.sagwise.run.CellMoment;
import org.sagwise.run.CoilMoment;
import org.sagwise.run.EnergyBook;
import org.sagwise.run.Forecast;
import org.sagwise.run.LifeTogether;
import org.sagwise.run.RunEvent;
import org.sagwise.run.RunState;
import org.sagwise.run.RunTexts;

/** A run as JSON, for other programs. */
final class RunJson {

    private final CallContext call;
    private final JsonWriter json;
    private final RunReport report;
    private final RunTexts texts;

    private RunJson(CallContext call, JsonWriter json, RunReport report) {
        this.call = call;
        this.json = json;
        this.report = report;
        texts = new RunTexts(report.bench(), call.format());
    }

    static void write(CallContext call, RunReport report) {
        JsonWriter.write(call.out(), call.signs(), json -> json.object(() -> new RunJson(call, json, report).keys()));
    }

    private void keys() {
        RunState last = report.result().last();
        json.text("title", report.bench().scenario().title());
        json.text("ended_by", report.result().end().word());
        json.number("fired_s", last.firedS());
        json.number("elapsed_s", last.timeS());
        json.whole("presses", last.presses());
        json.number("delivered_Wh", last.energy().deliveredWh());
        json.objects("cells", last.cells(), this::cell);
        json.objects("coils", last.coils(), this::coil);
        json.objects("events", report.result().events(), this::event);
        json.objects("outlook", report.outlooks(), this::outlook);
        json.object("energy", () -> energy(last.energy()));
        json.objects("life", report.life(), this::age);
    }

    private void cell(CellMoment cell) {
        json.text("id", cell.id());
        json.number("charge", cell.charge());
        json.number("rest_V", cell.restV());
        json.number("temperature_C", cell.temperatureC());
        json.number("peak_temperature_C", cell.peakC());
        json.number("peak_current_A", cell.peakA());
        json.text("peak_current_basis", (isOfAMoment(cell) ? Basis.TEACHING : Basis.TYPICAL).word());
        json.number("minimum_terminal_V", cell.leastV());
    }

    private boolean isOfAMoment(CellMoment cell) {
        return cell.isPeakOfAMoment(report.bench().cells().get(cell.id()).spec().capacityAh());
    }

    private void coil(CoilMoment coil) {
        json.text("id", coil.id());
        json.number("temperature_C", coil.temperatureC());
        json.number("peak_temperature_C", coil.peakC());
    }

    private void event(RunEvent event) {
        json.number("at_s", event.atS());
        json.text("part", event.part());
        json.text("event", event.kind().word());
        json.number("measured", event.measured());
        json.number("limit", event.limit());
        json.text("basis", event.kind().basis().word());
        json.text("text", call.printable(texts.sentence(event)));
    }

    private void outlook(Forecast outlook) {
        json.flag("fired", outlook.press().isHeld());
        json.number("looked_s", outlook.lookedS());
        json.objects("stages", outlook.stages(), this::stage);
    }

    private void stage(Forecast.Stage stage) {
        json.text("part", stage.part());
        json.text("event", stage.kind().word());
        json.number("usual_s", stage.usualS());
        json.number("earliest_s", stage.earliestS());
        json.number("latest_s", stage.latestS());
        json.text("basis", stage.basis().word());
        json.text("text", call.printable(texts.stage(stage.kind())));
    }

    private void age(LifeTogether.Age age) {
        json.whole("cycles", age.cycles());
        json.number("fired_s", age.firedS());
        json.objects("cells", List.copyOf(age.health().keySet()), id -> {
            json.text("id", id);
            json.number("health", age.health().get(id));
            json.number("charge_left", age.left().get(id));
        });
    }

    private void energy(EnergyBook book) {
        json.number("given_J", book.givenJ());
        json.number("delivered_J", book.deliveredJ());
        json.number("cell_heat_J", book.cellHeatJ());
        json.number("path_heat_J", book.pathHeatJ());
        json.number("charging_J", book.chargingJ());
        json.number("board_heat_J", book.boardHeatJ());
        json.number("supply_heat_J", book.supplyHeatJ());
        json.number("missing_J", book.missingJ());
    }
}
