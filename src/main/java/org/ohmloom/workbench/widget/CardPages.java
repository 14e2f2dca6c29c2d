package org.ohmloom.workbench.widget;

import com.formdev.flatlaf.util.UIScale;
import java.awt.CardLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.util.ArrayList;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JPanel;

/** Pages in one place, one of them in front. What chooses between them lies beside them. */
public final class CardPages extends JPanel {

    private static final long serialVersionUID = 1L;

    private static final int LEAST_WIDTH = 160;
    private static final int LEAST_HEIGHT = 60;

    private final CardLayout cards = new CardLayout();
    private final List<JComponent> pages = new ArrayList<>();
    private final transient List<Runnable> listeners = new ArrayList<>();
    private int front;

    /**
     * No pages yet.
     *
     * @param name name of the component
     */
    public CardPages(String name) {
        setLayout(cards);
        setName(name);
        setOpaque(false);
    }

    /** As small as a person makes it: pages that need more scroll or wrap. */
    @Override
    public Dimension getMinimumSize() {
        return new Dimension(UIScale.scale(LEAST_WIDTH), UIScale.scale(LEAST_HEIGHT));
    }

    /** Adds a page behind the others. */
    public void addPage(JComponent page) {
        pages.add(page);
        add(page, String.valueOf(pages.size() - 1));
    }

    public List<JComponent> pages() {
        return List.copyOf(pages);
    }

    /** The page in front. */
    public JComponent front() {
        return pages.get(front);
    }

    /** Whether a component is one of the pages. */
    boolean has(Component component) {
        return pages.contains(component);
    }

    /** Brings a page to the front; those who listen hear of it when another was there. */
    public void bring(JComponent page) {
        int place = pages.indexOf(page);
        if (place >= 0 && place != front) {
            front = place;
            cards.show(this, String.valueOf(place));
            listeners.forEach(Runnable::run);
        }
    }

    /** Brings a page so many places further on to the front, round the end. */
    public void step(int places) {
        bring(pages.get(Math.floorMod(front + places, pages.size())));
    }

    /** Runs a task whenever another page is in front. */
    public void onChange(Runnable listener) {
        listeners.add(listener);
    }
}
