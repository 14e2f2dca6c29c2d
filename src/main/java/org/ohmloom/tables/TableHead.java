package org.ohmloom.tables;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ohmloom.words.Refusals;

/** Reads the comment head of a table file: lines of {@code # key: text} before the header line. */
final class TableHead {
    /** Keys every table file must have. */
    static final List<String> REQUIRED = List.of("source", "edition", "table", "status", "units");

    private final String fileName;
    private final Map<String, String> texts = new LinkedHashMap<>();
    private final Map<String, Integer> lines = new LinkedHashMap<>();
    private int length;

    private TableHead(String fileName) {
        this.fileName = fileName;
    }

    static TableHead read(String fileName, List<String> fileLines) {
        TableHead head = new TableHead(fileName);
        while (head.length < fileLines.size() && fileLines.get(head.length).startsWith("#")) {
            head.length++;
            head.accept(fileLines.get(head.length - 1).substring(1).strip());
        }
        for (String key : REQUIRED) {
            if (!head.texts.containsKey(key)) {
                throw new TableFormatException(
                        fileName, 1, "", Refusals.text("the head has no %s; add a line such as '# %s: ...'", key, key));
            }
        }
        return head;
    }

    private void accept(String line) {
        int colon = line.indexOf(':');
        if (colon <= 0 || line.substring(colon + 1).isBlank()) {
            throw new TableFormatException(
                    fileName, length, "", Refusals.text("the head line is not a key and a text; write '# key: text'"));
        }
        String key = line.substring(0, colon).strip();
        String text = line.substring(colon + 1).strip();
        if (key.equals("note") && texts.containsKey(key)) {
            texts.merge(key, text, (first, second) -> first + " " + second);
        } else if (texts.putIfAbsent(key, text) != null) {
            throw new TableFormatException(
                    fileName, length, "", Refusals.text("the head has %s twice; keep one line for each key", key));
        }
        lines.putIfAbsent(key, length);
    }

    Map<String, String> texts() {
        return texts;
    }

    /** How many lines the head takes. */
    int length() {
        return length;
    }

    /** The line of a key, from 1. */
    int line(String key) {
        return lines.getOrDefault(key, 1);
    }

    /** Reads a list of {@code name=text; name=text}; the text "none" is an empty list. */
    Map<String, String> pairs(String key) {
        Map<String, String> pairs = new LinkedHashMap<>();
        String text = texts.getOrDefault(key, Citation.NONE);
        if (text.equals(Citation.NONE)) {
            return pairs;
        }
        for (String part : text.split(";")) {
            int equals = part.indexOf('=');
            if (equals <= 0 || part.substring(equals + 1).isBlank()) {
                throw new TableFormatException(
                        fileName,
                        line(key),
                        "",
                        Refusals.text(
                                "'%s' in %s is not a column and its text; write 'column=text; column=text'",
                                part.strip(), key));
            }
            pairs.put(
                    part.substring(0, equals).strip(),
                    part.substring(equals + 1).strip());
        }
        return pairs;
    }
}
