package org.sagwise.report.explain;

import org.sagwise.quantity.Unit;
import org.sagwise.scenario.Joint;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Note;
import org.sagwise.scenario.TerminalRef;

import java.util.List;
import java.util.Optional;

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
        return link.id()
                .flatMap(this::noteOn)
                .map(note -> joint + "; " + speech.say("part.note", note))
                .orElse(joint);
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

    private Optional<String> noteOn(String id) {
        return speech.scenario().notes().stream()
                .filter(note -> note.on().equals(id))
                .map(Note::text)
                .findFirst();
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

    /** A terminal as people say it: plus of cell A. */
    String terminal(TerminalRef terminal) {
        return speech.say("terminal." + key(terminal.terminal()), speech.name(terminal.part()));
    }

    private static String key(String terminal) {
        return terminal.replace("+", "plus").replace("-", "minus");
    }
}
