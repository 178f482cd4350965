package org.sagwise.report.explain;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.sagwise.quantity.Unit;
import org.sagwise.scenario.Joint;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Names;
import org.sagwise.scenario.TerminalRef;

/** The joints of a bench in words. */
final class JointWords {

    private final Speech speech;

    JointWords(Speech speech) {
        this.speech = speech;
    }

    List<String> all() {
        return speech.scenario().links().stream().map(this::sentence).toList();
    }

    String sentence(Link link) {
        String joint = speech.sentence(words(link, terminal(link.from()), terminal(link.to())));
        return joint
                + link.id().stream()
                        .flatMap(this::notesOn)
                        .map(note -> "; " + speech.say("part.note", note))
                        .collect(Collectors.joining());
    }

    private String words(Link link, String from, String to) {
        if (link.joint() instanceof Joint.Touch touch) {
            return speech.say("joint.touch", from, to, speech.milliohms(touch.mohm()));
        }
        if (link.joint() instanceof Joint.Jumper jumper) {
            return speech.say(
                    jumper.contactsMohm() > 0 ? "joint.wire-contacts" : "joint.wire",
                    from,
                    to,
                    width(jumper.width()),
                    speech.millimetres(jumper.lengthMm()),
                    speech.milliohms(jumper.contactsMohm()));
        }
        return speech.say("joint.ideal", from, to);
    }

    private Stream<String> notesOn(String id) {
        return speech.scenario().notes().stream()
                .filter(note -> note.on().equals(id))
                .map(speech::note);
    }

    /** A wire's size as people say it. */
    String width(Joint.Width width) {
        if (width instanceof Joint.Awg awg) {
            return speech.say("wire.awg", String.valueOf(awg.number()));
        }
        return width instanceof Joint.DiameterMm diameter
                ? speech.say("wire.diameter", speech.millimetres(diameter.mm()))
                : speech.print(width.size().areaM2(), Unit.SQUARE_METRE);
    }

    /** A terminal as people say it: cell A's plus. */
    String terminal(TerminalRef terminal) {
        return Names.in(speech.locale()).terminal(speech.scenario(), terminal);
    }
}
