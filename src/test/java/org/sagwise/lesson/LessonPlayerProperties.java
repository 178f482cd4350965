package org.sagwise.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Size;
import org.sagwise.file.LessonLibrary;
import org.sagwise.part.PartKind;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;
import org.sagwise.scenario.edit.FlipParts;
import org.sagwise.scenario.edit.FreeParts;
import org.sagwise.scenario.edit.JoinTerminals;

/** Whatever a learner does, in whatever order, the lesson goes on to its end. */
class LessonPlayerProperties {

    @Property(tries = 60)
    void anyOrderOfDoings_neverWedgesALesson(@ForAll @Size(min = 1, max = 40) List<Integer> doings, @ForAll int which) {
        List<String> ids = LessonLibrary.ids();
        Lesson lesson = LessonFixture.builtIn(ids.get(Math.floorMod(which, ids.size())));
        LessonPlayer player = LessonPlayer.begin(lesson, LessonFixture.CATALOGUE, Locale.ENGLISH);

        for (int doing : doings) {
            player = act(player, Math.abs(doing % 1000));
            assertTrue(player.at() >= 0 && player.at() < lesson.steps().size());
            assertTrue(!player.say(player.step().head().text()).isBlank());
        }
        for (int i = 0; i < lesson.steps().size() && !player.isLast(); i++) {
            int before = player.at();
            player = player.skip();
            assertEquals(before + 1, player.at());
        }
        assertTrue(player.skip().mayGoOn());
        assertEquals(player.summary().size(), player.skip().summary().size());
    }

    private static LessonPlayer act(LessonPlayer player, int doing) {
        return switch (doing % 12) {
            case 0 -> player.next();
            case 1 -> player.back();
            case 2 -> player.skip();
            case 3 -> player.reset();
            case 4 -> player.showSolution();
            case 5 -> player.hint();
            case 6 -> doing % 24 == 6 ? player.choose(0) : player.choose(0).sure(Optional.of(Sureness.GUESS));
            case 7 -> player.type(doing / 10.0);
            case 8 -> player.jump(doing % player.lesson().steps().size());
            default -> player.edited(spoil(player.bench(), doing / 12));
        };
    }

    /** Cuts, joins and turns at random, also into shorts and reversed cells. */
    private static Scenario spoil(Scenario bench, int chance) {
        List<TerminalRef> terminals = new ArrayList<>();
        for (Part part : bench.parts()) {
            part.terminals().stream().filter(it -> !it.terminal().equals("can")).forEach(terminals::add);
        }
        TerminalRef one = terminals.get(chance % terminals.size());
        TerminalRef other = terminals.get((chance * 7 + 1) % terminals.size());
        return switch (chance % 4) {
            case 0 -> new FlipParts(Set.of(bench.partsOf(PartKind.CELL).get(0).id())).apply(bench);
            case 1 ->
                one.equals(other) ? bench : JoinTerminals.touch(one, other, 5).apply(bench);
            case 2 -> new FreeParts(Set.of(one.part())).apply(bench);
            default -> bench.fired() ? bench.released() : bench.pressed();
        };
    }
}
