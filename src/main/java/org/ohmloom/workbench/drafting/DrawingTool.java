package org.ohmloom.workbench.drafting;

import java.util.Optional;
import javax.swing.JComponent;
import org.ohmloom.workbench.canvas.CanvasTool;

/** A tool for drawing on the layout. */
interface DrawingTool extends CanvasTool {

    /** Its key in the bundle of words, and the end of its command's id. */
    String key();

    /** Says what to do next. */
    void hint();

    /** What can be set for it, shown beside the hint. */
    default Optional<JComponent> options() {
        return Optional.empty();
    }
}
