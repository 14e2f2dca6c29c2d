package org.ohmloom.model;

import java.util.Comparator;

/**
 * Orders texts as a person does: runs of digits compare by value, everything else by character.
 * <p>Ties such as {@code W1} and {@code W01} fall back to plain text order, so the order is total.
 */
public enum NaturalOrder implements Comparator<String> {
    /** The one order. */
    INSTANCE;

    @Override
    @SuppressWarnings("ReferenceEquality") // one text is often held against itself: not worth reading
    public int compare(String left, String right) {
        if (left == right) {
            return 0;
        }
        int i = beforeDifference(left, right);
        int j = i;
        while (i < left.length() && j < right.length()) {
            if (isDigit(left.charAt(i)) && isDigit(right.charAt(j))) {
                int iEnd = endOfDigits(left, i);
                int jEnd = endOfDigits(right, j);
                int byValue = compareDigits(left, i, iEnd, right, j, jEnd);
                if (byValue != 0) {
                    return byValue;
                }
                i = iEnd;
                j = jEnd;
            } else {
                int byCharacter = Character.compare(left.charAt(i++), right.charAt(j++));
                if (byCharacter != 0) {
                    return byCharacter;
                }
            }
        }
        int byRest = Integer.compare(left.length() - i, right.length() - j);
        return byRest != 0 ? byRest : left.compareTo(right);
    }

    /** Where two texts begin to differ, at the first digit of the number they differ in: ids have long beginnings in common. */
    private static int beforeDifference(String left, String right) {
        int end = Math.min(left.length(), right.length());
        int same = 0;
        while (same < end && left.charAt(same) == right.charAt(same)) {
            same++;
        }
        while (same > 0 && isDigit(left.charAt(same - 1))) {
            same--;
        }
        return same;
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    private static int endOfDigits(String text, int start) {
        int end = start;
        while (end < text.length() && isDigit(text.charAt(end))) {
            end++;
        }
        return end;
    }

    /** Compares two runs of digits by value, without making texts of them: sorting ids is most of what graphs do. */
    private static int compareDigits(String left, int i, int iEnd, String right, int j, int jEnd) {
        int iFirst = afterZeros(left, i, iEnd);
        int jFirst = afterZeros(right, j, jEnd);
        int order = Integer.compare(iEnd - iFirst, jEnd - jFirst);
        for (int k = 0; order == 0 && iFirst + k < iEnd; k++) {
            order = Character.compare(left.charAt(iFirst + k), right.charAt(jFirst + k));
        }
        return order;
    }

    private static int afterZeros(String text, int start, int end) {
        int first = start;
        while (first < end - 1 && text.charAt(first) == '0') {
            first++;
        }
        return first;
    }
}
