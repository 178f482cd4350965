package org.sagwise.web.page;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import org.sagwise.assessment.fix.Offer;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.LessonBundle;
import org.sagwise.file.LessonReader;
import org.sagwise.file.LessonReading;
import org.sagwise.file.Loaded;
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

/** What runs in the browser: reads the scenario that the page holds and shows the bench to whoever opens it. */
public final class LivePage implements Hand {

    private static final String DARK = "(prefers-color-scheme: dark)";
    private static final String CONTRAST = "(prefers-contrast: more)";

    /** Above this a deed would take longer than anybody waits. */
    private static final int MOST_PARTS = 300;

    private static final int MOST_FINDINGS = 5;

    /** So long a part of the page may keep the next one waiting for the next frame, ms. */
    private static final double SLICE_MS = 8;

    /** In the order in which they are laid: first what is touched, and then what explains it. */
    private final List<PagePart> parts;

    private final BenchPart benchPart;
    private final CardPart cardPart = new CardPart(this);
    private final Catalogue catalogue = CatalogueLoader.bare();
    private LiveBench bench;
    private Words words;
    private Theme theme = theme();
    private Drawing drawing = Drawing.BENCH;
    private View.Choice chosen = View.Choice.NOTHING;
    private int laid;
    private boolean layingOn;
    private boolean foreseeing;
    private Locale spoken;
    private boolean framing;
    private boolean printing;
    private boolean isAnother;
    private final Optional<LessonRun> lesson;

    private LivePage(Scenario scenario, Optional<Lesson> played, Locale locale, boolean isAnother) {
        this.isAnother = isAnother;
        bench = open(scenario);
        words = Words.in(locale);
        spoken = locale;
        EndsPart ends = new EndsPart(this);
        benchPart = new BenchPart(this, ends);
        lesson = played.map(it -> LessonPart.begin(it, bench, locale));
        parts = new ArrayList<>(List.of(
                new FirePart(this),
                ends,
                benchPart,
                cardPart,
                new StairsPart(),
                new CautionsPart(this),
                new NumbersPart(this),
                new JointsPart(this),
                new ClockPart(this),
                new MeterPart(this),
                new SharePart()));
        lesson.ifPresent(run -> parts.add(0, new LessonPart(run, this)));
    }

    /** Started by the page's script, when the page has been read. */
    public static void main(String[] args) {
        Locale locale = Dom.language().equals("de") ? Locale.GERMAN : Locale.ENGLISH;
        String form = Dom.textOf("check-form");
        if (!form.isEmpty()) {
            CheckPage.begin(form, locale);
            return;
        }
        String bundle = Dom.textOf("lesson-data");
        if (!bundle.isEmpty()) {
            begin(bundle, locale);
            return;
        }
        ScenarioReader reader = ScenarioReader.bare(CatalogueLoader.bare());
        String shared = Dom.fragment();
        Loaded loaded = ShareText.isIn(shared)
                ? ShareText.read(shared, reader)
                : reader.read(Dom.textOf("scenario").getBytes(StandardCharsets.UTF_8));
        List<String> against = against(loaded, locale);
        if (against.isEmpty()) {
            new LivePage(loaded.scenario().orElseThrow(), Optional.empty(), locale, ShareText.isIn(shared)).begin();
        } else {
            refuse(against);
            Dom.state("");
        }
    }

    private static void begin(String bundle, Locale locale) {
        LessonReading reading = LessonBundle.read(bundle)
                .map(LessonReader.bare(CatalogueLoader.bare())::read)
                .orElseThrow();
        if (reading.lesson().isPresent()) {
            Lesson lesson = reading.lesson().get();
            Scenario first = lesson.benches().get(lesson.first()).scenario();
            new LivePage(first, Optional.of(lesson), locale, false).begin();
        } else {
            refuse(sentences(reading.faults(), locale));
            Dom.state("");
        }
    }

    private static List<String> sentences(List<Finding> findings, Locale locale) {
        return findings.stream()
                .limit(MOST_FINDINGS)
                .map(finding -> finding.text(locale))
                .toList();
    }

