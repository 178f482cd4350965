package org.sagwise.file;

/** Reads a text as a document: {@link JsonDocument}, {@link YamlDocument}, or {@link PlainJson} where there is no library. */
@FunctionalInterface
interface JsonText {

    Document read(String text);
}
