package org.sagwise.web.page;

import org.teavm.jso.JSBody;

/** A picture that is painted again and again in the same place. */
final class Painted {

    private Painted() {}

    /**
     * Puts a picture into an element as a text of SVG, an element of it a line, and leaves what stands there in the
     * same words already: to read and lay out a whole picture takes a browser longer than to paint it. What is known
     * of the elements stays in a property of the one around them.
     */
    @JSBody(
            params = {"room", "text"},
            script = """
                    var lines = text.split('\\n'), at = 0, space = 'http://www.w3.org/2000/svg';
                    var turn = /^<g transform="([^"]*)">$/;
                    function read() {
                        var found = [];
                        while (at < lines.length) {
                            var from = at, line = lines[at++];
                            if (line === '</g>' || line === '</svg>') { break; }
                            if (line === '') { continue; }
                            var item = { head: line, whole: line, inside: null, tag: null, used: false };
                            if (line.indexOf('<g') === 0 || line.indexOf('<svg') === 0) {
                                item.inside = read();
                                item.whole = lines.slice(from, at).join('');
                            }
                            found.push(item);
                        }
                        return found;
                    }
                    function own(items, tags) {
                        items.forEach(function (item, i) {
                            item.tag = tags[i];
                            if (item.inside) { own(item.inside, item.tag.children); }
                        });
                    }
                    function take(item, old) { old.used = true; item.tag = old.tag; }
                    function patch(tag, before, after) {
                        var same = new Map();
                        before.forEach(function (old) {
                            var alike = same.get(old.whole);
                            if (alike) { alike.push(old); } else { same.set(old.whole, [old]); }
                        });
                        after.forEach(function (item) {
                            var alike = same.get(item.whole);
                            if (alike && alike.length) {
                                var old = alike.shift();
                                take(item, old);
                                item.inside = old.inside;
                            }
                        });
                        var groups = before.filter(function (old) { return !old.used && turn.test(old.head); });
                        after.forEach(function (item) {
                            if (!item.tag && groups.length && turn.test(item.head)) {
                                var old = groups.shift();
                                take(item, old);
                                if (old.head !== item.head) {
                                    item.tag.setAttribute('transform', turn.exec(item.head)[1]);
                                }
                                patch(item.tag, old.inside, item.inside);
                            }
                        });
                        var fresh = after.filter(function (item) { return !item.tag; });
                        if (fresh.length) {
                            var box = document.createElementNS(space, 'svg');
                            box.innerHTML = fresh.map(function (item) { return item.whole; }).join('');
                            own(fresh, Array.from(box.children));
                        }
                        before.forEach(function (old) { if (!old.used) { old.tag.remove(); } });
                        var next = tag.firstChild;
                        after.forEach(function (item) {
                            if (item.tag === next) { next = next.nextSibling; }
                            else { tag.insertBefore(item.tag, next); }
                        });
                    }
                    var picture = read()[0], shown = room.shown;
                    if (shown && shown.head === picture.head) {
                        patch(shown.tag, shown.inside, picture.inside);
                        picture.tag = shown.tag;
                    } else {
                        room.innerHTML = picture.whole;
                        own([picture], room.children);
                    }
                    room.shown = picture;
                    """)
    static native void show(Tag room, String text);
}
