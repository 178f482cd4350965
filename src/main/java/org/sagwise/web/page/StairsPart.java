package org.sagwise.web.page;

import org.sagwise.web.engine.Pictures;

/** The climb and fall of potential along the way of the current. */
final class StairsPart implements PagePart {

    private static final double HEIGHT = 230;

    private final Tag room = Tag.byId("stairs");
    private double width;
    private View view;

    @Override
    public void lay(View shown) {
        if (view == null) {
            measure();
            Dom.onSize(room, time -> {
                if (measure()) {
                    show(view);
                }
            });
        }
        show(shown);
    }

    /** Not at every edit, since to ask how wide something is makes the browser lay out the page; whether it changed. */
    private boolean measure() {
        double before = width;
        width = Math.max(280, room.getClientWidth());
        return width != before;
    }

    @Override
    public void show(View shown) {
        view = shown;
        Painted.show(room, Pictures.stairs(view.now(), view.theme(), view.locale(), view.emphasis(), width, HEIGHT));
    }
}
