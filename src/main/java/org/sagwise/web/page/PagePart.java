package org.sagwise.web.page;

/** A part of the page that shows something of the bench. */
interface PagePart {

    /** The bench, or the language or the looks, is another one: says everything anew. */
    void lay(View view);

    /** The same bench at another moment. */
    void show(View view);
}
