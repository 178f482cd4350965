package org.sagwise.web.page;

import org.sagwise.picture.bench.ChevronPainter;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.layout.BenchLayout;
import org.sagwise.picture.layout.PartBox;
import org.sagwise.picture.scene.BenchScene;
import org.sagwise.picture.scene.BenchView;
import org.sagwise.reading.Readings;
import org.sagwise.web.engine.Pictures;

/** The bench itself: the picture, the marks of current that drift over it, and a button over each part. */
final class BenchPart implements PagePart {

    private static final double MOST_HEIGHT = 460;

    /** A finger needs this much, in CSS pixels. */
    private static final double LEAST_TOUCH = 44;

    private final Tag room = Tag.byId("bench");
    private final Tag touch = Tag.byId("touch");
    private final Tag canvas = Tag.byId("marks");
    private final MarksPen marks = new MarksPen(canvas);
    private final Hand hand;
    private final EndsPart ends;
    private Tag picture;
    private BenchLayout layout;
    private BenchScene scene;
    private BenchView view;
    private ChevronPainter chevrons;
    private double lastMs;
    private boolean still;
    private double width;

    BenchPart(Hand hand, EndsPart ends) {
        this.hand = hand;
        this.ends = ends;
        measure();
        Dom.onSize(room, time -> {
            if (measure()) {
                hand.relay();
            }
        });
    }

    @Override
    public void lay(View shown) {
        layout = Pictures.layout(shown.now(), shown.drawing(), width);
        double height = Pictures.height(layout, width, MOST_HEIGHT);
        view = BenchView.fit(layout.bounds(), width, height);
        scene = scene(shown);
        chevrons = new ChevronPainter(scene);
        size(canvas, (int) (width * Dom.pixelRatio()), (int) (height * Dom.pixelRatio()));
        still = Dom.matches("(prefers-reduced-motion: reduce)");
        touchables(shown);
        show(shown);
    }

    /** A canvas that is given a size is made anew, even if it has it already. */
    private static void size(Tag canvas, int width, int height) {
        if (canvas.getWidth() != width || canvas.getHeight() != height) {
            canvas.setWidth(width);
            canvas.setHeight(height);
        }
    }

    /** Asks the page how wide the bench may be, which makes it lay itself out; whether that has changed. */
    boolean measure() {
        double before = width;
        width = Math.max(280, room.getClientWidth());
        return width != before;
    }

    private BenchScene scene(View shown) {
        return Pictures.scene(shown.now(), layout, shown.theme(), shown.locale(), shown.emphasis(), view.width());
    }

    private void touchables(View shown) {
        String focused = Dom.focused();
        Dom.clear(touch);
        if (ends.isOn()) {
            ends.place(touch, layout, view, shown);
        } else {
            parts(shown);
        }
        boolean again = focused.startsWith("part-") || EndsPart.isEnd(focused);
        if (again && Tag.byId(focused) != null) {
            Tag.byId(focused).focus();
        }
    }

    private void parts(View shown) {
        for (PartBox box : layout.parts()) {
            Box place = view.toWindow(box.body().box());
            double width = Math.max(LEAST_TOUCH, place.width());
            double height = Math.max(LEAST_TOUCH, place.height());
            Tag button = Dom.button("part", "", () -> hand.choose(View.Choice.of(box.id())));
            button.setId("part-" + box.id());
            Dom.place(button, place.middleX() - width / 2, place.middleY() - height / 2, width, height);
            button.setAttribute(
                    "aria-label", shown.words().say("part.open", shown.facts().called(box.part())));
            button.setAttribute(
                    "aria-pressed", String.valueOf(shown.chosen().part().equals(box.id())));
            touch.appendChild(button);
        }
    }

    @Override
    public void show(View shown) {
        scene = scene(shown);
        Tag next = Dom.svg(Pictures.bench(scene, view));
        if (picture == null) {
            Dom.clear(room);
            room.appendChild(next);
        } else {
            picture.replaceWith(next);
        }
        picture = next;
        if (still) {
            drift(0);
        }
    }

    /** Lets the marks drift on to this moment; called once a frame. */
    void frame(double timeMs) {
        double seconds = Math.min(0.1, Math.max(0, (timeMs - lastMs) / 1000));
        lastMs = timeMs;
        if (!still && chevrons != null) {
            drift(seconds);
        }
    }

    private void drift(double seconds) {
        Readings readings = scene.readings();
        marks.begin(Dom.pixelRatio(), view.width(), view.height());
        if (chevrons.isMoving(readings)) {
            chevrons.advance(readings, seconds);
            chevrons.paint(marks, scene, view);
        }
    }

    /** Whether anything moves. */
    boolean isMoving() {
        return !still && chevrons != null && chevrons.isMoving(scene.readings());
    }
}
