package org.ohmloom.workbench.manual;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JList;
import org.ohmloom.manual.Hit;
import org.ohmloom.manual.SearchWords;

/** Shows a page that was found: its title and the passage, words that were typed in bold. */
final class HitRenderer extends DefaultListCellRenderer {

    private static final long serialVersionUID = 1L;
    private static final int INSETS = 24;

    private transient List<String> typed = List.of();

    /** What was searched for. */
    void mark(List<String> words) {
        typed = List.copyOf(words);
    }

    @Override
    public Component getListCellRendererComponent(
            JList<?> list, Object value, int index, boolean selected, boolean focused) {
        super.getListCellRendererComponent(list, "", index, selected, focused);
        if (value instanceof Hit hit) {
            int width = Math.max(
                    120, list.getParent() == null ? 0 : list.getParent().getWidth() - INSETS);
            setText("<html><body width=" + width + "><b>" + marked(hit.page().title(), false) + "</b><br>"
                    + marked(hit.passage(), true) + "</body></html>");
            getAccessibleContext().setAccessibleName(hit.page().title() + ": " + hit.passage());
            int gap = UIScale.scale(4);
            setBorder(BorderFactory.createEmptyBorder(gap, 2 * gap, gap, 2 * gap));
        }
        return this;
    }

    private String marked(String text, boolean bold) {
        StringBuilder html = new StringBuilder();
        int at = 0;
        for (SearchWords.Place place : SearchWords.places(text)) {
            if (bold && typed.stream().anyMatch(each -> SearchWords.fits(place.word(), each))) {
                html.append(plain(text.substring(at, place.start())))
                        .append("<b>")
                        .append(plain(text.substring(place.start(), place.end())))
                        .append("</b>");
                at = place.end();
            }
        }
        return html.append(plain(text.substring(at))).toString();
    }

    private static String plain(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
