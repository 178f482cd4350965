package org.sagwise.ui.sound;

import java.util.Set;
import java.util.stream.Collectors;
import org.sagwise.assessment.Assessment;
import org.sagwise.hazard.Caution;
import org.sagwise.hazard.Signal;
import org.sagwise.part.PartKind;
import org.sagwise.ui.document.BenchModel;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.settings.PreferencesModel;
import org.sagwise.ui.settings.Sound;

/**
 * Lets the bench be heard while somebody wants it: the button's contact, the current through the load,
 * a danger that was not there before. Everything that is heard can be seen as well.
 */
public final class BenchSounds {

    private final BenchModel bench;
    private final Speaker speaker;
    private Set<String> dangers = Set.of();
    private boolean on;

    /**
     * @param preferences whether anything is to be heard
     * @param subscriptions silent once they are closed
     */
    public BenchSounds(BenchModel bench, PreferencesModel preferences, Speaker speaker, Subscriptions subscriptions) {
        this.bench = bench;
        this.speaker = speaker;
        subscriptions.watch(preferences.property().map(it -> it.sound() == Sound.ON), this::turn);
        subscriptions.onChange(bench.button().downProperty(), this::click);
        subscriptions.onChange(bench.assessmentProperty(), this::follow);
        subscriptions.add(() -> speaker.hum(0));
    }

    private void turn(boolean now) {
        on = now;
        follow();
    }

    private void click() {
        if (on && !bench.scenario().partsOf(PartKind.SWITCH).isEmpty()) {
            speaker.play(Tones.click());
        }
    }

    private void follow() {
        Assessment now = bench.assessment();
        Set<String> present = now.cautions().stream()
                .filter(caution -> caution.signal() == Signal.DANGER)
                .map(Caution::id)
                .collect(Collectors.toSet());
        if (on && !dangers.containsAll(present)) {
            speaker.play(Tones.warning());
        }
        dangers = present;
        speaker.hum(on ? Tones.loudness(now.ledger().loadCurrentA()) : 0);
    }
}
