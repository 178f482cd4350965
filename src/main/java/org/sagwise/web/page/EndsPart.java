package org.sagwise.web.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.sagwise.picture.geometry.Point;
import org.sagwise.picture.layout.BenchLayout;
import org.sagwise.picture.layout.TerminalPoint;
import org.sagwise.picture.scene.BenchView;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Names;
import org.sagwise.scenario.TerminalRef;
import org.sagwise.scenario.edit.CutLinks;
import org.sagwise.scenario.edit.JoinTerminals;

/** Joining and cutting on the bench itself: one end is touched, then another, and what is between them is made or cut. */
final class EndsPart implements PagePart {

    private static final String ID = "end-";

    /** As large as a finger wants it, where ends are far enough apart; never smaller than can be hit, in CSS pixels. */
    private static final double MOST = 44;

    private static final double LEAST = 24;

    private final Tag button = Tag.byId("joining");
    private final Tag hint = Tag.byId("hint");
    private final Tag said = Tag.byId("joining-said");
    private final Hand hand;
    private final List<Tag> ends = new ArrayList<>();
    private boolean on;
    private Optional<TerminalRef> first = Optional.empty();
    private View view;

    EndsPart(Hand hand) {
        this.hand = hand;
        button.addEventListener("click", event -> {
            on = !on;
            first = Optional.empty();
            hand.relay();
            say(on ? "ends.first" : "");
        });
    }

    @Override
    public void lay(View shown) {
        view = shown;
        button.setAttribute("aria-pressed", String.valueOf(on));
        hint.setHidden(on);
        said.setHidden(!on);
        if (first.filter(end -> shown.bench().scenario().part(end.part()).isEmpty())
                .isPresent()) {
            first = Optional.empty();
        }
    }

    @Override
    public void show(View shown) {
        view = shown;
    }

    boolean isOn() {
        return on;
    }

    /** Whether it is one of the buttons that are made here. */
    static boolean isEnd(String id) {
        return id.startsWith(ID);
    }

    /** A button on every end of every part, none over another. */
    void place(Tag touch, BenchLayout layout, BenchView window, View shown) {
        view = shown;
        ends.clear();
        List<TerminalPoint> all =
                layout.parts().stream().flatMap(box -> box.terminals().stream()).toList();
        List<Point> places =
                all.stream().map(it -> window.toWindow(it.x(), it.y())).toList();
        for (int i = 0; i < all.size(); i++) {
            TerminalRef end = all.get(i).ref();
            Point at = places.get(i);
            double size = Math.max(LEAST, Math.min(MOST, nearest(places, i)));
            Tag touched = Dom.button("end", "", () -> touch(end));
            touched.setId(ID + end);
            Dom.place(touched, at.x() - size / 2, at.y() - size / 2, size, size);
            touched.setAttribute("aria-label", name(end));
            touched.setAttribute("aria-pressed", String.valueOf(isFirst(end)));
            touch.appendChild(touched);
            ends.add(touched);
        }
    }

    private static double nearest(List<Point> places, int one) {
        double nearest = MOST;
        for (int i = 0; i < places.size(); i++) {
            if (i != one) {
                Point a = places.get(one);
                Point b = places.get(i);
                nearest = Math.min(nearest, Math.max(Math.abs(a.x() - b.x()), Math.abs(a.y() - b.y())));
            }
        }
        return nearest;
    }

    private boolean isFirst(TerminalRef end) {
        return first.filter(end::equals).isPresent();
    }

    private void touch(TerminalRef end) {
        if (first.isEmpty()) {
            first = Optional.of(end);
            say("ends.second", name(end));
        } else if (isFirst(end)) {
            first = Optional.empty();
            say("ends.first");
        } else {
            between(first.get(), end);
        }
        ends.forEach(each -> each.setAttribute(
                "aria-pressed",
                String.valueOf(
                        first.map(it -> ID + it).filter(each.getId()::equals).isPresent())));
    }

    private void between(TerminalRef one, TerminalRef other) {
        Set<Integer> joints = joints(one, other);
        first = Optional.empty();
        String names = Names.capital(view.words().ui().say("touch.ends", name(one), name(other)), view.locale());
        String refused = hand.edit(
                joints.isEmpty() ? new JoinTerminals(List.of(one, other), JointsPart.chosen()) : new CutLinks(joints));
        if (refused.isEmpty()) {
            say(joints.isEmpty() ? "ends.joined" : "ends.cut", names);
        } else {
            said.setTextContent(refused);
        }
    }

    private Set<Integer> joints(TerminalRef one, TerminalRef other) {
        List<Link> links = view.bench().scenario().links();
        Set<Integer> joints = new TreeSet<>();
        for (int i = 0; i < links.size(); i++) {
            Set<TerminalRef> its = Set.of(links.get(i).from(), links.get(i).to());
            if (its.contains(one) && its.contains(other)) {
                joints.add(i);
            }
        }
        return joints;
    }

    private String name(TerminalRef end) {
        return Names.capital(Names.in(view.locale()).terminal(view.bench().scenario(), end), view.locale());
    }

    private void say(String key, String... words) {
        said.setTextContent(key.isEmpty() ? "" : view.words().say(key, (Object[]) words));
    }
}
