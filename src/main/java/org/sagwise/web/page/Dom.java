package org.sagwise.web.page;

import org.teavm.jso.JSBody;
import org.teavm.jso.JSFunctor;
import org.teavm.jso.JSObject;

/** The browser around the page: the few calls that the page makes of it. None of them asks anything of a network. */
final class Dom {

    private Dom() {}

    /** Something to be done later. */
    @JSFunctor
    interface Later extends JSObject {
        void run(double timeMs);
    }

    /** What the engine says about a bench, see {@link org.sagwise.web.engine.Answers}. */
    @JSFunctor
    interface Answering extends JSObject {
        String answer(String json, boolean ahead);
    }

    /** Lets who tests a page, or is curious, ask its engine: {@code sagwise.answers(scenario, false)}. */
    @JSBody(params = "answering", script = "window.sagwise = { answers: answering };")
    static native void offer(Answering answering);

    /** An element with a class and a text. */
    static Tag tag(String name, String className, String text) {
        Tag tag = create(name);
        if (!className.isEmpty()) {
            tag.setClassName(className);
        }
        if (!text.isEmpty()) {
            tag.setTextContent(text);
        }
        return tag;
    }

    /** An element around others. */
    static Tag tag(String name, String className, Tag... children) {
        Tag tag = tag(name, className, "");
        for (Tag child : children) {
            tag.appendChild(child);
        }
        return tag;
    }

    /** A button that does something. */
    static Tag button(String className, String text, Runnable deed) {
        Tag button = tag("button", className, text);
        button.setAttribute("type", "button");
        button.addEventListener("click", event -> deed.run());
        return button;
    }

    /** Puts an element to a place of what it lies in, CSS pixels. */
    @JSBody(
            params = {"tag", "left", "top", "width", "height"},
            script = "var style = tag.style; style.left = left + 'px'; style.top = top + 'px';"
                    + "style.width = width + 'px'; style.height = height + 'px';")
    static native void place(Tag tag, double left, double top, double width, double height);

    @JSBody(params = "name", script = "return document.createElement(name);")
    private static native Tag create(String name);

    @JSBody(params = "tag", script = "tag.replaceChildren();")
    static native void clear(Tag tag);

    /** A picture from its SVG text, which our own pen wrote with every text escaped. */
    @JSBody(
            params = "text",
            script = "var room = document.createElement('div'); room.innerHTML = text; return room.firstChild;")
    static native Tag svg(String text);

    @JSBody(params = "id", script = "var tag = document.getElementById(id); return tag ? tag.textContent : '';")
    static native String textOf(String id);

    @JSBody(params = "deed", script = "requestAnimationFrame(deed);")
    static native void nextFrame(Later deed);

    /** As soon as the page has been drawn and nobody is waiting. */
    @JSBody(
            params = {"deed", "ms"},
            script = "setTimeout(deed, ms);")
    static native void later(Later deed, int ms);

    @JSBody(script = "return performance.now();")
    static native double now();

    /** As soon as what has changed has been drawn; at once where nobody sees it. */
    @JSBody(
            params = "deed",
            script = "var soon = function () { setTimeout(deed, 0); };"
                    + "if (document.hidden) { soon(); } else { requestAnimationFrame(soon); }")
    static native void onceDrawn(Later deed);

    /** Whether something is still to be said anew: who reads the page aloud, or tests it, waits for that. */
    @JSBody(params = "on", script = "document.querySelector('main').setAttribute('aria-busy', on);")
    static native void busy(boolean on);

    /** Done when an element is given another size, once the page has laid itself out. */
    @JSBody(
            params = {"tag", "deed"},
            script = "new ResizeObserver(function () { deed(0); }).observe(tag);")
    static native void onSize(Tag tag, Later deed);

    @JSBody(params = "query", script = "return window.matchMedia(query).matches;")
    static native boolean matches(String query);

    @JSBody(
            params = {"query", "deed"},
            script = "window.matchMedia(query).addEventListener('change', function() { deed(0); });")
    static native void onChange(String query, Later deed);

    @JSBody(
            params = {"event", "deed"},
            script = "document.addEventListener(event, deed);")
    static native void onDocument(String event, Tag.Deed deed);

    @JSBody(
            params = {"event", "deed"},
            script = "window.addEventListener(event, deed);")
    static native void onWindow(String event, Tag.Deed deed);

    @JSBody(params = "language", script = "document.documentElement.lang = language;")
    static native void speak(String language);

    @JSBody(params = "title", script = "document.title = title;")
    static native void title(String title);

    @JSBody(params = "state", script = "document.documentElement.className = state;")
    static native void state(String state);

    @JSBody(script = "return document.documentElement.lang;")
    static native String language();

    /** How far to scroll: no farther than needed. */
    @JSBody(script = "return { block: 'nearest' };")
    static native JSObject nearest();

    @JSBody(script = "return location.hash;")
    static native String fragment();

    @JSBody(script = "return window.innerHeight;")
    static native double windowHeight();

    @JSBody(script = "return window.devicePixelRatio || 1;")
    static native double pixelRatio();

    /** Whether it was put on the clipboard cannot be waited for; the text stands selected beside, too. */
    @JSBody(params = "text", script = "if (navigator.clipboard) { navigator.clipboard.writeText(text); }")
    static native void copy(String text);

    @JSBody(params = "field", script = "field.focus(); field.select();")
    static native void select(Tag field);

    /** Hands a text to the browser as a file to keep. */
    @JSBody(
            params = {"name", "text"},
            script = "var link = document.createElement('a');"
                    + "link.href = URL.createObjectURL(new Blob([text], { type: 'text/plain' }));"
                    + "link.download = name; document.body.appendChild(link); link.click(); link.remove();"
                    + "setTimeout(function() { URL.revokeObjectURL(link.href); }, 1000);")
    static native void save(String name, String text);

    @JSBody(script = "return Math.random();")
    static native double random();

    @JSBody(
            params = {"name", "on"},
            script = "document.body.classList.toggle(name, on);")
    static native void bodyClass(String name, boolean on);

    /** Opens what is folded in a part of the page, and goes there. */
    @JSBody(
            params = "id",
            script = "var part = document.getElementById(id); var fold = part.querySelector('details');"
                    + "if (fold) { fold.open = true; fold.querySelector('summary').focus({ preventScroll: true }); }"
                    + "part.scrollIntoView();")
    static native void unfold(String id);

    @JSBody(script = "window.scrollTo(0, 0);")
    static native void toTop();

    /** Gives the focus without moving the page. */
    @JSBody(params = "tag", script = "if (tag) { tag.focus({ preventScroll: true }); }")
    static native void focusStill(Tag tag);

    @JSBody(script = "window.print();")
    static native void print();

    @JSBody(script = "return document.activeElement && document.activeElement.id || '';")
    static native String focused();

    @JSBody(
            params = {"key", "value"},
            script = "document.body.style.setProperty(key, value);")
    static native void style(String key, String value);

    @JSBody(
            params = {"tag", "key", "value"},
            script = "tag.style.setProperty(key, value);")
    static native void style(Tag tag, String key, String value);

    @JSBody(params = "deed", script = "document.querySelectorAll('[data-say]').forEach(deed);")
    static native void eachSaid(Each deed);

    @JSBody(params = "deed", script = "document.querySelectorAll('#live details').forEach(deed);")
    static native void eachFolded(Each deed);

    /** Done to each of several elements. */
    @JSFunctor
    interface Each extends JSObject {
        void take(Tag tag);
    }
}
