package org.ohmloom.store;

import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.ohmloom.words.Refusals;
import org.ohmloom.words.Text;

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
    private static final Map<String, Text> NEEDED = Map.of(
            "colon to separate", Refusals.text("a colon between a key and its value"),
            "start field name", Refusals.text("a key in double quotes"),
            "start property name", Refusals.text("a key in double quotes"),
            "separate Object entries", Refusals.text("a comma or the end of the object"),
            "separate Array entries", Refusals.text("a comma or the end of the array"),
            "valid value", Refusals.text("a value; texts stand in double quotes"),
            "hex-digit", Refusals.text("four hexadecimal digits after \\u"));

    private SyntaxProblem() {}

    static Text of(String original) {
        Matcher duplicate = DUPLICATE.matcher(original);
        if (duplicate.matches()) {
            return Refusals.text(
                    "the key '%s' stands here for the second time in one object; keep one", duplicate.group(1));
        }
        Matcher standard = NON_STANDARD.matcher(original);
        if (standard.matches()) {
            return Refusals.text(
                    "%s is not a number JSON knows; leave the key out when there is no value", standard.group(1));
        }
        if (original.contains("nesting depth")) {
            return Refusals.text("objects and arrays lie more than %s deep in one another", JsonParsing.DEEPEST);
        }
        if (original.startsWith("String value length")) {
            return Refusals.text("a text is longer than %s characters", JsonParsing.LONGEST_TEXT);
        }
        if (original.startsWith("Number value length") || original.startsWith("BigDecimal scale")) {
            return Refusals.text("a number has too many digits");
        }
        if (original.startsWith("Token count")) {
            return Refusals.text("more than %s values and keys; no harness needs that", JsonParsing.MOST_PARTS);
        }
        if (original.startsWith("Name value length") || original.startsWith("Name length")) {
            return Refusals.text("a key is too long");
        }
        return notJson(original);
    }

    private static Text notJson(String original) {
        Matcher token = TOKEN.matcher(original);
        if (token.matches()) {
            return Refusals.text("'%s' is not a JSON value; texts and keys stand in double quotes", token.group(1));
        }
        Matcher character = CHARACTER.matcher(original);
        if (character.matches()) {
            return Refusals.text("unexpected %s%s", character.group(1), expected(character.group(2)));
        }
        Matcher opened = OPENED.matcher(original);
        Matcher closing = CLOSING.matcher(original);
        if (closing.matches()) {
            return Refusals.text(
                    "unexpected '%s'; '%s' is needed for what was opened at %s:%s",
                    closing.group(1), closing.group(2), closing.group(3), closing.group(4));
        }
        if (original.startsWith("Unexpected close marker")) {
            return Refusals.text("something is closed that was not opened");
        }
        if (original.startsWith("Unexpected end-of-input")) {
            return opened.matches()
                    ? Refusals.text("the file ends inside what was opened at %s:%s", opened.group(1), opened.group(2))
                    : Refusals.text("the file ends in the middle of a value");
        }
        if (original.contains("Leading zeroes")) {
            return Refusals.text("a number has no leading zeros");
        }
        if (original.startsWith("Illegal unquoted character")) {
            return Refusals.text("a line end or tab inside a text; close the text, or write \\n or \\t");
        }
        if (original.startsWith("Illegal character")) {
            return Refusals.text("a control character stands between the values; take it out");
        }
        if (original.startsWith("Unrecognized character escape")) {
            return Refusals.text("no such escape in a text; a backslash itself is written \\\\");
        }
        if (original.startsWith("Trailing token")) {
            return Refusals.text("something follows the end of the object; a harness file holds one object");
        }
        return Refusals.text("not JSON: %s", SOURCE.matcher(original).replaceAll(""));
    }

    private static Text expected(String hint) {
        if (hint.contains("comment")) {
            return Refusals.text("; JSON has no comments");
        }
        if (hint.contains("umeric") || hint.contains("ecimal")) {
            return Refusals.text("; a number is written as 5, 0.5 or 5e-3");
        }
        for (Map.Entry<String, Text> each : NEEDED.entrySet()) {
            if (hint.contains(each.getKey())) {
                return Refusals.text("; needed here: %s", each.getValue());
            }
        }
        return Text.NONE;
    }
}
