package org.ohmloom.workbench.channel;

import com.formdev.flatlaf.util.UIScale;
import javax.swing.DefaultCellEditor;
import javax.swing.JTable;
import javax.swing.JTextField;
import org.ohmloom.workbench.widget.TextUndo;

/** The table in which colours are typed. */
final class ColourTable extends JTable {

    private static final long serialVersionUID = 1L;

    ColourTable(ColourModel model, String name) {
        super(model);
        setName("wiring-colours");
        getAccessibleContext().setAccessibleName(name);
        getTableHeader().getAccessibleContext().setAccessibleName(name);
        getTableHeader().setReorderingAllowed(false);
        setSurrendersFocusOnKeystroke(true);
        setFillsViewportHeight(true);
        putClientProperty("terminateEditOnFocusLost", true);
        JTextField field = new JTextField();
        field.getAccessibleContext().setAccessibleName(name);
        TextUndo.install(field);
        setDefaultEditor(Object.class, new DefaultCellEditor(field));
        getColumnModel().getColumn(0).setPreferredWidth(UIScale.scale(130));
        getColumnModel().getColumn(1).setPreferredWidth(UIScale.scale(190));
    }
}
