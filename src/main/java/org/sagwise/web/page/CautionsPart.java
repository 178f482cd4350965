package org.sagwise.web.page;

import java.util.List;
import java.util.Locale;
import org.sagwise.assessment.fix.Offer;
import org.sagwise.hazard.Caution;
import org.sagwise.hazard.CautionNumbers;
import org.sagwise.hazard.CautionTexts;
import org.sagwise.web.engine.Words;

/** What a competent person would say about the bench, the gravest first, each with cures that were tried. */
final class CautionsPart implements PagePart {

    private final Tag list = Tag.byId("cautions");
    private final Tag verdict = Tag.byId("verdict");
    private final Hand hand;
    private List<Caution> shown;

    CautionsPart(Hand hand) {
        this.hand = hand;
    }

    @Override
    public void lay(View view) {
        shown = null;
        show(view);
    }

    @Override
    public void show(View view) {
        List<Caution> cautions = view.now().cautions();
        if (view.isAsking()) {
            Dom.clear(list);
            verdict.setTextContent("");
            return;
        }
        if (cautions.equals(shown)) {
            return;
        }
        shown = cautions;
        Words words = view.words();
        Dom.clear(list);
        for (Caution caution : cautions) {
            list.appendChild(card(caution, view));
        }
        verdict.setTextContent(
                cautions.isEmpty()
                        ? words.say("verdict.none")
                        : words.say(
                                "verdict.some",
                                CautionTexts.signal(cautions.get(0).signal(), words.locale()),
                                CautionTexts.title(cautions.get(0), words.locale()),
                                cautions.size() - 1));
        verdict.setClassName(cautions.isEmpty() ? "none" : signal(cautions.get(0)));
    }

    private Tag card(Caution caution, View view) {
        Words words = view.words();
        Locale locale = words.locale();
        Tag card = Dom.tag(
                "article",
                "caution " + signal(caution),
                Dom.tag(
                        "h3",
                        "",
                        Dom.tag("span", "signal", CautionTexts.signal(caution.signal(), locale)),
                        Dom.tag("span", "title", CautionTexts.title(caution, locale))));
        card.setId("caution-" + caution.id());
        CautionNumbers.of(caution, words.numbers())
                .map(numbers -> numbers.limit()
                        .map(limit -> words.ui().say("caution.against", numbers.measured(), limit))
                        .orElse(numbers.measured()))
                .ifPresent(text -> card.appendChild(Dom.tag("p", "against", text)));
        card.appendChild(Dom.tag("p", "", CautionTexts.text(caution, locale)));
        card.appendChild(Dom.tag("p", "advice", words.ui().say("caution.do", CautionTexts.advice(caution, locale))));
        Tag deeds = Dom.tag("div", "deeds", "");
        for (Offer offer : view.bench().cures(caution)) {
            deeds.appendChild(Dom.button("cure", words.say("cure", offer.fix().name(locale)), () -> hand.cure(offer)));
        }
        caution.parts().stream()
                .filter(part -> view.bench().scenario().part(part).isPresent())
                .findFirst()
                .ifPresent(part -> deeds.appendChild(
                        Dom.button("quiet", words.ui().say("caution.show"), () -> hand.choose(View.Choice.of(part)))));
        card.appendChild(deeds);
        return card;
    }

    private static String signal(Caution caution) {
        return caution.signal().name().toLowerCase(Locale.ROOT);
    }
}