    /** Why a bench cannot be shown here; empty if it can. */
    private static List<String> against(Loaded loaded, Locale locale) {
        int parts = loaded.scenario().map(it -> it.parts().size()).orElse(0);
        if (parts > MOST_PARTS) {
            return List.of(Words.in(locale).say("too-many", parts));
        }
        return loaded.scenario().isPresent() ? List.of() : sentences(loaded.findings(), locale);
    }

    private static void refuse(List<String> against) {
        Tag failed = Tag.byId("failed");
        Dom.clear(failed);
        against.forEach(sentence -> failed.appendChild(Dom.tag("p", "answer", sentence)));
        failed.setHidden(against.isEmpty());
    }

    private LiveBench open(Scenario scenario) {
        return LiveBench.of(scenario, catalogue, () -> (long) (Dom.now() * 1e6));
    }

    private void begin() {
        commands();
        Dom.offer(this::answers);
        foreseeing = true;
        lay();
        Dom.state("live alive");
    }

    private String answers(String json, boolean ahead) {
        return ScenarioReader.bare(catalogue)
                .read(json.getBytes(StandardCharsets.UTF_8))
                .scenario()
                .map(scenario -> Answers.of(scenario, catalogue, ahead))
                .orElse("");
    }

    @Override
    public void relay() {
        lay();
    }

    private void commands() {
        click("undo", () -> change(bench::undo));
        click("redo", () -> change(bench::redo));
        click("came", () -> change(() -> bench.asItCame(words.say("came"))));
        click("language", () -> change(this::speakOther));
        click("as-bench", () -> change(() -> drawing = Drawing.BENCH));
        click("as-schematic", () -> change(() -> drawing = Drawing.SCHEMATIC));
        click("print", Dom::print);
        for (String query : List.of(DARK, CONTRAST, "(forced-colors: active)")) {
            Dom.onChange(query, time -> change(() -> theme = theme()));
        }
        Dom.onWindow("beforeprint", event -> print(true));
        Dom.onWindow("afterprint", event -> print(false));
        Dom.onWindow("hashchange", event -> follow());
        Dom.onDocument("keydown", this::shortcut);
    }

    private static void click(String id, Runnable deed) {
        Tag.byId(id).addEventListener("click", event -> deed.run());
    }

    private void shortcut(Tag.Happening event) {
        boolean command = event.isCtrlKey() || event.isMetaKey();
        boolean field = event.getTarget().getTagName().equals("INPUT")
                || event.getTarget().getTagName().equals("TEXTAREA");
        if (command && !field && event.getKey().equals("z")) {
            event.preventDefault();
            change(event.isShiftKey() ? bench::redo : bench::undo);
        } else if (command && !field && event.getKey().equals("y")) {
            event.preventDefault();
            change(bench::redo);
        } else if (event.getKey().equals("Escape") && !chosen.equals(View.Choice.NOTHING)) {
            choose(View.Choice.NOTHING);
        }
    }

    /** Another bench came by the address. */
    private void follow() {
        if (lesson.isPresent() || !ShareText.isIn(Dom.fragment())) {
            return;
        }
        Loaded loaded = ShareText.read(Dom.fragment(), ScenarioReader.bare(catalogue));
        List<String> against = against(loaded, words.locale());
        refuse(against);
        if (against.isEmpty()) {
            isAnother = true;
            foreseeing = true;
            change(() -> bench = open(loaded.scenario().orElseThrow()));
        } else {
            Tag.byId("failed").scrollIntoView(Dom.nearest());
        }
    }

    private void speakOther() {
        words = Words.in(other());
        lesson.ifPresent(run -> run.speak(words.locale()));
    }

    private Locale other() {
        return words.locale().getLanguage().equals("de") ? Locale.ENGLISH : Locale.GERMAN;
    }

    private static Theme theme() {
        if (Dom.matches(CONTRAST) || Dom.matches("(forced-colors: active)")) {
            return Theme.HIGH_CONTRAST;
        }
        return Dom.matches(DARK) ? Theme.DARK : Theme.LIGHT;
    }

    private View view() {
        return new View(bench, words, printing ? Theme.LIGHT : theme, drawing, chosen, lesson);
    }

