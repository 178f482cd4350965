package org.sagwise.ui.inspector;

import java.util.List;
import org.sagwise.part.key.Keys;

/** Where a row of a card takes its values from and puts them. */
interface Change {

    /** The keys as they are written now. */
    Keys keys();

    /**
     * Sets a key, if the rules have nothing against it.
     *
     * @return what is wrong with it, in sentences; empty if it is done
     */
    List<String> set(String name, Object value);

    /** Takes a key away, if the rules have nothing against it; answers as {@link #set}. */
    List<String> clear(String name);
}
