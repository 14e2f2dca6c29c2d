package org.ohmloom.store;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Says in our words why a text is not JSON. */
final class SyntaxProblem {
    private static final Pattern CHARACTER =
            Pattern.compile("Unexpected character \\((.*) \\(code \\d+.*?\\)\\):? ?(.*)", Pattern.DOTALL);
    private static final Pattern TOKEN = Pattern.compile("Unrecognized token '(.*)':.*", Pattern.DOTALL);
    private static final Pattern NON_STANDARD = Pattern.compile("Non-standard token '(.*)':.*", Pattern.DOTALL);
    private static final Pattern DUPLICATE =
            Pattern.compile("Duplicate (?:field|Object property) [\"'](.*)[\"']", Pattern.DOTALL);
    private static final Pattern OPENED =
            Pattern.compile(".*start marker at \\[.*line: (\\d+), column: (\\d+)\\].*", Pattern.DOTALL);
    private static final Pattern SOURCE = Pattern.compile(" ?\\(?(?:at|for)? ?\\[Source:[^\\]]*\\]\\)?");

    private static final Pattern CLOSING = Pattern.compile(
            "Unexpected close marker '(.)': expected '(.)' .*line: (\\d+), column: (\\d+)\\].*", Pattern.DOTALL);

    /** What the parser was expecting, in its words and ours. */
    private static final Map<String, String> NEEDED = Map.of(
            "colon to separate", "a colon between a key and its value",
            "start field name", "a key in double quotes",
            "start property name", "a key in double quotes",
            "separate Object entries", "a comma or the end of the object",
            "separate Array entries", "a comma or the end of the array",
            "valid value", "a value; texts stand in double quotes",
            "hex-digit", "four hexadecimal digits after \\u");

    private SyntaxProblem() {}

    static String of(String original) {
        Matcher duplicate = DUPLICATE.matcher(original);
        if (duplicate.matches()) {
            return "the key '" + duplicate.group(1) + "' stands here for the second time in one object; keep one";
        }
        Matcher standard = NON_STANDARD.matcher(original);
        if (standard.matches()) {
            return standard.group(1) + " is not a number JSON knows; leave the key out when there is no value";
        }
        if (original.contains("nesting depth")) {
            return "objects and arrays lie more than " + JsonParsing.DEEPEST + " deep in one another";
        }
        if (original.startsWith("String value length")) {
            return "a text is longer than " + JsonParsing.LONGEST_TEXT + " characters";
        }
        if (original.startsWith("Number value length") || original.startsWith("BigDecimal scale")) {
            return "a number has too many digits";
        }
        if (original.startsWith("Token count")) {
            return "more than " + JsonParsing.MOST_PARTS + " values and keys; no harness needs that";
        }
        if (original.startsWith("Name value length") || original.startsWith("Name length")) {
            return "a key is too long";
        }
        return notJson(original);
    }

    private static String notJson(String original) {
        Matcher token = TOKEN.matcher(original);
        if (token.matches()) {
            return "'" + token.group(1) + "' is not a JSON value; texts and keys stand in double quotes";
        }
        Matcher character = CHARACTER.matcher(original);
        if (character.matches()) {
            return "unexpected " + character.group(1) + expected(character.group(2));
        }
        Matcher opened = OPENED.matcher(original);
        Matcher closing = CLOSING.matcher(original);
        if (closing.matches()) {
            return "unexpected '" + closing.group(1) + "'; '" + closing.group(2) + "' is needed for what was opened at "
                    + closing.group(3) + ":" + closing.group(4);
        }
        if (original.startsWith("Unexpected close marker")) {
            return "something is closed that was not opened";
        }
        if (original.startsWith("Unexpected end-of-input")) {
            return opened.matches()
                    ? "the file ends inside what was opened at " + opened.group(1) + ":" + opened.group(2)
                    : "the file ends in the middle of a value";
        }
        if (original.contains("Leading zeroes")) {
            return "a number has no leading zeros";
        }
        if (original.startsWith("Illegal unquoted character")) {
            return "a line end or tab inside a text; close the text, or write \\n or \\t";
        }
        if (original.startsWith("Illegal character")) {
            return "a control character stands between the values; take it out";
        }
        if (original.startsWith("Unrecognized character escape")) {
            return "no such escape in a text; a backslash itself is written \\\\";
        }
        if (original.startsWith("Trailing token")) {
            return "something follows the end of the object; a harness file holds one object";
        }
        return "not JSON: " + SOURCE.matcher(original).replaceAll("");
    }

    private static String expected(String hint) {
        if (hint.contains("comment")) {
            return "; JSON has no comments";
        }
        if (hint.contains("umeric") || hint.contains("ecimal")) {
            return "; a number is written as 5, 0.5 or 5e-3";
        }
        for (Map.Entry<String, String> each : NEEDED.entrySet()) {
            if (hint.contains(each.getKey())) {
                return "; needed here: " + each.getValue();
            }
        }
        return "";
    }
}
