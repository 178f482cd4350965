package org.sagwise.report.post;

import java.util.ArrayList;
import java.util.List;

/**
 * The bracket tags that most forums know: bold, list and code, and no others. They have no common
 * way to escape a bracket, so brackets from a file become round.
 */
final class Bbcode implements MarkedPost.Markup {

    @Override
    public String inert(String plain) {
        return plain.replace('[', '(').replace(']', ')');
    }

    @Override
    public String title(String inert) {
        return strong(inert);
    }

    @Override
    public String heading(String inert) {
        return strong(inert);
    }

    @Override
    public String notice(String inert) {
        return "[i]" + inert + "[/i]";
    }

    @Override
    public String strong(String inert) {
        return "[b]" + inert + "[/b]";
    }

    @Override
    public List<String> bullets(List<String> inert) {
        return list("[list]", inert);
    }

    @Override
    public List<String> steps(List<String> inert) {
        return list("[list=1]", inert);
    }

    private static List<String> list(String tag, List<String> items) {
        return between(tag, items.stream().map(item -> "[*]" + item).toList(), "[/list]");
    }

    @Override
    public List<String> code(List<String> lines) {
        return between("[code]", lines.stream().map(this::inert).toList(), "[/code]");
    }

    private static List<String> between(String first, List<String> lines, String last) {
        List<String> all = new ArrayList<>(lines);
        all.add(0, first);
        all.add(last);
        return all;
    }
}
