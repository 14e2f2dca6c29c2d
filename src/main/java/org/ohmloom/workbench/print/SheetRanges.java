package org.ohmloom.workbench.print;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.ohmloom.workbench.words.Words;

/** Which sheets of a document are wanted, as a person types it: "1-3, 5"; nothing stands for all. */
final class SheetRanges {

    private static final Pattern RANGE = Pattern.compile("(\\d{1,5})?\\s*([-–])?\\s*(\\d{1,5})?");

    private SheetRanges() {}

    /**
     * The sheets, counted from 0, in the order typed, each once.
     *
     * @param count how many sheets there are
     * @throws IllegalArgumentException when it is no list of sheets, or one is not there; the message is for people
     */
    static List<Integer> of(String typed, int count) {
        if (typed.isBlank()) {
            return IntStream.range(0, count).boxed().toList();
        }
        List<Integer> sheets = new ArrayList<>();
        for (String part : typed.strip().split("[,;]", -1)) {
            Matcher range = RANGE.matcher(part.strip());
            if (part.isBlank() || !range.matches()) {
                throw new IllegalArgumentException(Words.of("print").get("ranges.unread", part.strip()));
            }
            boolean open = range.group(2) != null;
            int first = range.group(1) == null ? 1 : Integer.parseInt(range.group(1));
            int last = range.group(3) != null ? Integer.parseInt(range.group(3)) : open ? count : first;
            if (first < 1 || last > count || last < first) {
                throw new IllegalArgumentException(
                        Words.of("print").get("ranges.outside", part.strip(), String.valueOf(count)));
            }
            IntStream.range(first - 1, last)
                    .filter(each -> !sheets.contains(each))
                    .forEach(sheets::add);
        }
        return sheets;
    }
}
