package org.sagwise.web.page;

import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;
import org.sagwise.quantity.Unit;
import org.sagwise.reading.CellReading;
import org.sagwise.reading.Ledger;
import org.sagwise.web.engine.Facts;
import org.sagwise.web.engine.Words;

/** The account of volts and watts, each cell against its limit, and the table that mirrors the bench. */
final class NumbersPart implements PagePart {

    /** Nobody reads more bars than this. */
    private static final int MOST_BARS = 24;

    private final Tag ledger = Tag.byId("ledger");
    private final Tag limits = Tag.byId("limits");
    private final Tag table = Tag.byId("readings");
    private final Fold fold = new Fold("table-part", this::table);
    private final Hand hand;
    private View view;

    NumbersPart(Hand hand) {
        this.hand = hand;
    }

    @Override
    public void lay(View view) {
        show(view);
    }

    @Override
    public void show(View shown) {
        view = shown;
        ledger(view);
        limits(view);
        fold.lay();
    }

    private void ledger(View view) {
        Words words = view.words();
        List<Ledger.Row> rows = view.now().ledger().rows();
        double volts = largest(rows.stream().mapToDouble(Ledger.Row::voltsV));
        double watts = largest(rows.stream().mapToDouble(Ledger.Row::powerW));
        Dom.clear(ledger);
        for (Ledger.Row row : rows) {
            String word = row.entry().name().toLowerCase(Locale.ROOT);
            Tag name = Dom.tag("th", "", words.ui().say("ledger.row." + word));
            name.setAttribute("scope", "row");
            ledger.appendChild(Dom.tag(
                    "tr",
                    "ledger-" + word,
                    name,
                    Dom.tag("td", "", words.inColumn(row.voltsV(), volts)),
                    Dom.tag("td", "", words.inColumn(row.powerW(), watts))));
        }
    }

    private static double largest(DoubleStream numbers) {
        return numbers.filter(Double::isFinite).map(Math::abs).max().orElse(0);
    }

    private void limits(View view) {
        Words words = view.words();
        Dom.clear(limits);
        List<CellReading> cells = view.now().readings().cells();
        for (CellReading cell : cells.subList(0, Math.min(MOST_BARS, cells.size()))) {
            String name = view.now().bench().part(cell.id()).name();
            String current = words.quantity(Math.abs(cell.currentA()), Unit.AMPERE);
            String text = words.ui()
                    .say(
                            cell.currentA() < 0 ? "limits.charging" : "limits.figure",
                            current,
                            words.limit(cell.limitA(), Unit.AMPERE));
            Tag fill = Dom.tag("i", cell.loadFraction() > 1 ? "over" : "", "");
            Dom.style(fill, "width", 100 * Math.min(1, cell.loadFraction() / 1.5) + "%");
            Tag bar = Dom.tag("span", "bar", fill);
            bar.setAttribute("aria-hidden", "true");
            limits.appendChild(Dom.tag("li", "", Dom.tag("span", "name", name), bar, Dom.tag("span", "figure", text)));
        }
    }

    private void table() {
        Dom.clear(table);
        for (Facts.Row row : view.facts().rows()) {
            Tag open = Dom.button("link", row.name(), () -> hand.choose(View.Choice.of(row.part())));
            Tag head = Dom.tag("th", "", open);
            head.setAttribute("scope", "row");
            table.appendChild(Dom.tag(
                    "tr",
                    "",
                    head,
                    Dom.tag("td", "", row.kind()),
                    Dom.tag("td", "number", row.volts()),
                    Dom.tag("td", "number", row.amps()),
                    Dom.tag("td", "number", row.watts()),
                    Dom.tag("td", "", row.more())));
        }
    }
}
