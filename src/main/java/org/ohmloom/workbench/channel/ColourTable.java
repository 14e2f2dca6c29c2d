package org.ohmloom.workbench.channel;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import javax.swing.DefaultCellEditor;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.UIManager;
import javax.swing.table.TableCellRenderer;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.WireColour;
import org.ohmloom.workbench.widget.ColumnHeads;
import org.ohmloom.workbench.widget.TextUndo;
import org.ohmloom.workbench.words.Words;

/** The table in which colours are typed. */
final class ColourTable extends JTable {

    private static final long serialVersionUID = 1L;

    private final transient Words words;

    ColourTable(ColourModel model, Words words) {
        super(model);
        this.words = words;
        String name = words.get("wiring.colours");
        setName("wiring-colours");
        getAccessibleContext().setAccessibleName(name);
        getTableHeader().getAccessibleContext().setAccessibleName(name);
        getTableHeader().setReorderingAllowed(false);
        ColumnHeads.begin(this);
        setSurrendersFocusOnKeystroke(true);
        setFillsViewportHeight(true);
        putClientProperty("terminateEditOnFocusLost", true);
        JTextField field = new JTextField();
        field.getAccessibleContext().setAccessibleName(name);
        TextUndo.install(field);
        setDefaultEditor(Object.class, new DefaultCellEditor(field));
        getColumnModel().getColumn(0).setMinWidth(UIScale.scale(184));
        getColumnModel().getColumn(1).setPreferredWidth(UIScale.scale(180));
    }

    /** Where no colours are typed, the usual ones stand instead, softer. */
    @Override
    public Component prepareRenderer(TableCellRenderer renderer, int row, int column) {
        Component cell = super.prepareRenderer(renderer, row, column);
        if (cell instanceof JLabel label) {
            boolean blank = label.getText().isBlank();
            if (blank) {
                label.setText(words.get(
                        "wiring.usual",
                        WireColour.usual(SignalClass.values()[row]).text()));
            }
            label.setForeground(
                    blank
                            ? UIManager.getColor("Ohmloom.soft")
                            : isCellSelected(row, column) ? getSelectionForeground() : getForeground());
        }
        return cell;
    }
}
