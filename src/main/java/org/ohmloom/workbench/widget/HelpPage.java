package org.ohmloom.workbench.widget;

import java.awt.Component;
import java.awt.Container;
import java.awt.Window;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JComponent;
import javax.swing.JPopupMenu;
import javax.swing.JTabbedPane;
import org.jspecify.annotations.Nullable;

/**
 * Which page of the manual tells about a component. A component names its page, or, as a list does whose rows are about
 * different things, is asked for it; what names none is told about by the nearest one round it that does.
 */
public final class HelpPage {

    private static final String KEY = "Ohmloom.helpPage";

    private HelpPage() {}

    /** Names the page of a component. */
    public static <C extends JComponent> C name(C component, String page) {
        component.putClientProperty(KEY, page);
        return component;
    }

    /** Names the page of a component, asked for when it is wanted; empty leaves it to what lies round the component. */
    public static <C extends JComponent> C ask(C component, Supplier<Optional<String>> page) {
        component.putClientProperty(KEY, page);
        return component;
    }

    /**
     * The page about a component: its own, or that of the nearest one round it, or else of the first in its window that
     * names one.
     */
    public static Optional<String> of(@Nullable Component component) {
        Component at = component;
        Component last = at;
        while (at != null) {
            Optional<String> found = named(at);
            if (found.isPresent()) {
                return found;
            }
            last = at;
            at = at instanceof JPopupMenu menu && menu.getInvoker() != null ? menu.getInvoker() : parent(at);
        }
        return last == null ? Optional.empty() : inside(last);
    }

    private static @Nullable Component parent(Component component) {
        return component instanceof Window ? null : component.getParent();
    }

    private static Optional<String> named(Component component) {
        if (component instanceof JTabbedPane tabs && tabs.getSelectedComponent() instanceof JComponent front) {
            Optional<String> ofFront = own(front);
            if (ofFront.isPresent()) {
                return ofFront;
            }
        }
        if (component instanceof CardPages pages) {
            Optional<String> ofFront = own(pages.front());
            if (ofFront.isPresent()) {
                return ofFront;
            }
        }
        return component instanceof JComponent each ? own(each) : Optional.empty();
    }

    private static Optional<String> own(JComponent component) {
        Object page = component.getClientProperty(KEY);
        if (page instanceof Supplier<?> asked && asked.get() instanceof Optional<?> answer) {
            return answer.map(String::valueOf);
        }
        return page instanceof String name ? Optional.of(name) : Optional.empty();
    }

    private static Optional<String> inside(Component component) {
        Optional<String> found = named(component);
        if (found.isPresent() || !(component instanceof Container container)) {
            return found;
        }
        for (Component child : container.getComponents()) {
            Optional<String> below = inside(child);
            if (below.isPresent()) {
                return below;
            }
        }
        return Optional.empty();
    }
}
