package org.sagwise.web.page;

import java.util.Locale;
import java.util.Optional;
import org.sagwise.picture.section.CellSection.Piece;
import org.sagwise.web.engine.Pictures;
import org.sagwise.web.engine.Words;

/** A round cell cut open, folded away on the card of a cell: its pieces by name, and what each is for. */
final class InsideTag {

    private final Tag picture = Dom.tag("div", "", "");
    private final Tag title = Dom.tag("h3", "", "");
    private final Tag text = Dom.tag("p", "", "");
    private final Tag source = Dom.tag("p", "small", "");
    private final View view;

    private InsideTag(View view) {
        this.view = view;
    }

    static Tag of(View view) {
        return new InsideTag(view).build();
    }

    private Tag build() {
        Words words = view.words();
        Tag fold = Dom.tag("details", "inside", "");
        fold.setId("inside");
        fold.appendChild(Dom.tag("summary", "", words.ui().say("inside.look")));
        Tag names = Dom.tag("p", "words", "");
        for (Piece piece : Piece.values()) {
            Tag name = Dom.button("link", piece.title(view.locale()), () -> point(piece));
            name.setId("inside-" + piece.name().toLowerCase(Locale.ROOT).replace('_', '-'));
            names.appendChild(name);
        }
        Tag said = Dom.tag("div", "", title, text, source);
        said.setAttribute("role", "status");
        Tag never = Dom.tag("p", "", words.ui().say("inside.never"));
        fold.appendChild(Dom.tag("div", "cut", picture, Dom.tag("div", "", names, said, never)));
        point(Piece.CAN);
        return fold;
    }

    private void point(Piece piece) {
        Dom.clear(picture);
        picture.appendChild(Dom.svg(Pictures.inside(view.theme(), Optional.of(piece))));
        title.setTextContent(piece.title(view.locale()));
        text.setTextContent(piece.purpose(view.locale()));
        source.setTextContent(view.words().ui().say("inside.source", piece.source(view.locale())));
    }
}
