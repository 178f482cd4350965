package org.sagwise.web.lesson;

import java.util.Optional;

/** Keeps texts by name on the reader's own machine, or for this visit alone where that is refused. */
public interface Keeper {

    Optional<String> kept(String name);

    void keep(String name, String text);
}
