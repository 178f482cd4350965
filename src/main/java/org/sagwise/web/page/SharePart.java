package org.sagwise.web.page;

import org.sagwise.file.ShareText;

/** The bench as it is now, as a line of text to paste in a thread. */
final class SharePart implements PagePart {

    private final Tag field = Tag.byId("share-text");
    private final Tag said = Tag.byId("share-said");
    private View view;

    SharePart() {
        Tag.byId("copy").addEventListener("click", event -> copy());
    }

    @Override
    public void lay(View shown) {
        view = shown;
        field.setValue("");
        field.setHidden(true);
        said.setTextContent("");
    }

    @Override
    public void show(View shown) {
        view = shown;
    }

    private void copy() {
        ShareText.of(view.bench().scenario())
                .ifPresentOrElse(
                        text -> {
                            field.setHidden(false);
                            field.setValue(text);
                            Dom.select(field);
                            Dom.copy(text);
                            said.setTextContent(view.words().say("share.copied"));
                        },
                        () -> said.setTextContent(view.words().say("share.too-large")));
    }
}
