package org.sagwise.web.page;

import java.util.Locale;
import java.util.Optional;
import org.sagwise.part.MeterMode;
import org.sagwise.reading.MeterTexts;
import org.sagwise.reading.ProbeReading;
import org.sagwise.scenario.Probes;
import org.sagwise.scenario.TerminalRef;
import org.sagwise.scenario.edit.SetProbes;

/** The meter in the hand: where its probes rest, what it is turned to, and what it shows. */
final class MeterPart implements PagePart {

    private final Tag red = Tag.byId("probe-red");
    private final Tag black = Tag.byId("probe-black");
    private final Tag dial = Tag.byId("meter-dial");
    private final Tag figure = Tag.byId("meter-figure");
    private final Tag means = Tag.byId("meter-means");
    private final Tag answer = Tag.byId("meter-answer");
    private final Hand hand;
    private final Fold fold = new Fold("meter-part", this::fill);
    private View view;

    MeterPart(Hand hand) {
        this.hand = hand;
        for (Tag field : new Tag[] {red, black, dial}) {
            field.addEventListener("change", event -> put());
        }
        Tag.byId("meter-away").addEventListener("click", event -> {
            red.setValue("");
            black.setValue("");
            put();
        });
    }

    @Override
    public void lay(View shown) {
        view = shown;
        fold.lay();
    }

    private void fill() {
        Optional<Probes> resting = view.bench().scenario().probes();
        String heldRed = resting.isPresent() ? "" : red.getValue();
        String heldBlack = resting.isPresent() ? "" : black.getValue();
        ends(view, red, resting.map(it -> it.red().toString()).orElse(heldRed));
        ends(view, black, resting.map(it -> it.black().toString()).orElse(heldBlack));
        Dom.clear(dial);
        for (MeterMode mode : MeterMode.values()) {
            JointsPart.option(dial, mode.word(), view.words().ui().say("meter.mode." + mode.word()));
        }
        dial.setValue(resting.map(Probes::mode).orElse(MeterMode.VOLTS).word());
        answer.setTextContent("");
        show(view);
    }

    /** A probe may be in the hand: then it rests nowhere yet. */
    private static void ends(View shown, Tag select, String now) {
        Dom.clear(select);
        JointsPart.option(select, "", shown.words().say("meter.nowhere"));
        JointsPart.ends(shown, select);
        select.setValue(now);
    }

    @Override
    public void show(View shown) {
        view = shown;
        if (!fold.isFilled()) {
            return;
        }
        Optional<ProbeReading> reading = shown.now().readings().probes();
        MeterTexts texts = MeterTexts.in(shown.locale());
        figure.setTextContent(reading.map(it -> texts.figure(it.display())).orElse("–"));
        means.setTextContent(
                reading.map(it -> texts.sentence(it.display(), shown.bench().scenario()))
                        .orElse(""));
    }

    private void put() {
        Optional<TerminalRef> one = TerminalRef.parse(red.getValue());
        Optional<TerminalRef> other = TerminalRef.parse(black.getValue());
        Optional<Probes> probes = one.isPresent() && other.isPresent()
                ? Optional.of(Probes.of(one.get(), other.get())
                        .turnedTo(MeterMode.valueOf(dial.getValue().toUpperCase(Locale.ROOT))))
                : Optional.empty();
        if (!probes.equals(view.bench().scenario().probes())) {
            answer.setTextContent(hand.edit(new SetProbes(probes)));
        }
    }
}
