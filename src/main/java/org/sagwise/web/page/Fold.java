package org.sagwise.web.page;

/** Something of the page that is folded away until somebody opens it, and is said only then. */
final class Fold {

    private final Tag details;
    private final Runnable filling;
    private boolean isFilled;

    /**
     * @param around id of what the fold lies in
     * @param filling says what is in it
     */
    Fold(String around, Runnable filling) {
        this.details = Tag.byId(around).querySelector("details");
        this.filling = filling;
        details.addEventListener("toggle", event -> {
            if (!isFilled && details.isOpen()) {
                fill();
            }
        });
    }

    /** What is in it is no longer true: says it anew, at once if it is seen. */
    void lay() {
        isFilled = false;
        if (details.isOpen()) {
            fill();
        }
    }

    /** Whether what is in it has been said. */
    boolean isFilled() {
        return isFilled;
    }

    private void fill() {
        isFilled = true;
        filling.run();
    }
}
