package org.sagwise.file;

/** Reads JSON as a document: {@link JsonDocument}, or {@link PlainJson} where there is no Jackson. */
@FunctionalInterface
interface JsonText {

    Document read(String text);
}
