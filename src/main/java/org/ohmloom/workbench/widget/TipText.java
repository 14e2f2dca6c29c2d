package org.ohmloom.workbench.widget;

import java.util.List;
import java.util.stream.Collectors;

/** What the pointer tells, in several lines. */
public final class TipText {

    private TipText() {}

    /** The lines below one another. */
    public static String lines(List<String> lines) {
        return lines.stream()
                .map(line -> line.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;"))
                .collect(Collectors.joining("<br>", "<html>", "</html>"));
    }
}
