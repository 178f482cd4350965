package org.sagwise.web.page;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.sagwise.part.key.Keys;
import org.sagwise.quantity.Unit;
import org.sagwise.reading.LinkReading;
import org.sagwise.scenario.Joint;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Names;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.TerminalRef;
import org.sagwise.scenario.edit.CutLinks;
import org.sagwise.scenario.edit.JoinTerminals;
import org.sagwise.scenario.edit.JointChoice;
import org.sagwise.scenario.edit.SetLinkKeys;
import org.sagwise.web.engine.Words;

/** The joints: cut one, make one between two ends, change how good one is. */
final class JointsPart implements PagePart {

    /** Nobody scrolls through more. */
    private static final int MOST_ROWS = 60;

    private final Tag list = Tag.byId("joints");
    private final Tag from = Tag.byId("join-from");
    private final Tag to = Tag.byId("join-to");
    private final Tag how = Tag.byId("join-how");
    private final Tag answer = Tag.byId("join-answer");
    private final Hand hand;
    private final Fold fold = new Fold("joints-part", this::fill);
    private View view;

    JointsPart(Hand hand) {
        this.hand = hand;
        Tag.byId("join").addEventListener("click", event -> join());
    }

    @Override
    public void lay(View shown) {
        view = shown;
        fold.lay();
    }

    private void fill() {
        Dom.clear(list);
        List<Link> links = view.bench().scenario().links();
        for (int i = 0; i < Math.min(MOST_ROWS, links.size()); i++) {
            list.appendChild(row(i, links.get(i)));
        }
        ends(from);
        ends(to);
        String kind = how.getValue();
        Dom.clear(how);
        for (JointChoice choice : JointChoice.values()) {
            option(how, choice.name(), view.words().ui().say(said(choice)));
        }
        how.setValue(kind.isEmpty() ? JointChoice.CONTACT.name() : kind);
    }

    /** How the next joint is made. */
    static Keys chosen() {
        String kind = Tag.byId("join-how").getValue();
        return (kind.isEmpty() ? JointChoice.CONTACT : JointChoice.valueOf(kind)).joint();
    }

    private static String said(JointChoice choice) {
        return switch (choice) {
            case WIRE -> "joint.jumper";
            case CONTACT -> "joint.touch";
            case IDEAL -> "joint.ideal";
        };
    }

    @Override
    public void show(View shown) {
        view = shown;
        if (!fold.isFilled()) {
            return;
        }
        for (LinkReading link : shown.now().readings().links()) {
            Tag figure = Tag.byId("joint-" + link.index() + "-figure");
            if (figure != null) {
                figure.setTextContent(figure(link));
            }
        }
    }

    private String figure(LinkReading link) {
        Words words = view.words();
        return words.say(
                "joint.figure",
                words.quantity(Math.abs(link.currentA()), Unit.AMPERE),
                words.quantity(Math.abs(link.dropV()), Unit.VOLT));
    }

    private Tag row(int index, Link link) {
        Words words = view.words();
        String ends = words.ui().say("touch.ends", name(link.from()), name(link.to()));
        Tag figure =
                Dom.tag("span", "figure", figure(view.now().readings().links().get(index)));
        figure.setId("joint-" + index + "-figure");
        Tag cut = Dom.button("quiet", words.say("joint.cut"), () -> hand.edit(new CutLinks(Set.of(index))));
        cut.setId("cut-" + index);
        cut.setAttribute("aria-label", words.say("joint.cut.spoken", ends));
        Tag row = Dom.tag(
                "li",
                "",
                Dom.tag("span", "name", Names.capital(ends, view.locale())),
                Dom.tag("span", "kind", kind(link)),
                figure,
                cut);
        Joint joint = link.joint();
        if (joint instanceof Joint.Touch touch) {
            row.appendChild(new NumberRow(
                            words, "contact_mohm", "joint-" + index, words.ui().say("key.contact_mohm"))
                    .of(OptionalDouble.of(touch.mohm()), OptionalDouble.empty(), value -> contact(index, value)));
        } else if (joint instanceof Joint.Jumper) {
            jumper(row, index, link);
        }
        return row;
    }

    private void jumper(Tag row, int index, Link link) {
        Keys wire = link.keys().group("jumper").orElse(Keys.NONE);
        for (String key : List.of("awg", "length_mm")) {
            if (wire.has(key)) {
                row.appendChild(new NumberRow(
                                view.words(),
                                key,
                                "joint-" + index + "-" + key,
                                view.words().ui().say("key." + key))
                        .of(
                                wire.number(key),
                                OptionalDouble.empty(),
                                value -> value.isEmpty()
                                        ? ""
                                        : hand.edit(new SetLinkKeys(
                                                index,
                                                Keys.of("jumper", wire.with(key, whole(key, value.getAsDouble())))))));
            }
        }
    }

    private static double whole(String key, double value) {
        return key.equals("awg") ? Math.rint(value) : value;
    }

    private String contact(int index, OptionalDouble mohm) {
        return mohm.isEmpty() ? "" : hand.edit(new SetLinkKeys(index, Keys.of("contact_mohm", mohm.getAsDouble())));
    }

    private String kind(Link link) {
        Joint joint = link.joint();
        return view.words()
                .ui()
                .say(
                        joint instanceof Joint.Jumper
                                ? "joint.jumper"
                                : joint instanceof Joint.Touch ? "joint.touch" : "joint.ideal");
    }

    private String name(TerminalRef terminal) {
        return name(view, terminal);
    }

    private static String name(View shown, TerminalRef terminal) {
        return Names.in(shown.locale()).terminal(shown.bench().scenario(), terminal);
    }

    private void ends(Tag select) {
        String before = select.getValue();
        Dom.clear(select);
        ends(view, select);
        if (!before.isEmpty()) {
            select.setValue(before);
        }
    }

    /** Every terminal on the bench, to choose from. */
    static void ends(View shown, Tag select) {
        for (Part part : shown.bench().scenario().parts()) {
            for (TerminalRef terminal : part.terminals()) {
                option(select, terminal.toString(), Names.capital(name(shown, terminal), shown.locale()));
            }
        }
    }

    static void option(Tag select, String value, String text) {
        Tag option = Dom.tag("option", "", text);
        option.setAttribute("value", value);
        select.appendChild(option);
    }

    private void join() {
        TerminalRef one = TerminalRef.parse(from.getValue()).orElseThrow();
        TerminalRef other = TerminalRef.parse(to.getValue()).orElseThrow();
        answer.setTextContent(
                one.equals(other)
                        ? view.words().say("join.same")
                        : hand.edit(new JoinTerminals(List.of(one, other), chosen())));
    }
}
