package org.sagwise.part;

/** Anything that stands in the catalogue under an id. */
public interface CatalogueEntry {

    /** What the catalogue says about it in words. */
    Card card();

    /** Its id, unique within its kind. */
    default String id() {
        return card().id();
    }
}
