package org.sagwise.ui.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import javafx.beans.property.SimpleIntegerProperty;
import org.junit.jupiter.api.Test;

class SubscriptionsTest {

    private final SimpleIntegerProperty value = new SimpleIntegerProperty(0);
    private final Subscriptions subscriptions = new Subscriptions();
    private int heard;

    @Test
    void onChange_valueNeverAskedFor_hearsEveryChange() {
        subscriptions.onChange(value, () -> heard++);
        value.set(1);
        value.set(2);

        assertEquals(2, heard);
    }

    @Test
    void watch_always_hearsThePresentValueFirst() {
        value.set(7);
        subscriptions.watch(value, now -> heard = now.intValue());

        assertEquals(7, heard);
    }

    @Test
    void close_always_hearsNoMore() {
        subscriptions.onChange(value, () -> heard++);
        subscriptions.watch(value, now -> heard++);
        subscriptions.close();
        heard = 0;
        value.set(3);

        assertEquals(0, heard);
    }
}
