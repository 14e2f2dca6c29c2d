package org.ohmloom.workbench.manual;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JEditorPane;
import javax.swing.JScrollPane;
import javax.swing.ScrollPaneConstants;
import javax.swing.Timer;
import javax.swing.UIManager;
import javax.swing.event.HyperlinkEvent;
import javax.swing.text.BadLocationException;
import javax.swing.text.DefaultCaret;
import javax.swing.text.DefaultHighlighter;
import javax.swing.text.Document;
import javax.swing.text.html.HTMLEditorKit;
import javax.swing.text.html.StyleSheet;
import org.jspecify.annotations.Nullable;
import org.ohmloom.manual.Page;
import org.ohmloom.manual.PageHtml;
import org.ohmloom.manual.SearchWords;
import org.ohmloom.workbench.widget.Keys;

/** Shows a page. Tab and Shift+Tab walk its links, Enter follows one, the arrows scroll. */
final class PageView extends JEditorPane {

    private static final long serialVersionUID = 1L;
    private static final int PAUSE_MILLIS = 120;

    private final transient Consumer<String> follow;
    private final transient Pictures pictures = new Pictures();
    private final transient PageLinks links = new PageLinks(this);
    private final JScrollPane scroll;
    private final transient Timer resized;
    private transient Optional<Page> page = Optional.empty();
    private transient List<String> marked = List.of();
    private transient @Nullable Integer width;

