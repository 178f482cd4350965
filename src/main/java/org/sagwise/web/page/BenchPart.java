package org.sagwise.web.page;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.sagwise.assessment.Assessment;
import org.sagwise.picture.bench.ChevronPainter;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.layout.BenchLayout;
import org.sagwise.picture.layout.KnownLayouts;
import org.sagwise.picture.layout.PartBox;
import org.sagwise.picture.scene.BenchScene;
import org.sagwise.picture.scene.BenchView;
import org.sagwise.reading.Readings;
import org.sagwise.web.engine.Pictures;

/** The bench itself: the picture, the marks of current that drift over it, and a button over each part. */
final class BenchPart implements PagePart {

    /** Height for a bench that is seen whole, CSS pixels; more of a large window. */
    private static final double USUAL_HEIGHT = 460;

    private static final double MOST_OF_WINDOW = 0.55;

    /** A finger needs this much, in CSS pixels. */
    private static final double LEAST_TOUCH = 44;

    private final Tag felt = Tag.byId("felt");
    private final Tag sheet = Tag.byId("sheet");
    private final Tag room = Tag.byId("bench");
    private final Tag zoom = Tag.byId("zoom");
    private final Tag touch = Tag.byId("touch");
    private final Tag canvas = Tag.byId("marks");
    private final MarksPen marks = new MarksPen(canvas);
    private final Hand hand;
    private final EndsPart ends;
    private final KnownLayouts layouts = new KnownLayouts();
    private final Map<String, Touched> touched = new LinkedHashMap<>();
    private BenchLayout layout;
    private BenchScene scene;
    private BenchView view;
    private ChevronPainter chevrons;
    private double lastMs;
    private boolean still;
    private double seen;
    private double mostHeight;
    private boolean isWhole;
    private Optional<Boolean> whole = Optional.empty();

    BenchPart(Hand hand, EndsPart ends) {
        this.hand = hand;
        this.ends = ends;
        measure();
        zoom.addEventListener("click", event -> {
            whole = Optional.of(!isWhole);
            hand.relay();
        });
        Dom.onSize(felt, time -> {
            if (measure()) {
                hand.relay();
            }
        });
    }

    @Override
    public void lay(View shown) {
        chevrons = null;
        layout = Pictures.layout(shown.now(), shown.drawing(), seen, layouts);
        scene = scene(shown);
        mostHeight = wholeHeight();
        BenchView all = window(scene, seen);
        // A lesson speaks of all that lies there, so that it is all seen at first.
        isWhole = whole.orElse(shown.lesson().isPresent() || !Pictures.isTooSmall(layout, all));
        boolean isLarge = offerZoom(shown, Pictures.isSmall(layout, all)) && !isWhole;
        double width = isLarge ? Math.max(seen, Pictures.readableWidth(layout)) : seen;
        if (view == null || view.width() != width) {
            Dom.style(sheet, "min-width", width + "px");
        }
        mostHeight = isLarge ? Math.max(mostHeight, Pictures.readableHeight(layout)) : mostHeight;
        view = isLarge ? window(scene, width) : all;
        size(canvas, (int) (width * Dom.pixelRatio()), (int) (view.height() * Dom.pixelRatio()));
        still = Dom.matches("(prefers-reduced-motion: reduce)");
        touchables(shown);
        paint();
        chevrons = new ChevronPainter(scene);
        stand();
    }

    /** A canvas that is given a size is made anew, even if it has it already. */
    private static void size(Tag canvas, int width, int height) {
        if (canvas.getWidth() != width || canvas.getHeight() != height) {
            canvas.setWidth(width);
            canvas.setHeight(height);
        }
    }

    /** Lays another bench out before somebody asks for it. */
    BenchLayout layAhead(Assessment other, View shown) {
        return Pictures.layout(other, shown.drawing(), seen, layouts);
    }

    /** Paints another bench for nobody: so the browser learns how. */
    void paintAhead(Assessment other, View shown) {
        BenchScene its =
                Pictures.scene(other, layAhead(other, shown), shown.theme(), shown.locale(), shown.emphasis(), seen);
        Pictures.bench(its, window(its, view.width()));
    }

    /** A large bench is seen whole, its words small; or larger, and then it is moved about. */
    private boolean offerZoom(View shown, boolean isSmall) {
        if (isSmall) {
            zoom.setTextContent(shown.words().say(isWhole ? "zoom.in" : "zoom.out"));
        }
        if (zoom.isHidden() == isSmall) {
            zoom.setHidden(!isSmall);
        }
        return isSmall;
    }

    private BenchView window(BenchScene shown, double width) {
        return Pictures.view(shown, width, Pictures.height(shown.layout(), width, mostHeight));
    }

    private static double wholeHeight() {
        return Math.max(USUAL_HEIGHT, MOST_OF_WINDOW * Dom.windowHeight());
    }

    /** Asks the page how much of the bench is seen, which makes it lay itself out; whether that has changed. */
    boolean measure() {
        double before = seen;
        seen = Math.max(280, felt.getClientWidth());
        return seen != before;
    }

    private BenchScene scene(View shown) {
        return Pictures.scene(shown.now(), layout, shown.theme(), shown.locale(), shown.emphasis(), seen);
    }

    /** A button over a part, with what was said of it. */
    private record Touched(Tag button, Box place, String label, boolean isChosen) {}

    private void touchables(View shown) {
        List<String> ids = layout.parts().stream().map(PartBox::id).toList();
        if (ends.isOn() || !List.copyOf(touched.keySet()).equals(ids)) {
            String focused = Dom.focused();
            Dom.clear(touch);
            touched.clear();
            if (ends.isOn()) {
                ends.place(touch, layout, view, shown);
            } else {
                layout.parts().forEach(box -> part(box, shown));
            }
            boolean again = focused.startsWith("part-") || EndsPart.isEnd(focused);
            if (again && Tag.byId(focused) != null) {
                Tag.byId(focused).focus();
            }
        } else {
            layout.parts().forEach(box -> part(box, shown));
        }
    }

    /** Says of a button only what it does not say yet: the browser lays out anew whatever is touched. */
    private void part(PartBox box, View shown) {
        Touched before = touched.get(box.id());
        Tag button = before == null ? button(box.id()) : before.button;
        Box place = place(box);
        if (before == null || !before.place.equals(place)) {
            Dom.place(button, place.x(), place.y(), place.width(), place.height());
        }
        String label = shown.words().say("part.open", shown.facts().called(box.part()));
        if (before == null || !before.label.equals(label)) {
            button.setAttribute("aria-label", label);
        }
        boolean isChosen = shown.chosen().part().equals(box.id());
        if (before == null || before.isChosen != isChosen) {
            button.setAttribute("aria-pressed", String.valueOf(isChosen));
        }
        touched.put(box.id(), new Touched(button, place, label, isChosen));
    }

    private Tag button(String id) {
        Tag button = Dom.button("part", "", () -> hand.choose(View.Choice.of(id)));
        button.setId("part-" + id);
        touch.appendChild(button);
        return button;
    }

    private Box place(PartBox box) {
        Box body = view.toWindow(box.body().box());
        double width = Math.max(LEAST_TOUCH, body.width());
        double height = Math.max(LEAST_TOUCH, body.height());
        return new Box(body.middleX() - width / 2, body.middleY() - height / 2, width, height);
    }

    @Override
    public void show(View shown) {
        scene = scene(shown);
        paint();
        stand();
    }

    private void paint() {
        Painted.show(room, Pictures.bench(scene, view));
    }

    /** Where nothing may move the marks are drawn once. */
    private void stand() {
        if (still && chevrons != null) {
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
