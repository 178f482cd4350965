package org.sagwise.ui.desk;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.controlsfx.control.PrefixSelectionComboBox;
import org.sagwise.part.Alloy;
import org.sagwise.part.Catalogue;
import org.sagwise.part.CoilWinding;
import org.sagwise.part.CoilWire;
import org.sagwise.part.Gauge;
import org.sagwise.plan.WholeWraps;
import org.sagwise.quantity.Digits;
import org.sagwise.quantity.Measure;
import org.sagwise.quantity.QuantityFormat;
import org.sagwise.quantity.Unit;
import org.sagwise.ui.kit.ItemWords;
import org.sagwise.ui.kit.QuantityField;
import org.sagwise.ui.text.Wording;

/** What is asked of a coil, and the wire that there is for it. */
final class WindForm extends VBox {

    private static final int THICKEST = 16;
    private static final int THINNEST = 40;
    private static final int USUAL_GAUGE = 26;
    private static final double USUAL_INNER_M = 3e-3;
    private static final double USUAL_LEGS_M = 12e-3;
    private static final int USUAL_WRAPS = 6;
    private static final int MOST_STRANDS = 1_000;

    private final Wording wording;
    private final ToggleGroup wishes = new ToggleGroup();
    private final QuantityField amount;
    private final ComboBox<Alloy> alloy = new PrefixSelectionComboBox<>();
    private final ComboBox<Double> thickness = new PrefixSelectionComboBox<>();
    private final QuantityField strands;
    private final QuantityField inner;
    private final QuantityField legs;
    private final double ohm;
    private final double wraps;

    /** What is asked for. */
    enum Wish {
        OHM("wind.wish.ohm"),
        WATTS("wind.wish.watts"),
        WRAPS("wind.wish.wraps");

        private final String key;

        Wish(String key) {
            this.key = key;
        }

