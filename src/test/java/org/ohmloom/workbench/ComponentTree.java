package org.ohmloom.workbench;

import java.awt.Component;
import java.awt.Container;
import java.util.ArrayList;
import java.util.List;

/** Finds components of a window by their names. */
public final class ComponentTree {

    private ComponentTree() {}

    /** The component of that name and kind; fails without one. */
    public static <T extends Component> T find(Container root, String name, Class<T> kind) {
        return all(root).stream()
                .filter(each -> name.equals(each.getName()) && kind.isInstance(each))
                .map(kind::cast)
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + kind.getSimpleName() + " named " + name));
    }

    /** Everything in a container, itself first. */
    public static List<Component> all(Container root) {
        List<Component> found = new ArrayList<>(List.of(root));
        for (Component child : root.getComponents()) {
            found.addAll(child instanceof Container inner ? all(inner) : List.of(child));
        }
        return found;
    }
}
