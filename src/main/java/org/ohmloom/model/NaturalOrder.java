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
    public int compare(String left, String right) {
        int i = 0;
        int j = 0;
        while (i < left.length() && j < right.length()) {
            if (isDigit(left.charAt(i)) && isDigit(right.charAt(j))) {
                int iEnd = endOfDigits(left, i);
                int jEnd = endOfDigits(right, j);
                int byValue = compareDigits(left.substring(i, iEnd), right.substring(j, jEnd));
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

    private static int compareDigits(String left, String right) {
        String a = left.replaceFirst("^0+(?=.)", "");
        String b = right.replaceFirst("^0+(?=.)", "");
        int byLength = Integer.compare(a.length(), b.length());
        return byLength != 0 ? byLength : a.compareTo(b);
    }
}
