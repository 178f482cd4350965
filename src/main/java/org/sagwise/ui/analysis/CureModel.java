package org.sagwise.ui.analysis;

import java.util.Locale;
import java.util.concurrent.Executor;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import org.sagwise.assessment.Assessment;
import org.sagwise.assessment.fix.Offer;
import org.sagwise.scenario.Scenario;
import org.sagwise.ui.document.BenchModel;
import org.sagwise.ui.kit.LatestTask;

/**
 * Looks for what only time shows on the bench, and for cures of what is wrong. A cure is tried out before it is offered, which
 * can take longer than a frame, so it happens behind the scenes; what is found for a document that
 * has changed meanwhile is dropped.
 */
public final class CureModel {

    private final BenchModel bench;
    private final Function<Scenario, Assessment> assess;
    private final LatestTask task;
    private final ReadOnlyObjectWrapper<Cures> cures = new ReadOnlyObjectWrapper<>(Cures.NONE);
    private Cures found = Cures.NONE;
    private Scenario wanted;

    /**
     * @param assess computes everything about a scenario, on whatever thread
     * @param behindTheScenes where cures are looked for
     */
    public CureModel(BenchModel bench, Function<Scenario, Assessment> assess, Executor behindTheScenes) {
        this.bench = bench;
        this.assess = assess;
        this.task = LatestTask.in(behindTheScenes);
        bench.assessmentProperty().subscribe(now -> seek(now.scenario()));
        bench.exerciseProperty().subscribe(byHand -> offer(found));
    }

    private void offer(Cures those) {
        found = those;
        cures.set(bench.exerciseProperty().get() ? Cures.NONE : those);
    }

    ReadOnlyObjectProperty<Cures> property() {
        return cures.getReadOnlyProperty();
    }

    /** Makes a cure, as one edit with its name; nothing if the document is no longer the same. */
    void make(Offer offer, Locale locale) {
        if (cures.get().areOf(bench.scenario())) {
            bench.edit(offer.fix().name(locale), same -> offer.result());
        }
    }

    private void seek(Scenario scenario) {
        if (scenario.equals(wanted)) {
            return;
        }
        wanted = scenario;
        offer(Cures.NONE);
        task.ask(() -> assess.apply(scenario).lookingAhead(), ahead -> {
            bench.foresee(scenario, ahead.cautions());
            task.ask(() -> Cures.of(ahead), this::offer);
        });
    }
}
