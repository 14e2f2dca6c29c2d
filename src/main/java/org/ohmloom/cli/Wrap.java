package org.ohmloom.cli;

/** Breaks text into lines at blanks. */
final class Wrap {

    private Wrap() {}

    /** The text in lines that all begin with so many blanks, further lines with two more. */
    static String indented(String text, int blanks, int width) {
        String start = " ".repeat(blanks);
        String lines = text(text, width - blanks - 2);
        return start + lines.replace(System.lineSeparator(), System.lineSeparator() + start + "  ");
    }

    /** The text in lines of at most that many characters where its words allow. */
    static String text(String text, int width) {
        StringBuilder lines = new StringBuilder();
        int column = 0;
        for (String word : text.split(" ", -1)) {
            if (column > 0 && column + 1 + word.length() > width) {
                lines.append(System.lineSeparator());
                column = 0;
            } else if (column > 0) {
                lines.append(' ');
                column++;
            }
            lines.append(word);
            column += word.length();
        }
        return lines.toString();
    }
}
