package org.ohmloom.workbench.widget;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import javax.swing.JTable;
import javax.swing.table.TableModel;

/** A table among the fields of a dialog: so many rows in sight, as high as the font asks for, in every look and size. */
public final class FormTable extends JTable {

    private static final long serialVersionUID = 1L;
    private static final int AIR = 8;

    private final int width;
    private final int rows;

    /**
     * A table.
     *
     * @param width width in sight, unscaled px
     * @param rows  rows in sight
     */
    public FormTable(TableModel model, int width, int rows) {
        super(model);
        this.width = width;
        this.rows = rows;
        measure();
        ColumnHeads.begin(this);
    }

    @Override
    public void updateUI() {
        super.updateUI();
        measure();
    }

    private void measure() {
        setRowHeight(getFontMetrics(getFont()).getHeight() + UIScale.scale(AIR));
        setPreferredScrollableViewportSize(new Dimension(UIScale.scale(width), rows * getRowHeight()));
    }
}
