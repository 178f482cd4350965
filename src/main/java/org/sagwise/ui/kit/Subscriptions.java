package org.sagwise.ui.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.beans.value.ObservableValue;
import javafx.util.Subscription;

/**
 * What a view listens to. Closed when the view is taken away, so that models, which live longer,
 * don't keep it alive.
 */
public final class Subscriptions implements AutoCloseable {

    private final List<Subscription> open = new ArrayList<>();

    /** Hears the present value now and every later one. */
    public <T> void watch(ObservableValue<T> value, Consumer<? super T> listener) {
        open.add(value.subscribe(listener::accept));
    }

    /**
     * Hears that a value changed; not about the present one. Every change is heard: a listener for
     * invalidations alone would hear of the next one only after somebody has asked for the value.
     */
    public void onChange(ObservableValue<?> value, Runnable listener) {
        open.add(value.subscribe((before, now) -> listener.run()));
    }

    /** Closes something else together with these. */
    public void add(Runnable onClose) {
        open.add(onClose::run);
    }

    @Override
    public void close() {
        open.forEach(Subscription::unsubscribe);
        open.clear();
    }
}