    /**
     * A view without a page.
     *
     * @param name   what it is called for readers of the screen
     * @param follow goes where a link leads: the id of a page behind {@link PageHtml#PAGE}, or an address elsewhere
     */
    PageView(String name, Consumer<String> follow) {
        this.follow = follow;
        setName("manual-page");
        setEditable(false);
        setContentType("text/html");
        getAccessibleContext().setAccessibleName(name);
        putClientProperty(HONOR_DISPLAY_PROPERTIES, Boolean.TRUE);
        addHyperlinkListener(event -> {
            if (event.getEventType() == HyperlinkEvent.EventType.ACTIVATED) {
                follow.accept(event.getDescription());
            }
        });
        scroll = new JScrollPane(
                this,
                ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED,
                ScrollPaneConstants.HORIZONTAL_SCROLLBAR_AS_NEEDED);
        scroll.setBorder(null);
        resized = new Timer(PAUSE_MILLIS, event -> fitPictures());
        resized.setRepeats(false);
        scroll.addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                resized.restart();
            }
        });
        keys();
    }

    /** The pane it scrolls in. */
    JScrollPane scroll() {
        return scroll;
    }

    Optional<Page> page() {
        return page;
    }

    PageLinks links() {
        return links;
    }

    /** Shows a page from its top, words that were searched for marked. */
    void show(Page wanted, List<String> words) {
        page = Optional.of(wanted);
        marked = List.copyOf(words);
        render();
        setCaretPosition(0);
        scroll.getViewport().setViewPosition(new Point(0, 0));
        if (!words.isEmpty()) {
            scrollToFirstMark();
        }
    }

    @Override
    public void updateUI() {
        super.updateUI();
        // The first call comes from the constructor above this one, before there is anything to show.
        if (page != null && page.isPresent()) {
            render();
        }
    }

    private void render() {
        Page now = page.orElseThrow();
        int widest = room();
        width = widest;
        getHighlighter().removeAllHighlights();
        HTMLEditorKit kit = new HTMLEditorKit() {
            private static final long serialVersionUID = 1L;

            private final transient StyleSheet style = PageStyle.now(new HTMLEditorKit().getStyleSheet());

            @Override
            public StyleSheet getStyleSheet() {
                return style;
            }
        };
        setEditorKit(kit);
        setFont(UIManager.getFont("Label.font"));
        setForeground(UIManager.getColor("Label.foreground"));
        setBackground(UIManager.getColor("Ohmloom.pane"));
        Document fresh = kit.createDefaultDocument();
        fresh.putProperty("imageCache", pictures.shown());
        setDocument(fresh);
        setText("<html><body>" + PageHtml.body(now, file -> pictures.attributes(file, widest)) + "</body></html>");
        if (getCaret() instanceof DefaultCaret caret) {
            // The page is scrolled by its keys and links alone; it has no place to type at.
            caret.setUpdatePolicy(DefaultCaret.NEVER_UPDATE);
            caret.setVisible(false);
        }
        setCaretPosition(0);
        links.read();
        markWords();
    }

    /** Width for pictures, px. */
    private int room() {
        int there = scroll.getViewport().getWidth() - UIScale.scale(48);
        return there < UIScale.scale(100) ? UIScale.scale(640) : there;
    }

    private void fitPictures() {
        boolean hasPictures =
                page.stream().flatMap(each -> each.links().stream()).anyMatch(each -> each.picture());
        if (hasPictures && width != null && width != room()) {
            Rectangle before = scroll.getViewport().getViewRect();
            render();
            scroll.getViewport().setViewPosition(before.getLocation());
        }
    }

    private void markWords() {
        if (marked.isEmpty()) {
            return;
        }
        var painter = new DefaultHighlighter.DefaultHighlightPainter(UIManager.getColor("Ohmloom.marked"));
        for (SearchWords.Place place : SearchWords.places(text())) {
            if (marked.stream().anyMatch(typed -> SearchWords.fits(place.word(), typed))) {
                try {
                    getHighlighter().addHighlight(place.start(), place.end(), painter);
                } catch (BadLocationException outside) {
                    throw new IllegalStateException(outside);
                }
            }
        }
    }

    /** How many words are marked. */
    int marks() {
        return getHighlighter().getHighlights().length;
    }

    private String text() {
        try {
            return getDocument().getText(0, getDocument().getLength());
        } catch (BadLocationException outside) {
            throw new IllegalStateException(outside);
        }
    }

    private void scrollToFirstMark() {
        if (marks() > 0) {
            try {
                var where = modelToView2D(getHighlighter().getHighlights()[0].getStartOffset());
                if (where != null) {
                    Rectangle room = where.getBounds();
                    room.grow(0, 2 * room.height);
                    scrollRectToVisible(room);
                }
            } catch (BadLocationException outside) {
                throw new IllegalStateException(outside);
            }
        }
    }

    private void keys() {
        setFocusTraversalKeysEnabled(false);
        bind(KeyEvent.VK_ENTER, "follow", () -> links.follow(follow));
        bind(KeyEvent.VK_TAB, "next-link", () -> {
            if (!links.step(1)) {
                transferFocus();
            }
        });
        Keys.bind(this, WHEN_FOCUSED, Keys.shift(KeyEvent.VK_TAB), "last-link", () -> {
            if (!links.step(-1)) {
                transferFocusBackward();
            }
        });
        bind(KeyEvent.VK_DOWN, "line-down", () -> scrollBy(UIScale.scale(40)));
        bind(KeyEvent.VK_UP, "line-up", () -> scrollBy(-UIScale.scale(40)));
        bind(KeyEvent.VK_SPACE, "screen-on", () -> scrollBy(screen()));
        bind(KeyEvent.VK_PAGE_DOWN, "screen-down", () -> scrollBy(screen()));
        bind(KeyEvent.VK_PAGE_UP, "screen-up", () -> scrollBy(-screen()));
        bind(KeyEvent.VK_HOME, "to-top", () -> scrollBy(-getHeight()));
        bind(KeyEvent.VK_END, "to-end", () -> scrollBy(getHeight()));
    }

    private void bind(int key, String name, Runnable task) {
        Keys.bind(this, WHEN_FOCUSED, Keys.plain(key), name, task);
    }

    private int screen() {
        return scroll.getViewport().getHeight() * 9 / 10;
    }

    private void scrollBy(int pixels) {
        var bar = scroll.getVerticalScrollBar();
        bar.setValue(bar.getValue() + pixels);
    }
}
