package org.sagwise.web.page;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.sagwise.web.lesson.Keeper;
import org.teavm.jso.JSBody;

/** What the browser keeps for this page's site; where it refuses to, everything works for as long as the page is open. */
final class Store implements Keeper {

    private final Map<String, String> here = new HashMap<>();

    @Override
    public Optional<String> kept(String name) {
        return Optional.ofNullable(here.get(name)).or(() -> Optional.ofNullable(get(name)));
    }

    @Override
    public void keep(String name, String text) {
        here.put(name, text);
        put(name, text);
    }

    /** Whether it will still be there tomorrow. */
    @JSBody(
            script = "try { localStorage.setItem('sagwise.try', '1'); localStorage.removeItem('sagwise.try');"
                    + " return true; } catch (refused) { return false; }")
    static native boolean isLasting();

    @JSBody(params = "name", script = "try { return localStorage.getItem(name); } catch (refused) { return null; }")
    private static native String get(String name);

    @JSBody(
            params = {"name", "text"},
            script = "try { localStorage.setItem(name, text); } catch (refused) { }")
    private static native void put(String name, String text);
}
