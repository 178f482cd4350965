package org.sagwise.scenario.edit;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.sagwise.part.Catalogue;
import org.sagwise.part.CatalogueEntry;
import org.sagwise.part.CoilSpec;
import org.sagwise.part.CoilWinding;
import org.sagwise.part.Gauge;
import org.sagwise.part.PartKind;
import org.sagwise.part.SwitchSpec;
import org.sagwise.part.key.Keys;
import org.sagwise.scenario.Part;

/** Everything that can be taken from the shelf: what the catalogue has, and plain bench gear. */
public final class ShelfItems {

    private static final double MILLI = 1000;

    /** A full cell as it comes from the charger. */
    private static final double FULL = 1;

    private static final double RESISTOR_OHM = 1;
    private static final double SUPPLY_V = 4.2;

    private ShelfItems() {}

    /** All of them, family by family, in the order of the catalogue. */
    public static List<ShelfItem> of(Catalogue catalogue) {
        return Stream.of(
                        listed(catalogue.cells().all(), cell -> model(PartKind.CELL, cell.id())),
                        listed(catalogue.coils().all(), ShelfItems::coil),
                        listed(catalogue.switches().all(), ShelfItems::button),
                        listed(catalogue.fuses().all(), fuse -> model(PartKind.FUSE, fuse.id())),
                        listed(catalogue.boards().all(), board -> model(PartKind.BOARD, board.id())),
                        listed(catalogue.chargers().all(), charger -> model(PartKind.CHARGER, charger.id())),
                        Stream.of(
                                plain(PartKind.SUPPLY, "volts", SUPPLY_V),
                                plain(PartKind.RESISTOR, "ohm", RESISTOR_OHM),
                                plain(PartKind.METER, "mode", "volts")))
                .flatMap(each -> each)
                .toList();
    }

    private static <T extends CatalogueEntry> Stream<ShelfItem> listed(Collection<T> entries, Function<T, Part> part) {
        return entries.stream().map(entry -> new ShelfItem(entry.id(), part.apply(entry), Optional.of(entry.card())));
    }

    private static ShelfItem plain(PartKind kind, String key, Object value) {
        return new ShelfItem(kind.word(), Part.of(kind.word(), kind, key, value), Optional.empty());
    }

    private static Part model(PartKind kind, String id) {
        Part part = Part.of(kind.word(), kind, "model", id);
        return kind == PartKind.CELL ? part.with("charge", FULL) : part;
    }

    private static Part coil(CoilSpec spec) {
        Part bare = Part.of("coil", PartKind.COIL);
        Part part = spec.winding()
                .map(wound -> bare.with("wire", wire(wound)))
                .orElseGet(() -> bare.with("ohm", spec.ohm()));
        return spec.limitW().isPresent() ? part.with("limit_W", spec.limitW().getAsDouble()) : part;
    }

    private static Keys wire(CoilWinding wound) {
        Gauge gauge = Gauge.nearest(wound.wire().diameterM());
        boolean isGauge = Math.abs(gauge.diameterM() / wound.wire().diameterM() - 1) < 1e-9;
        return Keys.of("alloy", wound.wire().alloy().id())
                .with(
                        isGauge ? "awg" : "diameter_mm",
                        isGauge ? gauge.number() : wound.wire().diameterM() * MILLI)
                .with("wraps", wound.wraps())
                .with("inner_mm", rounded(wound.innerDiameterM() * MILLI))
                .with("legs_mm", rounded(wound.legsM() * MILLI))
                .with("strands", wound.wire().strands());
    }

    /** Millimetres as a person would write them, without what turning metres back leaves. */
    private static double rounded(double mm) {
        return Math.rint(mm * MILLI) / MILLI;
    }

    private static Part button(SwitchSpec spec) {
        return Part.of(
                "fire",
                PartKind.SWITCH,
                "type",
                spec.action().name().toLowerCase(Locale.ROOT),
                "closed_mohm",
                rounded(spec.closedOhm() * MILLI));
    }
}
