package org.sagwise.web.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.sagwise.part.CatalogueEntry;
import org.sagwise.part.Ends;
import org.sagwise.part.PartKind;
import org.sagwise.part.key.EffectiveKeys;
import org.sagwise.part.key.KeySpec;
import org.sagwise.picture.look.Theme;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.edit.Edit;
import org.sagwise.scenario.edit.FlipParts;
import org.sagwise.scenario.edit.SetAmbient;
import org.sagwise.scenario.edit.SetPartKeys;
import org.sagwise.web.engine.Words;

/** The card of the chosen part: turn it round, and change every value that it has. */
final class CardPart implements PagePart {

    /** What people come to change; the rest is folded away. */
    private static final Set<String> OFTEN = Set.of(
            "model",
            "charge",
            "rest_V",
            "internal_mohm",
            "limit_A",
            "ohm",
            "health",
            "power_W",
            "rating_A",
            "wrap",
            "volts",
            "mode",
            "stuck",
            "blown");

    private static final Set<String> AS_WRITTEN = Set.of("chemistry", "format");

    private final Tag section = Tag.byId("card-part");
    private final Tag title = Tag.byId("card-title");
    private final Tag card = Tag.byId("card");
    private final Tag around = Tag.byId("around");
    private final Fold fold = new Fold("around-part", this::fillAround);
    private final Hand hand;
    private View view;
    private Optional<Filling> filled = Optional.empty();

    /** On what the card's rows depend: a part that is turned over and over keeps them, and the focus where it is. */
    private record Filling(Part part, double ambientC, Words words, Theme theme) {}

    CardPart(Hand hand) {
        this.hand = hand;
        // What somebody typed or slid and was refused is not to stand there for ever.
        card.addEventListener("input", event -> filled = Optional.empty());
        card.addEventListener("change", event -> filled = Optional.empty());
    }

    @Override
    public void lay(View shown) {
        view = shown;
        fold.lay();
        Optional<Part> part = shown.bench().scenario().part(shown.chosen().part());
        Optional<Filling> wanted =
                part.map(it -> new Filling(it, shown.bench().scenario().ambientC(), shown.words(), shown.theme()));
        if (wanted.isPresent() && wanted.equals(filled)) {
            return;
        }
        filled = wanted;
        String focused = Dom.focused();
        Dom.clear(card);
        section.setHidden(part.isEmpty());
        part.ifPresent(this::fill);
        Tag again = Tag.byId(focused);
        if (again != null && focused.startsWith("set-")) {
            again.focus();
        }
    }

    @Override
    public void show(View shown) {
        view = shown;
    }

    private void fillAround() {
        Dom.clear(around);
        around.appendChild(ambient());
    }

    private Tag ambient() {
        return new NumberRow(
                        view.words(), "ambient_C", "ambient_C", view.words().say("ambient"))
                .of(OptionalDouble.of(view.bench().scenario().ambientC()), OptionalDouble.empty(), this::around);
    }

    private String around(OptionalDouble value) {
        return value.isEmpty() ? "" : hand.edit(new SetAmbient(value.getAsDouble()));
    }

    private void fill(Part part) {
        title.setTextContent(view.facts().called(part));
        Tag deeds = Dom.tag("div", "deeds", "");
        if (part.kind().descriptor().ends() == Ends.DIFFERENT) {
            Tag flip = Dom.button("cure", view.words().say("flip"), () -> hand.edit(new FlipParts(Set.of(part.id()))));
            flip.setId("flip");
            deeds.appendChild(flip);
        }
        Tag close = Dom.button("quiet", view.words().say("card.close"), () -> hand.choose(View.Choice.NOTHING));
        close.setId("card-close");
        deeds.appendChild(close);
        card.appendChild(deeds);
        List<Tag> folded = new ArrayList<>();
        EffectiveKeys values = view.now().bench().values(part.id());
        for (KeySpec spec : part.kind().descriptor().keys().specs()) {
            row(part, spec, values).ifPresent(row -> {
                if (OFTEN.contains(spec.name())) {
                    card.appendChild(row);
                } else {
                    folded.add(row);
                }
            });
        }
        if (part.kind() == PartKind.CELL && view.lesson().isPresent()) {
            card.appendChild(InsideTag.of(view));
        }
        if (!folded.isEmpty()) {
            Tag more =
                    Dom.tag("details", "", Dom.tag("summary", "", view.words().say("card.more")));
            folded.forEach(more::appendChild);
            card.appendChild(more);
        }
    }

