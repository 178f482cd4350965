package org.sagwise.web.page;

import org.sagwise.web.engine.Pictures;

/** The climb and fall of potential along the way of the current. */
final class StairsPart implements PagePart {

    private static final double HEIGHT = 230;

    private final Tag room = Tag.byId("stairs");
    private double width;

    @Override
    public void lay(View view) {
        width = Math.max(280, room.getClientWidth());
        show(view);
    }

    @Override
    public void show(View view) {
        Painted.show(room, Pictures.stairs(view.now(), view.theme(), view.locale(), view.emphasis(), width, HEIGHT));
    }
}
