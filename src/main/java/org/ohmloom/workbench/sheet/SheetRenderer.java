package org.ohmloom.workbench.sheet;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Font;
import javax.swing.BorderFactory;
import javax.swing.JTable;
import javax.swing.SwingConstants;
import javax.swing.table.DefaultTableCellRenderer;
import org.ohmloom.review.Severity;
import org.ohmloom.workbench.widget.FocusFrame;
import org.ohmloom.workbench.widget.Samples;
import org.ohmloom.workbench.widget.SeverityIcon;
import org.ohmloom.workbench.widget.Tone;

/** Paints the cells of a list: numbers to the right, drawings and signs before texts, old numbers slanted. */
final class SheetRenderer extends DefaultTableCellRenderer {

    private static final long serialVersionUID = 1L;

    private final transient Samples samples;

    SheetRenderer(Samples samples) {
        this.samples = samples;
    }

    @Override
    public Component getTableCellRendererComponent(
            JTable table, Object value, boolean selected, boolean focused, int row, int column) {
        super.getTableCellRendererComponent(table, value, selected, focused, row, column);
        if (value instanceof CellText text && table.getModel() instanceof SheetModel<?> model) {
            int modelRow = table.convertRowIndexToModel(row);
            int modelColumn = table.convertColumnIndexToModel(column);
            show(text, model, modelRow, modelColumn, selected, focused, table);
        }
        return this;
    }

    private void show(
            CellText text, SheetModel<?> model, int row, int column, boolean selected, boolean focused, JTable table) {
        Column<?> kind = model.column(column);
        boolean result = kind.numeric() && kind.edit().isEmpty();
        boolean old = result && !model.isCurrent();
        boolean soft = old || text.tone() == Tone.SOFT;
        setText(text.text());
        setFont(soft ? table.getFont().deriveFont(Font.ITALIC) : table.getFont());
        setHorizontalAlignment(kind.numeric() ? SwingConstants.TRAILING : SwingConstants.LEADING);
        int beside = UIScale.scale(6);
        setBorder(focused ? FocusFrame.cell(table, beside) : BorderFactory.createEmptyBorder(0, beside, 0, beside));
        setToolTipText(text.tip().isEmpty() ? kind.tip() : text.tip());
        if (!selected) {
            setForeground((old ? Tone.SOFT : text.tone()).colour());
        }
        setIcon(
                switch (text.tone()) {
                    case ERROR -> new SeverityIcon(Severity.ERROR);
                    case WARNING -> new SeverityIcon(Severity.WARNING);
                    default -> model.sample(row, column).map(samples::icon).orElse(null);
                });
    }
}
