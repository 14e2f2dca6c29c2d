package org.ohmloom.workbench.canvas;

import java.util.Optional;
import javax.accessibility.Accessible;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;
import org.ohmloom.draw.Scene;

/** What scenes are drawn on: tells a screen reader that it is a canvas, and its name. */
public abstract class SceneCanvas extends JComponent implements Accessible {

    private static final long serialVersionUID = 1L;

    public SceneCanvas(String accessibleName) {
        getAccessibleContext().setAccessibleName(accessibleName);
    }

    /** What is drawn on it now. */
    public abstract Optional<Scene> scene();

    @Override
    public final AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleJComponent() {
                private static final long serialVersionUID = 1L;

                @Override
                public AccessibleRole getAccessibleRole() {
                    return AccessibleRole.CANVAS;
                }
            };
        }
        return accessibleContext;
    }
}
