package org.ohmloom.store;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Iterator;
import java.util.Map;

/**
 * Lays JSON out so that a version-control diff reads well: what fits in 120 columns stands on one line, anything longer is
 * broken at its own keys or elements, one a line, two spaces in.
 */
final class JsonLayout {
    private static final int COLUMNS = 120;
    private static final int FIRST_PRINTABLE = 0x20;

    private final StringBuilder out = new StringBuilder();
    private final int brokenLevels;

    private JsonLayout(int brokenLevels) {
        this.brokenLevels = brokenLevels;
    }

    /**
     * The text with a line feed at its end.
     *
     * @param brokenLevels how many levels from the top are broken even when they would fit on one line
     */
    static String lines(JsonNode node, int brokenLevels) {
        JsonLayout layout = new JsonLayout(brokenLevels);
        layout.put(node, 0, 0, 0);
        return layout.out.append('\n').toString();
    }

    /** The text on one line. */
    static String inline(JsonNode node) {
        StringBuilder line = new StringBuilder();
        inline(node, line, Integer.MAX_VALUE);
        return line.toString();
    }

    /** The text in quotes; a half of a surrogate pair that stands alone is escaped, since UTF-8 cannot hold it. */
    static void quote(String text, StringBuilder line) {
        line.append('"');
        for (int k = 0; k < text.length(); k++) {
            char c = text.charAt(k);
            if (c == '"' || c == '\\') {
                line.append('\\').append(c);
            } else if (c < FIRST_PRINTABLE) {
                control(c, line);
            } else if (Character.isHighSurrogate(c)
                    && k + 1 < text.length()
                    && Character.isLowSurrogate(text.charAt(k + 1))) {
                line.append(c).append(text.charAt(++k));
            } else if (Character.isSurrogate(c)) {
                escape(c, line);
            } else {
                line.append(c);
            }
        }
        line.append('"');
    }

    /** Puts a node; {@code before} are the columns its line already has, {@code level} counts from the top. */
    private void put(JsonNode node, int level, int indent, int before) {
        if (node.isEmpty() || level >= brokenLevels) {
            StringBuilder line = new StringBuilder();
            // One column is kept for the comma that may follow.
            if (inline(node, line, COLUMNS - before - 1) || node.isEmpty()) {
                out.append(line);
                return;
            }
        }
        out.append(node.isArray() ? '[' : '{');
        String lead = "\n" + " ".repeat(indent + 2);
        if (node.isArray()) {
            for (int k = 0; k < node.size(); k++) {
                out.append(k == 0 ? "" : ",").append(lead);
                put(node.get(k), level + 1, indent + 2, indent + 2);
            }
        } else {
            String comma = "";
            for (Map.Entry<String, JsonNode> field : node.properties()) {
                out.append(comma).append(lead);
                int start = out.length();
                quote(field.getKey(), out);
                out.append(": ");
                put(field.getValue(), level + 1, indent + 2, indent + 2 + out.length() - start);
                comma = ",";
            }
        }
        out.append('\n').append(" ".repeat(indent)).append(node.isArray() ? ']' : '}');
    }

    /** Adds the one-line text; returns false, and may give up half-way, once the line is longer than the limit. */
    private static boolean inline(JsonNode node, StringBuilder line, int limit) {
        if (node.isTextual()) {
            quote(node.textValue(), line);
        } else if (node.isNumber()) {
            line.append(JsonNumbers.text(node));
        } else if (!node.isContainerNode()) {
            line.append(node.asText());
        } else {
            line.append(node.isArray() ? '[' : '{');
            String comma = "";
            Iterator<Map.Entry<String, JsonNode>> fields = node.properties().iterator();
            for (JsonNode child : node) {
                line.append(comma);
                if (node.isObject()) {
                    quote(fields.next().getKey(), line);
                    line.append(": ");
                }
                if (!inline(child, line, limit)) {
                    return false;
                }
                comma = ", ";
            }
            line.append(node.isArray() ? ']' : '}');
        }
        return line.length() <= limit;
    }

    private static void control(char c, StringBuilder line) {
        switch (c) {
            case '\n' -> line.append("\\n");
            case '\t' -> line.append("\\t");
            case '\r' -> line.append("\\r");
            case '\b' -> line.append("\\b");
            case '\f' -> line.append("\\f");
            default -> escape(c, line);
        }
    }

    private static void escape(char c, StringBuilder line) {
        line.append("\\u");
        String digits = Integer.toHexString(c);
        line.append("0".repeat(4 - digits.length())).append(digits);
    }
}
