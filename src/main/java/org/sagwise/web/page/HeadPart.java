package org.sagwise.web.page;

import java.util.Optional;
import org.sagwise.picture.layout.Drawing;
import org.sagwise.scenario.Scenario;
import org.sagwise.web.engine.Words;

/** The head of the page: what lies there, back and forth, how it is drawn, in which language; and their keys. */
final class HeadPart implements PagePart {

    private final Hand hand;
    private String spoken;
    private View view;

    /**
     * @param spoken language of the page as it was written
     */
    HeadPart(Hand hand, String spoken) {
        this.hand = hand;
        this.spoken = spoken;
        click("undo", this::undo);
        click("redo", this::redo);
        click("came", () -> hand.change(() -> view.bench().asItCame(view.words().say("came"))));
        click("language", hand::speakOther);
        click("as-bench", () -> hand.draw(Drawing.BENCH));
        click("as-schematic", () -> hand.draw(Drawing.SCHEMATIC));
        click("print", Dom::print);
        Dom.onDocument("keydown", this::shortcut);
    }

    private static void click(String id, Runnable deed) {
        Tag.byId(id).addEventListener("click", event -> deed.run());
    }

    private void undo() {
        hand.change(() -> view.bench().undo());
    }

    private void redo() {
        hand.change(() -> view.bench().redo());
    }

    private void shortcut(Tag.Happening event) {
        boolean command = event.isCtrlKey() || event.isMetaKey();
        boolean field = event.getTarget().getTagName().equals("INPUT")
                || event.getTarget().getTagName().equals("TEXTAREA");
        if (command && !field && event.getKey().equals("z")) {
            event.preventDefault();
            if (event.isShiftKey()) {
                redo();
            } else {
                undo();
            }
        } else if (command && !field && event.getKey().equals("y")) {
            event.preventDefault();
            redo();
        } else if (event.getKey().equals("Escape") && !view.chosen().equals(View.Choice.NOTHING)) {
            hand.choose(View.Choice.NOTHING);
        }
    }

    @Override
    public void lay(View shown) {
        view = shown;
        Words words = shown.words();
        if (!words.locale().getLanguage().equals(spoken)) {
            spoken = words.locale().getLanguage();
            Dom.speak(spoken);
            Dom.eachSaid(tag -> tag.setTextContent(words.say(tag.getAttribute("data-say"))));
        }
        String title = shown.lesson()
                .map(run -> run.player().lesson().title().in(words.locale()))
                .orElseGet(() -> title(shown.bench().scenario(), words));
        if (!title.equals(Tag.byId("title").getTextContent())) {
            Tag.byId("title").setTextContent(title);
            Dom.title(title);
        }
        name("undo", shown.bench().undoable());
        name("redo", shown.bench().redoable());
        Tag.byId("came").setDisabled(shown.bench().isAsItCame());
        press("as-bench", shown.drawing() == Drawing.BENCH);
        press("as-schematic", shown.drawing() == Drawing.SCHEMATIC);
    }

    private static String title(Scenario scenario, Words words) {
        return scenario.title().isBlank() ? words.say("untitled") : scenario.title();
    }

    private static void press(String id, boolean on) {
        Tag.byId(id).setAttribute("aria-pressed", String.valueOf(on));
    }

    private void name(String id, Optional<String> edit) {
        Tag button = Tag.byId(id);
        button.setDisabled(edit.isEmpty());
        Words words = view.words();
        String name = edit.map(it -> words.say(id + ".named", it)).orElse(words.say(id));
        button.setAttribute("aria-label", name);
        button.setAttribute("title", name);
    }

    @Override
    public void show(View shown) {
        view = shown;
    }
}