    @Override
    public void change(Runnable deed) {
        Scenario before = bench.scenario();
        deed.run();
        foreseeing |= !before.equals(bench.scenario());
        lay();
    }

    /** Cautions that only time shows come last, so that the bench answers at once. */
    private void foresee() {
        LiveBench then = bench;
        Scenario of = bench.scenario();
        if (foreseeing) {
            foreseeing = false;
            Dom.later(
                    time -> {
                        if (then == bench && of == bench.scenario()) {
                            Aside.begin(then.lookAhead(), this::show);
                        }
                    },
                    30);
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
            lay(parts.size());
        }
    }

    /** Says everything anew: the bench and its button at once, the rest as soon as those have been drawn. */
    private void lay() {
        lay(parts.indexOf(benchPart) + 1);
    }

    /** Lays the first few parts of the page at once. */
    private void lay(int first) {
        laid = first;
        lesson.ifPresent(LessonRun::look);
        if (bench.scenario().part(chosen.part()).isEmpty()) {
            chosen = View.Choice.NOTHING;
        }
        if (!words.locale().equals(spoken)) {
            spoken = words.locale();
            Dom.speak(spoken.getLanguage());
            Dom.eachSaid(tag -> tag.setTextContent(words.say(tag.getAttribute("data-say"))));
        }
        String title = lesson.map(run -> run.player().lesson().title().in(words.locale()))
                .orElse(
                        bench.scenario().title().isBlank()
                                ? words.say("untitled")
                                : bench.scenario().title());
        if (!title.equals(Tag.byId("title").getTextContent())) {
            Tag.byId("title").setTextContent(title);
            Dom.title(title);
        }
        name("undo", bench.undoable());
        name("redo", bench.redoable());
        Tag.byId("came").setDisabled(bench.isAsItCame());
        Tag.byId("as-bench").setAttribute("aria-pressed", String.valueOf(drawing == Drawing.BENCH));
        Tag.byId("as-schematic").setAttribute("aria-pressed", String.valueOf(drawing == Drawing.SCHEMATIC));
        View view = view();
        laidParts().forEach(part -> part.lay(view));
        frame();
        if (!layingOn) {
            layingOn = true;
            Dom.busy(true);
            Dom.onceDrawn(time -> layOn());
        }
    }

    /** Lays those parts that are not laid yet, some at a time, so that bench and button answer in between. */
    private void layOn() {
        View view = view();
        double endMs = Dom.now() + SLICE_MS;
        while (laid < parts.size() && Dom.now() < endMs) {
            parts.get(laid).lay(view);
            laid++;
        }
        if (laid < parts.size()) {
            Dom.later(time -> layOn(), 0);
        } else {
            layingOn = false;
            Dom.busy(false);
            foresee();
        }
    }

    private void name(String id, Optional<String> edit) {
        Tag button = Tag.byId(id);
        button.setDisabled(edit.isEmpty());
        String name = edit.map(it -> words.say(id + ".named", it)).orElse(words.say(id));
        button.setAttribute("aria-label", name);
        button.setAttribute("title", name);
    }

    private void show() {
        lesson.ifPresent(LessonRun::look);
        View view = view();
        laidParts().forEach(part -> part.show(view));
        frame();
    }

    private List<PagePart> laidParts() {
        return parts.subList(0, laid);
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
        if (bench.isGoing()) {
            bench.tick();
            View view = view();
            laidParts().forEach(part -> part.show(view));
        }
        benchPart.frame(timeMs);
        if (bench.isGoing() || benchPart.isMoving()) {
            frame();
        }
    }

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
        lay(parts.indexOf(cardPart) + 1);
        if (!chosen.part().isEmpty()) {
            Tag.byId("card-part").scrollIntoView(Dom.nearest());
            Tag.byId("card-title").focus();
        }
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
        Work work = bench.runDown(heard);
        Aside.begin(work, () -> {
            ended.run();
            show();
        });
        return work;
    }

    @Override
    public boolean hasTimePassed() {
        return bench.now().timeS() > 0;
    }

    @Override
    public void time(Runnable deed) {
        deed.run();
        show();
    }
}
