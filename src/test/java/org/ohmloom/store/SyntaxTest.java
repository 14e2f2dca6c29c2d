package org.ohmloom.store;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;

/** A text that is not JSON is refused with its line and column. */
@BesideOthers
class SyntaxTest {

    private static void refuses(String text, String line) {
        assertEquals("fan.harness.json" + line, Refusals.of(text).getMessage());
    }

    private static void says(String text, String problem) {
        assertEquals(problem, Refusals.of(text).problem());
    }

    @Test
    void theFileEndsTooEarly() {
        refuses("{\n  \"format\": \"ohm", ":2:17: the file ends in the middle of a value");
        refuses("{\n  \"parts\": [\n", ":3:1: the file ends inside what was opened at 2:12");
        refuses("", ": the file is empty; a harness file holds one JSON object");
        refuses(" \n ", ": the file is empty; a harness file holds one JSON object");
    }

    @Test
    void aCharacterThatDoesNotBelongThere() {
        refuses("{\"format\" \"x\"}", ":1:11: unexpected '\"'; needed here: a colon between a key and its value");
        refuses("{\"a\": 1 \"b\": 2}", ":1:9: unexpected '\"'; needed here: a comma or the end of the object");
        refuses("{\"a\": [1 2]}", ":1:10: unexpected '2'; needed here: a comma or the end of the array");
        refuses("{\"a\": 1,}", ":1:9: unexpected '}'; needed here: a key in double quotes");
        refuses("{'a': 1}", ":1:2: unexpected '''; needed here: a key in double quotes");
        refuses("{\"a\": 'x'}", ":1:7: unexpected '''; needed here: a value; texts stand in double quotes");
        refuses("// note\n{}", ":1:1: unexpected '/'; JSON has no comments");
        refuses("{\"a\": [}", ":1:8: unexpected '}'; ']' is needed for what was opened at 1:7");
        refuses("{}}", ":1:3: something is closed that was not opened");
        refuses("{} {}", ":1:4: something follows the end of the object; a harness file holds one object");
        says("{\"a\": 1\u0000}", "a control character stands between the values; take it out");
    }

    @Test
    void aNumberThatIsNotWrittenAsJsonWritesIt() {
        refuses("{\"a\": 01}", ":1:8: a number has no leading zeros");
        refuses("{\"a\": 5.}", ":1:8: unexpected '}'; a number is written as 5, 0.5 or 5e-3");
        refuses("{\"a\": +1}", ":1:8: unexpected '+'; a number is written as 5, 0.5 or 5e-3");
        refuses("{\"a\": 1.5e99999999999}", ":1:22: the exponent of a number is too long");
    }

    @Test
    void aWordThatIsNoValue() {
        refuses("{\"a\": yes}", ":1:7: 'yes' is not a JSON value; texts and keys stand in double quotes");
        refuses("{\"a\": NaN}", ":1:10: NaN is not a number JSON knows; leave the key out when there is no value");
        refuses(
                "{\"a\": -Infinity}",
                ":1:16: -Infinity is not a number JSON knows; leave the key out when there is no value");
    }

    @Test
    void aKeyThatStandsTwice() {
        refuses(
                "{\n  \"a\": 1,\n  \"a\": 2\n}",
                ":3:6: the key 'a' stands here for the second time in one object; keep one");
    }

    @Test
    void aTextThatIsNotClosedOrEscapedWrongly() {
        refuses("{\"a\": \"x\n\"}", ":1:9: a line end or tab inside a text; close the text, or write \\n or \\t");
        refuses("{\"a\": \"\\x\"}", ":1:9: no such escape in a text; a backslash itself is written \\\\");
        refuses("{\"a\": \"\\u12\"}", ":1:12: unexpected '\"'; needed here: four hexadecimal digits after \\u");
    }

    @Test
    void whatIsTooDeepTooLongOrTooBig() {
        String deep = "[".repeat(100_000);
        refuses(deep, ":1:66: objects and arrays lie more than 64 deep in one another");
        refuses("{\"a\": " + deep, ":1:71: objects and arrays lie more than 64 deep in one another");
        says("{\"a\": " + "9".repeat(100_000) + "}", "a number has too many digits");
        says("{\"" + "k".repeat(100_000) + "\": 1}", "a key is too long");
        says("{\"a\": \"" + "x".repeat(100_001) + "\"}", "a text is longer than 100000 characters");
    }
}
