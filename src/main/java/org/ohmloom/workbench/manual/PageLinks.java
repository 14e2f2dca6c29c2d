package org.ohmloom.workbench.manual;

import java.awt.Color;
import java.awt.Rectangle;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JEditorPane;
import javax.swing.UIManager;
import javax.swing.text.AttributeSet;
import javax.swing.text.BadLocationException;
import javax.swing.text.DefaultHighlighter;
import javax.swing.text.Document;
import javax.swing.text.html.HTML;
import javax.swing.text.html.HTMLDocument;

/** Walks the links of a page by keyboard: one is marked at a time, in the order of the text. */
final class PageLinks {

    private record Place(int start, int end, String target) {}

    private final JEditorPane pane;
    private List<Place> places = List.of();
    private int at = -1;
    private Optional<Object> mark = Optional.empty();

    PageLinks(JEditorPane pane) {
        this.pane = pane;
    }

    /** Finds the links of the page shown now; none is marked. */
    void read() {
        unmark();
        at = -1;
        places = new ArrayList<>();
        Document document = pane.getDocument();
        if (document instanceof HTMLDocument html) {
            for (HTMLDocument.Iterator each = html.getIterator(HTML.Tag.A); each.isValid(); each.next()) {
                AttributeSet attributes = each.getAttributes();
                Object target = attributes.getAttribute(HTML.Attribute.HREF);
                if (target != null) {
                    add(new Place(each.getStartOffset(), each.getEndOffset(), target.toString()));
                }
            }
        }
    }

    /** A link may be several runs of text, as where part of it is in another font. */
    private void add(Place place) {
        Place last = places.isEmpty() ? null : places.get(places.size() - 1);
        if (last != null && last.end() == place.start() && last.target().equals(place.target())) {
            places.set(places.size() - 1, new Place(last.start(), place.end(), last.target()));
        } else {
            places.add(place);
        }
    }

    /** Marks the next link, or the one before; false at the end, where none is marked any more. */
    boolean step(int by) {
        int next = at < 0 && by < 0 ? places.size() - 1 : at + by;
        unmark();
        if (next < 0 || next >= places.size()) {
            at = -1;
            return false;
        }
        at = next;
        mark();
        return true;
    }

    /** Hands over where the marked link leads. */
    void follow(Consumer<String> target) {
        if (at >= 0) {
            target.accept(places.get(at).target());
        }
    }

    /** Text of the marked link; empty when none is. */
    Optional<String> marked() throws BadLocationException {
        return at < 0
                ? Optional.empty()
                : Optional.of(pane.getDocument()
                        .getText(
                                places.get(at).start(),
                                places.get(at).end() - places.get(at).start()));
    }

    private void mark() {
        Place place = places.get(at);
        try {
            Color colour = UIManager.getColor("Ohmloom.selectedRow");
            mark = Optional.of(pane.getHighlighter()
                    .addHighlight(place.start(), place.end(), new DefaultHighlighter.DefaultHighlightPainter(colour)));
            pane.getCaret().setDot(place.start());
            Rectangle2D where = pane.modelToView2D(place.start());
            if (where != null) {
                Rectangle room = where.getBounds();
                room.grow(0, 3 * room.height);
                pane.scrollRectToVisible(room);
            }
        } catch (BadLocationException gone) {
            mark = Optional.empty();
        }
    }

    private void unmark() {
        mark.ifPresent(pane.getHighlighter()::removeHighlight);
        mark = Optional.empty();
    }
}
