package org.ohmloom.workbench.drafting;

import java.awt.Component;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSpinner;
import javax.swing.JTextField;
import javax.swing.SpinnerNumberModel;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.edit.board.StartDevice;
import org.ohmloom.workbench.widget.Choices;
import org.ohmloom.workbench.widget.Spoken;
import org.ohmloom.workbench.widget.TextUndo;
import org.ohmloom.workbench.words.TradeWords;
import org.ohmloom.workbench.words.Words;

/** What can be set for the tools. */
final class ToolOptions {

    private static final int MOST_WAYS = 400;

    private ToolOptions() {}

    /** Kinds of component. */
    static JComboBox<StartDevice> kinds(String name) {
        JComboBox<StartDevice> kinds = new JComboBox<>(StartDevice.values());
        kinds.setSelectedItem(StartDevice.LAMP);
        kinds.setName("tool-kind");
        kinds.setMaximumRowCount(StartDevice.values().length);
        kinds.getAccessibleContext().setAccessibleName(name);
        kinds.setToolTipText(name);
        Choices.say(kinds, TradeWords::named);
        return kinds;
    }

    /** The kind that is chosen. */
    static StartDevice kind(JComboBox<StartDevice> kinds) {
        return kinds.getItemAt(Math.max(0, kinds.getSelectedIndex()));
    }

    /** Whether a component comes with a connector; follows the kind until it is set otherwise. */
    static JCheckBox plugged(Words words, JComboBox<StartDevice> kinds) {
        JCheckBox plugged =
                new JCheckBox(words.get("component.plugged"), kind(kinds).isPlugged());
        plugged.setName("tool-plugged");
        plugged.setToolTipText(words.get("component.plugged.about"));
        kinds.addActionListener(event -> plugged.setSelected(kind(kinds).isPlugged()));
        return plugged;
    }

    /** Count of cavities. */
    static JSpinner ways(String name) {
        JSpinner ways = new JSpinner(new SpinnerNumberModel(2, 1, MOST_WAYS, 1));
        ways.setName("tool-ways");
        Spoken.name(ways, name);
        ways.setToolTipText(name);
        JTextField field = ((JSpinner.DefaultEditor) ways.getEditor()).getTextField();
        field.setColumns(3);
        return ways;
    }

    /** A field to type into; Enter does something. */
    static JTextField field(String id, String name, int columns, Runnable task) {
        JTextField field = new JTextField(columns);
        field.setName(id);
        field.getAccessibleContext().setAccessibleName(name);
        field.setToolTipText(name);
        TextUndo.install(field);
        field.addActionListener(event -> task.run());
        return field;
    }

    /** Labelled parts side by side; a text before a part is its label. */
    static JPanel row(Object... parts) {
        JPanel row = new JPanel(new MigLayout("insets 0, gap 6", "", "[center]"));
        JLabel label = null;
        for (Object part : parts) {
            if (part instanceof String text) {
                label = new JLabel(text);
                row.add(label);
            } else {
                Component component = (Component) part;
                if (label != null) {
                    label.setLabelFor(component);
                }
                row.add(component);
                label = null;
            }
        }
        return row;
    }
}
