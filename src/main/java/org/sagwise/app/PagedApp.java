package org.sagwise.app;

import java.util.Locale;
import java.util.Optional;
import org.sagwise.cli.PageEngine;
import org.sagwise.scenario.Scenario;
import org.sagwise.ui.SagwiseApp;
import org.sagwise.ui.share.LivePages;
import org.sagwise.web.PageWriter;

/** The window, with what writes its live pages. Public since JavaFX makes it. */
public final class PagedApp extends SagwiseApp {

    @Override
    protected LivePages pages() {
        return new LivePages() {
            @Override
            public boolean isHere() {
                return PageEngine.isHere();
            }

            @Override
            public Optional<String> write(Scenario scenario, Locale locale) {
                return PageEngine.read().map(engine -> new PageWriter(engine, locale).write(scenario));
            }
        };
    }
}
