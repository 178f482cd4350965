package org.sagwise.web.page;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import org.sagwise.assessment.fix.Offer;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.ScenarioReader;
import org.sagwise.file.ShareText;
import org.sagwise.lesson.Lesson;
import org.sagwise.part.Catalogue;
import org.sagwise.picture.layout.Drawing;
import org.sagwise.picture.look.Theme;
import org.sagwise.run.RunState;
import org.sagwise.run.Work;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.edit.Edit;
import org.sagwise.web.engine.Answers;
import org.sagwise.web.engine.LiveBench;
import org.sagwise.web.engine.Words;
import org.sagwise.web.lesson.LessonRun;

/** A page with a bench on it, alone or with a lesson: what a reader does to it is done here, and all is shown anew. */
final class BenchPage implements Hand {

    private static final String DARK = "(prefers-color-scheme: dark)";
    private static final String CONTRAST = "(prefers-contrast: more)";
    private static final String FORCED = "(forced-colors: active)";

    private final PartsInTurn parts;
    private final BenchPart benchPart;
    private final CardPart cardPart = new CardPart(this);
    private final ComparePart comparePart = new ComparePart();
    private final Catalogue catalogue = CatalogueLoader.bare();
    private final Optional<LessonRun> lesson;
    private LiveBench bench;
    private Words words;
    private Theme theme = theme();
    private Drawing drawing = Drawing.BENCH;
    private View.Choice chosen = View.Choice.NOTHING;
    private boolean foreseeing = true;
    private boolean framing;
    private boolean printing;
    private boolean isAnother;

    private BenchPage(Scenario scenario, Optional<Lesson> played, Locale locale, boolean isAnother) {
        this.isAnother = isAnother;
        bench = open(scenario);
        words = Words.in(locale);
        EndsPart ends = new EndsPart(this);
        benchPart = new BenchPart(this, ends);
        lesson = played.map(it -> LessonPart.begin(it, bench, locale));
        List<PagePart> all = new ArrayList<>();
        all.add(new HeadPart(this, locale.getLanguage()));
        lesson.ifPresent(run -> all.add(new LessonPart(run, this)));
        // First what is touched, and then what explains it.
        all.addAll(List.of(
                new FirePart(this),
                ends,
                benchPart,
                cardPart,
                new StairsPart(),
                new CautionsPart(this),
                new NumbersPart(this),
                comparePart,
                new JointsPart(this),
                new ClockPart(this),
                new MeterPart(this),
                new SharePart()));
        parts = new PartsInTurn(all, this::view, this::foresee);
    }

    /**
     * Shows a bench.
     *
     * @param isAnother whether it is not the one that the page was written for
     */
    static void begin(Scenario scenario, Optional<Lesson> lesson, Locale locale, boolean isAnother) {
        BenchPage page = new BenchPage(scenario, lesson, locale, isAnother);
        page.listen();
        Dom.offer(page::answers);
        page.lay();
        Dom.state("live alive");
    }

    private LiveBench open(Scenario scenario) {
        return LiveBench.of(scenario, catalogue, () -> (long) (Dom.now() * 1e6));
    }

    private String answers(String json, boolean ahead) {
        return ScenarioReader.bare(catalogue)
                .read(json.getBytes(StandardCharsets.UTF_8))
                .scenario()
                .map(scenario -> Answers.of(scenario, catalogue, ahead))
                .orElse("");
    }

    private void listen() {
        for (String query : List.of(DARK, CONTRAST, FORCED)) {
            Dom.onChange(query, time -> change(() -> theme = theme()));
        }
        Dom.onWindow("beforeprint", event -> print(true));
        Dom.onWindow("afterprint", event -> print(false));
        Dom.onWindow("hashchange", event -> follow());
    }

    private static Theme theme() {
        if (Dom.matches(CONTRAST) || Dom.matches(FORCED)) {
            return Theme.HIGH_CONTRAST;
        }
        return Dom.matches(DARK) ? Theme.DARK : Theme.LIGHT;
    }

    /** Another bench came by the address. */
    private void follow() {
        if (lesson.isEmpty() && Arrival.isByAddress()) {
            Arrival.byAddress(words.locale())
                    .ifPresentOrElse(
                            scenario -> {
                                isAnother = true;
                                foreseeing = true;
                                change(() -> bench = open(scenario));
                            },
                            () -> Tag.byId("failed").scrollIntoView(Dom.nearest()));
        }
    }

    /** On paper stands what came, with all that explains it; or, once it is another bench, what the page shows of it. */
    private void print(boolean begins) {
        if (lesson.isEmpty() && printing != begins) {
            printing = begins;
            Dom.state(isAnother || !bench.isAsItCame() ? "live alive changed" : "live alive");
            if (begins) {
                Dom.eachFolded(tag -> tag.setAttribute("open", ""));
                Tag.byId("paper-share")
                        .setTextContent(ShareText.of(bench.scenario()).orElse(""));
            }
            tidy();
            parts.layAll();
            frame();
        }
    }

