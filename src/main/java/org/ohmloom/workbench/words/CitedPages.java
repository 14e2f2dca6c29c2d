package org.ohmloom.workbench.words;

import java.util.Optional;
import javax.swing.JTextArea;
import javax.swing.text.BadLocationException;
import org.ohmloom.manual.WrittenPages;

/** The pages of the manual about the formula or the table row a text cites. */
public final class CitedPages {

    private CitedPages() {}

    /** The page about what a sentence cites; empty when it cites nothing that has a page. */
    public static Optional<String> in(String sentence) {
        return WrittenPages.citedIn(sentence);
    }

    /** The page about what the line with the caret cites. */
    public static Optional<String> at(JTextArea area) {
        try {
            int line = area.getLineOfOffset(area.getCaretPosition());
            int start = area.getLineStartOffset(line);
            return in(area.getText(start, area.getLineEndOffset(line) - start));
        } catch (BadLocationException outside) {
            return Optional.empty();
        }
    }
}
