package org.ohmloom.workbench.widget;

import java.awt.Container;
import javax.swing.JComponent;
import javax.swing.JTabbedPane;

/** Brings components that lie behind tabs to the front. */
public final class Reveal {

    private Reveal() {}

    /** Brings a component to the front in every pane of tabs around it; returns it. */
    public static <C extends JComponent> C inFront(C component) {
        Container inner = component;
        while (inner.getParent() != null) {
            Container outer = inner.getParent();
            if (outer instanceof JTabbedPane tabs && tabs.indexOfComponent(inner) >= 0) {
                tabs.setSelectedComponent(inner);
            } else if (outer instanceof CardPages pages && pages.has(inner) && inner instanceof JComponent page) {
                pages.bring(page);
            }
            inner = outer;
        }
        return component;
    }
}
