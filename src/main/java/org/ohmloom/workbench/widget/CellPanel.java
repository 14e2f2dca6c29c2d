package org.ohmloom.workbench.widget;

import java.awt.LayoutManager;
import javax.swing.JPanel;

/** A panel that paints cells: lays itself out also where it is not part of a window, as in pictures. */
public class CellPanel extends JPanel {

    private static final long serialVersionUID = 1L;

    public CellPanel(LayoutManager layout) {
        super(layout);
    }

    @Override
    public void validate() {
        if (isDisplayable()) {
            super.validate();
        } else {
            invalidate();
            doLayout();
        }
    }
}