    private Optional<Tag> row(Part part, KeySpec spec, EffectiveKeys values) {
        String name = spec.name();
        String label = view.words().ui().has("key." + name) ? view.words().ui().say("key." + name) : name;
        if (spec.type() instanceof KeySpec.NumberType) {
            OptionalDouble said = values.number(name);
            return Optional.of(new NumberRow(view.words(), name, name, label)
                    .of(part.keys().number(name), said.isPresent() ? said : values.usual(spec), value -> {
                        Edit edit = value.isPresent()
                                ? SetPartKeys.set(part.id(), name, value.getAsDouble())
                                : SetPartKeys.clear(part.id(), name);
                        return hand.edit(edit);
                    }));
        } else if (spec.type() instanceof KeySpec.ChoiceType choice) {
            return Optional.of(choice(part, name, label, words(name, choice), choice.defaultValue()));
        } else if (spec.type() instanceof KeySpec.CatalogueType type && type.shelf() == KeySpec.Shelf.MODEL) {
            return Optional.of(choice(part, name, label, models(part.kind()), Optional.empty()));
        } else if (spec.type() instanceof KeySpec.FlagType) {
            return Optional.of(flag(part, name, label, values.flag(name)));
        }
        return Optional.empty();
    }

    private Map<String, String> words(String name, KeySpec.ChoiceType choice) {
        Map<String, String> words = new LinkedHashMap<>();
        for (String word : choice.choices()) {
            words.put(word, AS_WRITTEN.contains(name) ? word : view.words().ui().say("word." + word));
        }
        return words;
    }

    private Map<String, String> models(PartKind kind) {
        Map<String, String> titles = new LinkedHashMap<>();
        if (kind.descriptor().family().isPresent()) {
            for (CatalogueEntry entry : view.bench().catalogue().models(kind).all()) {
                titles.put(entry.id(), entry.card().title().in(view.locale()));
            }
        }
        return titles;
    }

    private Tag choice(Part part, String name, String label, Map<String, String> words, Optional<String> usual) {
        Tag select = Dom.tag("select", "", "");
        select.setId("set-" + name);
        String now = part.keys().text(name).orElse("");
        option(select, "", usual.map(words::get).orElse("–"), now.isEmpty());
        words.forEach((word, text) -> option(select, word, text, word.equals(now)));
        Tag answer = Dom.tag("p", "answer", "");
        select.addEventListener("change", event -> {
            String word = select.getValue();
            answer.setTextContent(hand.edit(
                    word.isEmpty() ? SetPartKeys.clear(part.id(), name) : SetPartKeys.set(part.id(), name, word)));
        });
        return labelled(label, select, answer);
    }

    private static void option(Tag select, String word, String text, boolean chosen) {
        Tag option = Dom.tag("option", "", text);
        option.setAttribute("value", word);
        if (chosen) {
            option.setAttribute("selected", "");
        }
        select.appendChild(option);
    }

    private Tag flag(Part part, String name, String label, boolean on) {
        Tag box = Dom.tag("input", "", "");
        box.setAttribute("type", "checkbox");
        box.setId("set-" + name);
        box.setChecked(on);
        Tag answer = Dom.tag("p", "answer", "");
        box.addEventListener(
                "change", event -> answer.setTextContent(hand.edit(SetPartKeys.set(part.id(), name, box.isChecked()))));
        return labelled(label, box, answer);
    }

    private static Tag labelled(String label, Tag field, Tag answer) {
        Tag name = Dom.tag("label", "", label);
        name.setAttribute("for", field.getId());
        return Dom.tag("div", "row", name, field, answer);
    }
}
