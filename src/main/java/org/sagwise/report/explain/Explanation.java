package org.sagwise.report.explain;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.sagwise.assessment.Assessment;
import org.sagwise.assessment.Moment;
import org.sagwise.assessment.fix.Cure;
import org.sagwise.hazard.Caution;
import org.sagwise.hazard.CautionTexts;
import org.sagwise.hazard.Hazards;
import org.sagwise.hazard.Notices;
import org.sagwise.report.health.HealthWords;
import org.sagwise.report.post.Block;
import org.sagwise.report.post.Block.Bullets;
import org.sagwise.report.post.Block.Heading;
import org.sagwise.report.post.Block.Paragraph;
import org.sagwise.report.symptom.Evidence;
import org.sagwise.run.RunResult;
import org.sagwise.run.UsualRun;
import org.sagwise.scenario.Part;
import org.sagwise.text.Signs;
import org.sagwise.text.Texts;
import org.sagwise.words.TradeWords;

/**
 * The explanation of a scenario for somebody who has never seen it, as blocks that any format can
 * hold. It speaks of the layout and never of whoever built it.
 */
public final class Explanation {

    private final Speech speech;
    private final Assessment assessment;
    private final Materials materials;
    private final Optional<RunResult> run;
    private final Optional<Life> life;
    private final List<Part> spent;
    private final List<Block> post = new ArrayList<>();

    private Explanation(Speech speech, Assessment assessment, Materials materials) {
        this.speech = speech;
        this.assessment = assessment;
        this.materials = materials;
        this.run = UsualRun.of(assessment.bench());
        this.life = Life.of(assessment, run);
        this.spent = Hazards.spentCells(assessment.scenario(), assessment.cautions());
    }

    /**
     * What an explanation is made with besides the assessment.
     *
     * @param shareText share text of the scenario; empty if it is too large for one
     * @param cure a better bench, if anybody knows one
     * @param cureShareText share text of the better bench
     * @param pictures pictures, for a format that can hold them
     * @param code the share text as a QR code, for a format that can hold it and where it fits
     * @param moment whose numbers are told
     * @param asked what somebody wrote that does not work
     * @param page where the bench's live page is, if there is one
     */
    public record Materials(
            Optional<String> shareText,
            Optional<Cure> cure,
            Optional<String> cureShareText,
            List<Block.Picture> pictures,
            Optional<Block.Picture> code,
            Moment moment,
            Optional<String> asked,
            Optional<String> page) {

        public Materials {
            pictures = List.copyOf(pictures);
        }

        /** Without a code, of the start. */
        public Materials(
                Assessment assessment,
                Optional<String> shareText,
                Optional<Cure> cure,
                Optional<String> cureShareText,
                List<Block.Picture> pictures) {
            this(
                    shareText,
                    cure,
                    cureShareText,
                    pictures,
                    Optional.empty(),
                    Moment.start(assessment),
                    Optional.empty(),
                    Optional.empty());
        }
    }

    /** The blocks of an explanation in a language. */
    public static List<Block> of(Assessment assessment, Materials materials, Locale locale, Signs signs) {
        Speech speech = Speech.of(assessment.scenario(), locale, signs);
        Explanation explanation = new Explanation(speech, assessment, materials);
        explanation.write();
        return List.copyOf(explanation.post);
    }

    /** The answer alone, in at most 150 words. */
    public static List<Block> brief(Assessment assessment, Materials materials, Locale locale, Signs signs) {
        Explanation explanation =
                new Explanation(Speech.of(assessment.scenario(), locale, signs), assessment, materials);
        List<Block> post = new ArrayList<>(explanation.answer(ExplainedPost.Size.SHORT));
        if (!materials.pictures().isEmpty()) {
            post.add(0, explanation.title());
            post.add(2, materials.pictures().get(0));
        }
        post.addAll(post.size() - 1, explanation.page());
        return List.copyOf(post);
    }

    private void write() {
        post.add(title());
        post.addAll(answer(ExplainedPost.Size.LONG));
        materials.pictures().stream().limit(1).forEach(post::add);
        built();
        wrong();
        post.add(heading("head.numbers"));
        if (!materials.moment().isStart()) {
            post.addAll(MomentWords.of(speech, materials.moment()));
        }
        post.addAll(NumberTables.of(speech, materials.moment()));
        health();
        life.ifPresent(this::life);
        todo();
        materials.cure().ifPresent(this::corrected);
        post.add(heading("head.model"));
        post.add(new Paragraph(speech.say("model")));
        post.add(new Block.Notice(Notices.export(speech.locale())));
        joints();
        share();
    }

    private Block title() {
        String title = assessment.scenario().title();
        return new Block.Title(title.isBlank() ? speech.say("untitled") : title);
    }

    private List<Block> answer(ExplainedPost.Size size) {
        return ShortAnswer.of(speech, Evidence.of(assessment, run), materials.cure(), life, materials.asked(), size);
    }

