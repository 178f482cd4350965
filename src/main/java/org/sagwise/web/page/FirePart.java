package org.sagwise.web.page;

import org.sagwise.hazard.Signal;

/** The button under the thumb, and what it brings: watts, and what is lost on the way. */
final class FirePart implements PagePart {

    private final Tag button = Tag.byId("fire");
    private final Tag keep = Tag.byId("keep");
    private final Tag bar = Tag.byId("fire-bar");
    private final Tag watts = Tag.byId("watts");
    private final Tag way = Tag.byId("way");
    private final Hand hand;
    private boolean pointed;
    private boolean spaced;

    FirePart(Hand hand) {
        this.hand = hand;
        button.addEventListener("pointerdown", this::down);
        button.addEventListener("pointerup", event -> up());
        button.addEventListener("pointercancel", event -> up());
        button.addEventListener("lostpointercapture", event -> up());
        button.addEventListener("contextmenu", Tag.Happening::preventDefault);
        button.addEventListener("keydown", event -> {
            if (event.getKey().equals("Enter") && !event.isRepeat()) {
                event.preventDefault();
                spaced = true;
                turn();
            }
        });
        button.addEventListener("keyup", event -> letGo(event, "Enter"));
        keep.addEventListener("change", event -> turn());
        Dom.onDocument("keydown", event -> {
            if (event.getKey().equals(" ") && !isTyping(event.getTarget())) {
                event.preventDefault();
                spaced = true;
                turn();
            }
        });
        Dom.onDocument("keyup", event -> letGo(event, " "));
        Dom.onWindow("blur", event -> {
            spaced = false;
            up();
        });
    }

    private void down(Tag.Happening event) {
        if (event.getButton() == 0) {
            button.setPointerCapture(event.getPointerId());
            pointed = true;
            turn();
        }
    }

    private void up() {
        pointed = false;
        turn();
    }

    private void letGo(Tag.Happening event, String key) {
        if (event.getKey().equals(key)) {
            spaced = false;
            turn();
        }
    }

    /** The space bar belongs to fields, and to buttons and boxes that have the focus, but for the fire button. */
    private static boolean isTyping(Tag target) {
        return switch (target.getTagName()) {
            case "INPUT", "SELECT", "TEXTAREA", "SUMMARY" -> true;
            case "BUTTON" -> !target.getId().equals("fire") && !target.getId().startsWith("part-");
            default -> false;
        };
    }

    private void turn() {
        hand.hold(pointed || spaced || keep.isChecked());
    }

    @Override
    public void lay(View view) {
        boolean there = view.bench().hasButton();
        button.setHidden(!there);
        Tag.byId("keep-label").setHidden(!there);
        button.setDisabled(view.isAsking());
        keep.setDisabled(view.isAsking());
        if (!pointed && !spaced) {
            // Another bench may lie there now, its button as it says.
            keep.setChecked(view.bench().isHeld());
        }
        show(view);
    }

    @Override
    public void show(View view) {
        boolean held = view.bench().isHeld();
        button.setAttribute("aria-pressed", String.valueOf(held));
        button.setTextContent(view.words().say(view.isAsking() ? "fire.asked" : held ? "fire.held" : "fire"));
        boolean grave = view.now().cautions().stream().anyMatch(it -> it.signal() == Signal.DANGER);
        bar.setClassName(grave ? "grave" : "");
        watts.setTextContent(view.facts().watts());
        String said = view.facts().way();
        way.setTextContent(
                view.isAsking()
                        ? view.words().say("way.asked")
                        : view.bench().hasButton() ? said : view.words().say("way.no-button", said));
    }
}
