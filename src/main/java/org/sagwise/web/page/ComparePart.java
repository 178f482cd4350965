package org.sagwise.web.page;

import java.util.List;
import java.util.Optional;
import org.sagwise.hazard.Caution;
import org.sagwise.lesson.LessonPlayer;
import org.sagwise.report.compare.ComparisonPost;
import org.sagwise.report.post.Block;
import org.sagwise.scenario.Scenario;
import org.sagwise.text.Signs;
import org.sagwise.web.engine.Words;
import org.sagwise.web.lesson.LessonRun;

/** The bench as it came and as it is now, number by number; where a lesson has another beside it, that one and this. */
final class ComparePart implements PagePart {

    private final Tag room = Tag.byId("compare");
    private final Fold fold = new Fold("compare-part", this::fill);
    private View view;
    private List<Caution> told = List.of();
    private boolean isForeseen;

    @Override
    public void lay(View shown) {
        view = shown;
        told = shown.now().cautions();
        isForeseen = shown.bench().isForeseen();
        fold.lay();
    }

    /** Time changes nothing here, but for cautions that only come once somebody has looked ahead. */
    @Override
    public void show(View shown) {
        view = shown;
        if (isForeseen != shown.bench().isForeseen() || !shown.now().cautions().equals(told)) {
            lay(shown);
        }
    }

    private void fill() {
        Words words = view.words();
        Dom.clear(room);
        if (view.isAsking()) {
            return;
        }
        Optional<Scenario> other = view.lesson()
                .filter(run -> !run.isOver())
                .map(LessonRun::player)
                .flatMap(LessonPlayer::beside);
        if (other.isPresent()) {
            say("p", "", words.say("compare.beside", other.get().title()));
        }
        Optional<List<Block>> blocks = other.isPresent()
                ? other.map(it -> ComparisonPost.differences(view.bench().against(it), view.locale(), Signs.PRINT))
                : view.bench().changes().map(it -> ComparisonPost.changes(it, view.locale(), Signs.PRINT));
        blocks.ifPresentOrElse(
                it -> {
                    it.forEach(this::add);
                    say("p", "small", words.say("compare.fresh"));
                },
                () -> say("p", "", words.say("compare.none")));
    }

    private void say(String name, String className, String text) {
        room.appendChild(Dom.tag(name, className, text));
    }

    private void add(Block block) {
        if (block instanceof Block.Heading heading) {
            say("h3", "", heading.text());
        } else if (block instanceof Block.Paragraph paragraph) {
            say("p", "", paragraph.text());
        } else if (block instanceof Block.Bullets bullets) {
            Tag list = Dom.tag("ul", "bullets", "");
            bullets.items().forEach(item -> list.appendChild(Dom.tag("li", "", item)));
            room.appendChild(list);
        } else if (block instanceof Block.Table table) {
            add(table);
        }
    }

    /** What differs stands first, what does not is folded away. */
    private void add(Block.Table table) {
        List<List<String>> alike = table.rows().stream()
                .filter(row -> row.get(1).equals(row.get(2)))
                .toList();
        List<List<String>> apart =
                table.rows().stream().filter(row -> !alike.contains(row)).toList();
        if (!apart.isEmpty()) {
            room.appendChild(tag(table.heads(), apart));
        }
        if (!alike.isEmpty()) {
            room.appendChild(Dom.tag(
                    "details",
                    "",
                    Dom.tag("summary", "", view.words().say("compare.alike", alike.size())),
                    tag(table.heads(), alike)));
        }
    }

    private Tag tag(List<String> heads, List<List<String>> rows) {
        Tag body = Dom.tag("tbody", "", "");
        rows.forEach(row -> body.appendChild(row(row, "td")));
        return Dom.tag("table", "compare", Dom.tag("thead", "", row(heads, "th")), body);
    }

    private static Tag row(List<String> texts, String cell) {
        boolean isHead = cell.equals("th");
        Tag first = Dom.tag(texts.get(0).isEmpty() ? "td" : "th", "", texts.get(0));
        if (!texts.get(0).isEmpty()) {
            first.setAttribute("scope", "row");
        }
        Tag row = Dom.tag("tr", "", first);
        for (String text : texts.subList(1, texts.size())) {
            Tag tag = Dom.tag(cell, "number", text);
            if (isHead) {
                tag.setAttribute("scope", "col");
            }
            row.appendChild(tag);
        }
        return row;
    }
}