    /** Ohms beside what is usual, with a mark at what nobody measured. */
    private void health() {
        HealthWords words = new HealthWords(
                assessment.bench(), speech.locale(), speech.format().signs());
        if (!words.rows().isEmpty()) {
            post.add(new Heading(Texts.in("health", speech.locale()).say("title")));
            post.add(new Block.Table(words.heads(), words.rows()));
            words.marks().forEach(mark -> post.add(new Paragraph(mark)));
        }
    }

    private void joints() {
        List<String> joints = new JointWords(speech).all();
        if (!joints.isEmpty()) {
            post.add(heading("head.joints"));
            post.add(new Bullets(joints));
        }
    }

    private void built() {
        post.add(heading("head.built"));
        List<String> items = PartWords.of(speech, assessment.bench());
        if (items.isEmpty()) {
            post.add(new Paragraph(speech.say("built.nothing")));
        } else {
            post.add(new Bullets(items));
        }
        assumed();
    }

    /** What nobody said when the bench was made of a line of words. */
    private void assumed() {
        String all = TradeWords.assumed(
                        assessment.scenario(), assessment.bench().catalogue())
                .stream()
                .map(it -> it.text(speech.locale(), speech.format()))
                .collect(Collectors.joining(" "));
        if (!all.isEmpty()) {
            post.add(new Paragraph(speech.say("built.assumed", all)));
        }
    }

    private void wrong() {
        if (assessment.cautions().isEmpty()) {
            post.add(heading("head.fine"));
            post.add(new Paragraph(speech.say("fine")));
            return;
        }
        post.add(heading("head.wrong"));
        WhyWords why = new WhyWords(speech, assessment);
        Set<String> ideas = new LinkedHashSet<>();
        for (Caution caution : assessment.cautions()) {
            List<String> paragraphs = new ArrayList<>();
            if (speech.texts().has("idea." + caution.id()) && ideas.add(caution.id())) {
                paragraphs.add(speech.say("idea." + caution.id()));
            }
            paragraphs.add(CautionTexts.text(caution, speech.locale()));
            why.of(caution).ifPresent(paragraphs::add);
            if (caution.isOfAMoment() && ideas.add("of-a-moment")) {
                paragraphs.add(speech.say("wrong.of-a-moment"));
            }
            post.add(new Block.Hazard(
                    CautionTexts.signal(caution.signal(), speech.locale()),
                    CautionTexts.title(caution, speech.locale()),
                    paragraphs));
        }
    }

    private void life(Life told) {
        post.add(heading("head.life"));
        post.add(new Paragraph(told.sentence(speech)));
    }

    private void todo() {
        Set<String> advice = new LinkedHashSet<>();
        assessment.cautions().forEach(caution -> advice.add(CautionTexts.advice(caution, speech.locale())));
        if (!advice.isEmpty()) {
            post.add(heading("head.todo"));
            post.add(new Block.Steps(List.copyOf(advice)));
        }
    }

    private void corrected(Cure cure) {
        post.add(heading("head.corrected"));
        post.add(new Paragraph(speech.say("corrected")));
        post.add(new Block.Steps(cure.steps().stream()
                .map(fix -> speech.sentence(fix.name(speech.locale())))
                .toList()));
        otherCells().ifPresent(post::add);
        post.add(new Paragraph(speech.say("corrected.changes")));
        post.add(BeforeAfter.table(speech, assessment, cure.after(), life));
        post.add(new Paragraph(left(cure.after().cautions())));
        materials.pictures().stream().skip(1).forEach(post::add);
    }

    /** A corrected layout does not mend cells. */
    private Optional<Block> otherCells() {
        return spent.isEmpty()
                ? Optional.empty()
                : Optional.of(new Paragraph(speech.say("corrected.other-cells", speech.names(spent), spent.size())));
    }

    /** What a corrected bench still has; something grave is no correction at all. */
    private String left(List<Caution> cautions) {
        if (cautions.isEmpty()) {
            return speech.say("corrected.none-left");
        }
        String titles = String.join(
                "; ",
                cautions.stream()
                        .map(c -> CautionTexts.title(c, speech.locale()))
                        .toList());
        boolean grave = cautions.get(0).signal().isGrave();
        return speech.say(grave ? "corrected.not-enough" : "corrected.left", titles);
    }

    private void share() {
        if (materials.shareText().isEmpty() && materials.page().isEmpty()) {
            return;
        }
        post.add(heading("head.share"));
        post.addAll(page());
        if (materials.shareText().isEmpty()) {
            return;
        }
        post.add(new Paragraph(speech.say("share")));
        if (materials.cureShareText().isPresent()) {
            post.add(new Paragraph(speech.say("share.corrected")));
            post.add(new Block.Code(materials.cureShareText().get()));
            post.add(new Paragraph(speech.say("share.built")));
        }
        post.add(new Block.Code(materials.shareText().get()));
        materials.code().ifPresent(post::add);
    }

    /** The address stands apart as it is, since what stands in a sentence is made no link of. */
    private List<Block> page() {
        return materials
                .page()
                .<List<Block>>map(where -> List.of(new Paragraph(speech.say("share.page")), new Block.Code(where)))
                .orElse(List.of());
    }

    private Block heading(String key) {
        return new Heading(speech.say(key));
    }
}
