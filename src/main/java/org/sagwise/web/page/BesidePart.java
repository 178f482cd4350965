package org.sagwise.web.page;

import java.util.Optional;
import org.sagwise.assessment.Assessment;
import org.sagwise.picture.layout.BenchLayout;
import org.sagwise.picture.scene.BenchView;
import org.sagwise.picture.scene.Emphasis;
import org.sagwise.scenario.Press;
import org.sagwise.scenario.Scenario;
import org.sagwise.web.engine.Pictures;
import org.sagwise.web.lesson.LessonRun;

/** The bench that a step shows beside the learner's own, under the same thumb. */
final class BesidePart {

    private static final double MOST_HEIGHT = 300;

    private final Tag room = Tag.byId("beside");

    void lay(View view) {
        Optional<Scenario> other = view.lesson()
                .filter(run -> !run.isOver())
                .map(LessonRun::player)
                .flatMap(now -> now.beside());
        Dom.clear(room);
        room.setHidden(other.isEmpty());
        other.ifPresent(it -> fill(it, view));
    }

    private void fill(Scenario other, View view) {
        Assessment plain = Assessment.of(other, view.bench().catalogue())
                .with(Press.of(view.bench().isHeld()));
        Assessment shown = view.isAsking() ? plain.veiled() : plain;
        double width = Math.max(280, room.getClientWidth());
        BenchLayout layout = Pictures.layout(shown, view.drawing(), width);
        double height = Pictures.height(layout, width, MOST_HEIGHT);
        room.appendChild(Dom.tag("p", "small", view.words().say("lesson.beside", other.title())));
        room.appendChild(Dom.svg(Pictures.bench(
                Pictures.scene(shown, layout, view.theme(), view.locale(), Emphasis.NONE, width),
                BenchView.fit(layout.bounds(), width, height))));
    }
}
