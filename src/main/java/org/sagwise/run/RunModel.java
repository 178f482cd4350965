package org.sagwise.run;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.sagwise.part.ChargerSpec;
import org.sagwise.part.CoilThermal;
import org.sagwise.part.Copper;
import org.sagwise.part.FuseMelting;
import org.sagwise.part.FuseSpec;
import org.sagwise.part.JumperWire;
import org.sagwise.part.PartKind;
import org.sagwise.part.PtcSpec;
import org.sagwise.reading.Bench;
import org.sagwise.reading.CellState;
import org.sagwise.reading.ResolvedCoil;
import org.sagwise.reading.States;
import org.sagwise.scenario.Joint;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Press;

/** A bench as time sees it: what stores charge or heat, in file order. Immutable. */
final class RunModel {

    /** So much that nothing else counts beside it, Ω. */
    private static final double OPEN_OHM = 1e5;

    /** A fuse of the bench. */
    record FuseModel(String id, FuseMelting melting) {}

    /** A charger of the bench. */
    record ChargerModel(String id, ChargerSpec charger) {}

    final Bench bench;
    final Spread spread;
    final double ambientC;
    final List<CellModel> cells = new ArrayList<>();
    final List<ResolvedCoil> coils;

    /** Coils wound from wire, and after them the resettable fuses: parts whose resistance follows their warmth. */
    final List<HotModel> hotCoils = new ArrayList<>();

    final List<HotModel> wires = new ArrayList<>();
    final List<FuseModel> fuses = new ArrayList<>();
    final List<ChargerModel> chargers = new ArrayList<>();
    final List<String> boards = new ArrayList<>();
    final boolean hasSwitch;
    final StateLayout layout;

    RunModel(Bench bench, Spread spread) {
        this.bench = bench;
        this.spread = spread;
        ambientC = bench.scenario().ambientC();
        coils = List.copyOf(bench.coils().values());
        bench.cells().values().forEach(cell -> cells.add(new CellModel(cell, spread)));
        for (int i = 0; i < coils.size(); i++) {
            addHotCoil(i);
        }
        bench.scenario().partsOf(PartKind.PTC).forEach(this::addPtc);
        for (int i = 0; i < bench.scenario().links().size(); i++) {
            addWire(i);
        }
        bench.scenario().partsOf(PartKind.FUSE).forEach(this::addFuse);
        for (Part part : bench.scenario().partsOf(PartKind.CHARGER)) {
            chargers.add(new ChargerModel(part.id(), bench.spec(part.id(), ChargerSpec.class)));
        }
        bench.scenario().partsOf(PartKind.BOARD).forEach(part -> boards.add(part.id()));
        hasSwitch = bench.scenario().partsOf(PartKind.SWITCH).stream()
                .anyMatch(part -> bench.values(part.id()).word("stuck").isEmpty());
        layout = new StateLayout(cells.size(), hotCoils.size(), wires.size(), fuses.size());
    }

    /** Volts that would stand across a cell's own PTC if it alone let nothing pass, whatever the button does, V. */
    double ptcOpenV(CellModel cell) {
        double worstV = 0;
        for (Press press : Press.values()) {
            Map<String, CellState> cells = new HashMap<>(bench.start().cells());
            CellState start = cells.get(cell.id());
            cells.put(
                    cell.id(),
                    new CellState(
                            start.charge(),
                            start.restV(),
                            start.polarisationV(),
                            start.temperatureC(),
                            OPEN_OHM,
                            start.guard()));
            States tripped = new States(
                    cells,
                    bench.start().coilC(),
                    bench.start().linkC(),
                    bench.start().blownFuses());
            double ampere =
                    bench.at(tripped, press).cell(cell.id()).orElseThrow().currentA();
            worstV = Math.max(worstV, OPEN_OHM * Math.abs(ampere));
        }
        return worstV;
    }

    /** Highest power that a coil is meant for (W), where one is given. */
    OptionalDouble limitW(String coil) {
        return bench.coils().get(coil).spec().limitW();
    }

    private void addHotCoil(int index) {
        ResolvedCoil coil = coils.get(index);
        coil.winding()
                .ifPresent(wound -> hotCoils.add(new HotModel(
                        index,
                        coil.part().id(),
                        wound.thermal().heatCapacityJPerK(),
                        loss(wound.thermal()),
                        coil::ohmAt,
                        0,
                        wound.wire().alloy().meltingC(),
                        1)));
    }

    private void addPtc(Part part) {
        PtcSpec ptc = bench.spec(part.id(), PtcSpec.class);
        LossCurve loss = loss(ptc.thermal());
        double never = Double.POSITIVE_INFINITY;
        hotCoils.add(
                new HotModel(-1, part.id(), ptc.heatCapacityJPerK(), loss, ptc::ohmAt, 0, never, HotModel.PTC_CLOSER));
    }

    private void addWire(int index) {
        Link link = bench.scenario().links().get(index);
        if (link.joint() instanceof Joint.Jumper jumper && bench.joins(link)) {
            jumper.wire().ifPresent(wire -> wires.add(hot(index, link, jumper, wire)));
        }
    }

    private HotModel hot(int index, Link link, Joint.Jumper jumper, JumperWire wire) {
        double coldOhm = wire.ohmAt(Copper.REFERENCE_C);
        double contactsOhm = jumper.ohmAt(Copper.REFERENCE_C) - coldOhm;
        return new HotModel(
                index,
                name(link),
                wire.thermal().heatCapacityJPerK(),
                loss(wire.thermal()),
                hotC -> coldOhm * Copper.temperatureFactor(hotC) + contactsOhm,
                contactsOhm,
                Copper.MELTING_C,
                1);
    }

    /** What events call a wire: its id, or its ends as a file writes them. */
    static String name(Link link) {
        return link.id().orElseGet(() -> link.from() + " \u2013 " + link.to());
    }

    private LossCurve loss(CoilThermal thermal) {
        return new LossCurve(thermal.withAirFactor(spread.heatLoss()), ambientC);
    }

    private void addFuse(Part part) {
        fuses.add(new FuseModel(part.id(), bench.spec(part.id(), FuseSpec.class).melting()));
    }
}
