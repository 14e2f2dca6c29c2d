package org.ohmloom.workbench.command;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.Component;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.ListCellRenderer;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.workbench.widget.CellPanel;
import org.ohmloom.workbench.widget.Keys;
import org.ohmloom.workbench.widget.Tone;

/** Paints a command with its keys; one that is not ready in grey. */
final class CommandRenderer implements ListCellRenderer<Command> {

    private final JPanel row = new CellPanel(new MigLayout("insets 5 8 5 8, fillx", "[grow]10[right]"));
    private final JLabel name = new JLabel();
    private final JLabel keys = new JLabel();

    CommandRenderer() {
        row.add(name, "wmin 0");
        row.add(keys);
        keys.putClientProperty(FlatClientProperties.STYLE, "font: -1");
    }

    @Override
    public Component getListCellRendererComponent(
            JList<? extends Command> list, Command command, int index, boolean selected, boolean focus) {
        name.setText(command.listed());
        keys.setText(command.keys().map(Keys::text).orElse(""));
        row.setBackground(selected ? list.getSelectionBackground() : list.getBackground());
        name.setForeground(
                selected
                        ? list.getSelectionForeground()
                        : command.isEnabled() ? list.getForeground() : Tone.SOFT.colour());
        keys.setForeground(selected ? list.getSelectionForeground() : Tone.SOFT.colour());
        row.getAccessibleContext().setAccessibleName(command.listed());
        return row;
    }
}
