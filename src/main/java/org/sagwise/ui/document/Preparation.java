package org.sagwise.ui.document;

import org.sagwise.scenario.Scenario;

/** Makes ready what a bench needs before it can be shown. */
@FunctionalInterface
public interface Preparation {

    /**
     * Makes ready to show a scenario. Nothing comes of it if another is asked for meanwhile.
     *
     * @param then what to do, at once where nothing takes long; else later, in front
     */
    void whenReady(Scenario scenario, Runnable then);
}