    private View view() {
        return new View(bench, words, printing ? Theme.LIGHT : theme, drawing, chosen, lesson);
    }

    /** Says everything anew: the bench and its button at once. */
    private void lay() {
        layTo(benchPart);
    }

    private void layTo(PagePart part) {
        tidy();
        parts.layTo(part);
        frame();
    }

    /** What may no longer be so, now that the bench is another one. */
    private void tidy() {
        lesson.ifPresent(LessonRun::look);
        if (bench.scenario().part(chosen.part()).isEmpty()) {
            chosen = View.Choice.NOTHING;
        }
    }

    private void show() {
        lesson.ifPresent(LessonRun::look);
        parts.show();
        frame();
    }

    /** Cautions that only time shows come last, so that the bench answers at once; then what may be asked next. */
    private void foresee() {
        LiveBench then = bench;
        Scenario of = bench.scenario();
        if (foreseeing) {
            foreseeing = false;
            Dom.later(
                    time -> {
                        if (then == bench && of == bench.scenario() && bench.isForeseen()) {
                            rehearse();
                        } else if (then == bench && of == bench.scenario()) {
                            int told = bench.shown().cautions().size();
                            Aside.begin(then.lookAhead(), () -> {
                                if (bench.shown().cautions().size() != told) {
                                    show();
                                } else {
                                    comparePart.show(view());
                                }
                                rehearse();
                            });
                        }
                    },
                    30);
        }
    }

    /** Works out what comes of turning each cell, so that the bench answers within a frame, the first time too. */
    private void rehearse() {
        Scenario of = bench.scenario();
        List<Runnable> deeds = new ArrayList<>();
        for (Scenario turned : bench.turned()) {
            deeds.add(() -> bench.learn(turned));
            deeds.add(() -> bench.learn(turned).ifPresent(it -> benchPart.layAhead(it, view())));
            deeds.add(() -> bench.learn(turned).ifPresent(it -> benchPart.paintAhead(it, view())));
        }
        Aside.begin(
                new Rehearsal(
                        deeds, () -> of == bench.scenario() && !bench.time().isGoing()),
                () -> {});
    }

    /** Goes on as long as something moves or time runs. */
    private void frame() {
        if (!framing) {
            framing = true;
            Dom.nextFrame(this::framed);
        }
    }

    private void framed(double timeMs) {
        framing = false;
        if (bench.time().isGoing()) {
            bench.time().tick();
            parts.show();
        }
        benchPart.frame(timeMs);
        if (bench.time().isGoing() || benchPart.isMoving()) {
            frame();
        }
    }

    // What a reader does.

    @Override
    public void hold(boolean down) {
        if (bench.isHeld() != down && !view().isAsking()) {
            bench.hold(down);
            show();
        }
    }

    @Override
    public void choose(View.Choice choice) {
        chosen = choice.equals(chosen) ? View.Choice.NOTHING : choice;
        layTo(cardPart);
        if (!chosen.part().isEmpty()) {
            Tag.byId("card-part").scrollIntoView(Dom.nearest());
            Tag.byId("card-title").focus();
        }
    }

    @Override
    public void draw(Drawing wanted) {
        drawing = wanted;
        lay();
    }

    @Override
    public void speakOther() {
        words = Words.in(words.locale().getLanguage().equals("de") ? Locale.ENGLISH : Locale.GERMAN);
        change(() -> lesson.ifPresent(run -> run.speak(words.locale())));
    }

    @Override
    public void relay() {
        lay();
    }

    @Override
    public void change(Runnable deed) {
        Scenario before = bench.scenario();
        deed.run();
        foreseeing |= !before.equals(bench.scenario());
        lay();
    }

    @Override
    public String edit(Edit edit) {
        List<Finding> against = bench.edit(edit, words.locale());
        if (against.isEmpty()) {
            foreseeing = true;
            lay();
            return "";
        }
        return against.get(0).sentence(words.locale());
    }

    @Override
    public void cure(Offer offer) {
        change(() -> bench.cure(offer, words.locale()));
    }

    @Override
    public Work runDown(Consumer<RunState> heard, Runnable ended) {
        Work work = bench.time().runDown(heard);
        Aside.begin(work, () -> {
            ended.run();
            show();
        });
        return work;
    }

    @Override
    public boolean hasTimePassed() {
        return bench.time().now().timeS() > 0;
    }

    @Override
    public void time(Runnable deed) {
        deed.run();
        show();
    }
}
