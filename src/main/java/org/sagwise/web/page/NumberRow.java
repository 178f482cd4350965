package org.sagwise.web.page;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.OptionalDouble;
import org.sagwise.quantity.KeyNumbers;
import org.sagwise.quantity.Parsed;
import org.sagwise.web.engine.Words;

/** A number as a field, in which any unit is understood, and as a slider about where it stands. */
final class NumberRow {

    /** How far the slider goes to either side, as a factor. */
    private static final double REACH = 4;

    /** Nobody slides to more. */
    private static final MathContext THREE_DIGITS = new MathContext(3);

    private static final int STEPS = 200;

    /** Takes a number, or nothing, and says what is against it. */
    interface Taker {
        String take(OptionalDouble value);
    }

    private final Words words;
    private final String key;
    private final String id;
    private final String label;

    /**
     * @param key name of the key, whose ending says the unit
     * @param id what its field is found by
     */
    NumberRow(Words words, String key, String id, String label) {
        this.words = words;
        this.key = key;
        this.id = "set-" + id;
        this.label = label;
    }

    /**
     * @param written the number that stands there
     * @param otherwise what holds without one
     */
    Tag of(OptionalDouble written, OptionalDouble otherwise, Taker taker) {
        KeyNumbers numbers = new KeyNumbers(words.locale());
        Tag field = Dom.tag("input", "", "");
        field.setId(id);
        field.setAttribute("type", "text");
        field.setAttribute("inputmode", "decimal");
        field.setAttribute("autocomplete", "off");
        String shown = written.isPresent() ? numbers.shown(written.getAsDouble()) : "";
        field.setValue(shown);
        if (otherwise.isPresent()) {
            field.setAttribute("placeholder", numbers.roughly(otherwise.getAsDouble()));
        }
        Tag name = Dom.tag("label", "", label);
        name.setAttribute("for", id);
        Tag unit = Dom.tag("span", "unit", KeyNumbers.unit(key));
        Tag answer = Dom.tag("p", "answer", "");
        answer.setAttribute("role", "status");
        field.addEventListener("change", event -> answer.setTextContent(read(field, shown, numbers, taker)));
        Tag row = Dom.tag("div", "row", name, field, unit);
        OptionalDouble now = written.isPresent() ? written : otherwise;
        if (now.isPresent()) {
            row.appendChild(slider(now.getAsDouble(), field, numbers, answer, taker));
        }
        row.appendChild(answer);
        return row;
    }

    private String read(Tag field, String shown, KeyNumbers numbers, Taker taker) {
        String text = field.getValue().strip();
        if (text.equals(shown)) {
            return "";
        } else if (text.isEmpty()) {
            return taker.take(OptionalDouble.empty());
        }
        Parsed parsed = numbers.read(key, text);
        return parsed instanceof Parsed.Refused refused
                ? refused.text(words.locale())
                : taker.take(OptionalDouble.of(parsed.value().orElseThrow()));
    }

    private Tag slider(double now, Tag field, KeyNumbers numbers, Tag answer, Taker taker) {
        Reach reach = Reach.of(key, now);
        Tag slider = Dom.tag("input", "", "");
        slider.setId(id + "-slider");
        slider.setAttribute("type", "range");
        slider.setAttribute("min", "0");
        slider.setAttribute("max", String.valueOf(STEPS));
        slider.setAttribute("aria-label", label);
        slider.setValue(String.valueOf(Math.round(STEPS * reach.share(now))));
        slider.addEventListener("input", event -> field.setValue(numbers.roughly(at(slider, reach))));
        slider.addEventListener(
                "change", event -> answer.setTextContent(taker.take(OptionalDouble.of(at(slider, reach)))));
        return slider;
    }

    private static double at(Tag slider, Reach reach) {
        double exact = reach.at(Double.parseDouble(slider.getValue()) / STEPS);
        return BigDecimal.valueOf(exact).round(THREE_DIGITS).doubleValue();
    }

    /**
     * From where to where a slider goes.
     *
     * @param isEven whether by equal differences; else by equal factors
     */
    private record Reach(double least, double most, boolean isEven) {

        static Reach of(String key, double now) {
            return switch (key) {
                case "charge", "health", "efficiency" -> new Reach(key.equals("charge") ? 0 : 0.3, 1, true);
                case "rest_V" -> new Reach(Math.min(2.5, now), Math.max(4.25, now), true);
                case "ambient_C", "temperature_C" -> new Reach(Math.min(-20, now), Math.max(60, now), true);
                default -> now > 0 ? new Reach(now / REACH, now * REACH, false) : new Reach(Math.min(0, now), 10, true);
            };
        }

        double at(double share) {
            return isEven ? least + share * (most - least) : least * Math.pow(most / least, share);
        }

        double share(double value) {
            return isEven ? (value - least) / (most - least) : Math.log(value / least) / Math.log(most / least);
        }
    }
}