        private String id() {
            return "wind-wish-" + name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * @param now how the coil is wound, where that is known
     * @param ohm what it has
     * @param changed is told whenever something was written or chosen
     */
    WindForm(Catalogue catalogue, Optional<CoilWinding> now, double ohm, Runnable changed, Wording wording) {
        this.wording = wording;
        this.ohm = ohm;
        this.wraps = now.map(CoilWinding::wraps).orElse((double) USUAL_WRAPS);
        amount = field("wind-amount", wording.say("wind.amount"), Measure.of(Unit.FRACTION));
        strands = field("wind-strands", wording.say("wind.strands"), Measure.of(Unit.FRACTION));
        inner = field("wind-inner", wording.say("wind.inner"), Measure.of(Unit.METRE, "mm"));
        legs = field("wind-legs", wording.say("wind.legs"), Measure.of(Unit.METRE, "mm"));
        FlowPane bar = new FlowPane();
        bar.getStyleClass().add("card-kinds");
        for (Wish wish : Wish.values()) {
            RadioButton button = new RadioButton(wording.say(wish.key));
            button.setId(wish.id());
            button.setUserData(wish);
            button.setToggleGroup(wishes);
            bar.getChildren().add(button);
        }
        fillChoices(catalogue, now);
        strands.write(now.map(it -> String.valueOf(it.wire().strands())).orElse("1"));
        inner.write(mm(now.map(CoilWinding::innerDiameterM).orElse(USUAL_INNER_M)));
        legs.write(mm(now.map(CoilWinding::legsM).orElse(USUAL_LEGS_M)));
        wishes.selectToggle(wishes.getToggles().get(now.isPresent() ? Wish.WRAPS.ordinal() : Wish.OHM.ordinal()));
        usual();
        getStyleClass().add("measured-fields");
        getChildren()
                .addAll(
                        heading("wind.wish"),
                        bar,
                        amount,
                        heading("wind.wire"),
                        ItemWords.labelled(wording.say("wind.alloy"), alloy),
                        ItemWords.labelled(wording.say("wind.thickness"), thickness),
                        strands,
                        inner,
                        legs);
        wishes.selectedToggleProperty().subscribe((before, chosen) -> {
            usual();
            changed.run();
        });
        Stream.of(amount, strands, inner, legs)
                .forEach(each -> each.textProperty().subscribe((before, written) -> changed.run()));
        alloy.valueProperty().subscribe((before, chosen) -> changed.run());
        thickness.valueProperty().subscribe((before, chosen) -> changed.run());
    }

    private QuantityField field(String id, String label, Measure measure) {
        return new QuantityField(id, label, "", measure, wording);
    }

    private void fillChoices(Catalogue catalogue, Optional<CoilWinding> now) {
        alloy.setId("wind-alloy");
        alloy.setMaxWidth(Double.MAX_VALUE);
        alloy.setConverter(new ItemWords<>(it -> it.card().title().in(wording.locale())));
        alloy.getItems().setAll(catalogue.alloys().all());
        alloy.setValue(now.map(it -> it.wire().alloy()).orElse(alloy.getItems().get(1)));
        thickness.setId("wind-thickness");
        thickness.setMaxWidth(Double.MAX_VALUE);
        thickness.setConverter(new ItemWords<>(this::gauge));
        thickness
                .getItems()
                .setAll(IntStream.rangeClosed(THICKEST, THINNEST)
                        .mapToObj(number -> new Gauge(number).diameterM())
                        .toList());
        double chosen = now.map(it -> it.wire().diameterM()).orElse(new Gauge(USUAL_GAUGE).diameterM());
        if (!thickness.getItems().contains(chosen)) {
            thickness.getItems().add(0, chosen);
        }
        thickness.setValue(chosen);
    }

    private String gauge(double diameterM) {
        Gauge near = Gauge.nearest(diameterM);
        String mm = wording.quantity(diameterM, Unit.METRE);
        return near.diameterM() == diameterM ? wording.say("wind.gauge", near.label(), mm) : mm;
    }

    private String mm(double metres) {
        return wording.quantity(metres, Unit.METRE);
    }

    private Label heading(String key) {
        Label label = new Label(wording.say(key));
        label.getStyleClass().add("section-title");
        return label;
    }

    Wish wish() {
        return (Wish) wishes.getSelectedToggle().getUserData();
    }

    /** What the coil has now, in what is asked for: something to begin with. */
    private void usual() {
        switch (wish()) {
            case OHM -> amount.write(wording.quantity(ohm, Unit.OHM));
            case WATTS -> amount.write(wording.quantity(40, Unit.WATT));
            case WRAPS ->
                amount.write(QuantityFormat.forPeople(wording.locale()).number(wraps, Digits.atMostDecimals(2)));
        }
    }

    /** Ohms, watts or wraps, as asked for; empty if there is no such number, which is said in the field. */
    OptionalDouble wanted() {
        OptionalDouble wanted = amount.positive(measure());
        if (wish() == Wish.WRAPS && wanted.isPresent() && wanted.getAsDouble() > WholeWraps.MOST) {
            amount.complain(wording.say("wind.at-most", WholeWraps.MOST));
            return OptionalDouble.empty();
        }
        return wanted;
    }

    private Measure measure() {
        return Measure.of(
                switch (wish()) {
                    case OHM -> Unit.OHM;
                    case WATTS -> Unit.WATT;
                    case WRAPS -> Unit.FRACTION;
                });
    }

    /** One wrap of the wire, on the core, with its ends; empty if something is missing, which is said. */
    Optional<CoilWinding> oneWrap() {
        OptionalDouble count = strands.positive();
        OptionalDouble innerM = inner.positive();
        OptionalDouble legsM = legs.isEmpty() ? OptionalDouble.of(0) : legs.value();
        if (legsM.isPresent() && legsM.getAsDouble() < 0) {
            legs.complain(wording.say("wind.below-zero"));
            legsM = OptionalDouble.empty();
        }
        if (count.isPresent()
                && (count.getAsDouble() != Math.rint(count.getAsDouble()) || count.getAsDouble() > MOST_STRANDS)) {
            strands.complain(wording.say("wind.strands.whole", MOST_STRANDS));
            count = OptionalDouble.empty();
        }
        if (!List.of(count, innerM, legsM).stream().allMatch(OptionalDouble::isPresent)) {
            return Optional.empty();
        }
        CoilWire wire = new CoilWire(alloy.getValue(), thickness.getValue(), (int) count.getAsDouble());
        return Optional.of(new CoilWinding(wire, 1, innerM.getAsDouble(), legsM.getAsDouble()));
    }

    /** Says at the wish what is wrong with it. */
    void complain(String words) {
        amount.complain(words);
    }
}
