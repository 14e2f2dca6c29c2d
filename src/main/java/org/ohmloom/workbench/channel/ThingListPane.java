package org.ohmloom.workbench.channel;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Toolkit;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.DefaultCellEditor;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.table.DefaultTableCellRenderer;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.Harness;
import org.ohmloom.workbench.channel.ListedThing.Column;
import org.ohmloom.workbench.widget.FormTable;
import org.ohmloom.workbench.widget.Keys;
import org.ohmloom.workbench.widget.Tone;
import org.ohmloom.workbench.widget.WrappedText;
import org.ohmloom.workbench.words.Words;

/** A list of sensors and actuators typed row by row, or pasted from a spreadsheet. */
final class ThingListPane extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final int WIDTH = 1060;
    private static final int ROWS = 14;
    private static final List<Integer> WIDTHS = List.of(120, 150, 60, 100, 110, 180, 60, 60, 220);

    private final transient Words words = Words.of("channels");
    private final ThingListModel model;
    private final JTable table;
    private final JLabel summary = new JLabel(" ");
    private final JButton add = new JButton(words.get("list.add"));
    private final transient Consumer<String> clipboardProblem;

    /** A pane; the answer is empty when a person gives up. */
    ThingListPane(Harness harness, Consumer<Optional<Edit>> answer) {
        super(new MigLayout("insets 14 16 12 16, fill, wrap 1, gapy 6", "[grow,fill]"));
        this.model = new ThingListModel(words, harness);
        this.table = new FormTable(model, WIDTH, ROWS);
        this.clipboardProblem = summary::setText;
        setName("thing-list");
        add(WrappedText.of(words.get("list.about"), "Ohmloom.soft", 0), "wmin 0, w 1000!");
        prepare(harness);
        add(new JScrollPane(table), "grow, push");
        summary.setName("things-summary");
        add(summary, "wmin 0");
        add(buttons(answer));
        model.addTableModelListener(event -> refresh());
        refresh();
    }

    private void prepare(Harness harness) {
        table.setName("things");
        table.getAccessibleContext().setAccessibleName(words.get("list.title"));
        table.getTableHeader().getAccessibleContext().setAccessibleName(words.get("list.title"));
        table.getTableHeader().setReorderingAllowed(false);
        table.setSurrendersFocusOnKeystroke(true);
        table.putClientProperty("terminateEditOnFocusLost", true);
        table.setFillsViewportHeight(true);
        table.setCellSelectionEnabled(true);
        table.setDefaultRenderer(Object.class, new Cells());
        JTextField field = new JTextField();
        field.getAccessibleContext().setAccessibleName(words.get("list.title"));
        table.setDefaultEditor(Object.class, new DefaultCellEditor(field));
        List<String> places = new ArrayList<>(List.of(""));
        harness.breakouts().ids().forEach(id -> places.add(id.value()));
        List<String> types = new ArrayList<>(List.of(""));
        types.addAll(ListedType.allShown());
        table.getColumnModel().getColumn(Column.TYPE.ordinal()).setCellEditor(choosing(types));
        table.getColumnModel().getColumn(Column.WHERE.ordinal()).setCellEditor(choosing(places));
        for (int k = 0; k < WIDTHS.size(); k++) {
            table.getColumnModel().getColumn(k).setPreferredWidth(UIScale.scale(WIDTHS.get(k)));
        }
        Keys.bind(table, WHEN_ANCESTOR_OF_FOCUSED_COMPONENT, Keys.menu(KeyEvent.VK_V), "paste-list", this::paste);
        Keys.leave(table, KeyEvent.VK_F8);
    }

    private DefaultCellEditor choosing(List<String> choices) {
        JComboBox<String> box = new JComboBox<>(choices.toArray(new String[0]));
        box.putClientProperty("JComboBox.isTableCellEditor", true);
        box.getAccessibleContext().setAccessibleName(words.get("list.title"));
        return new DefaultCellEditor(box);
    }

    private JPanel buttons(Consumer<Optional<Edit>> answer) {
        JPanel buttons = new JPanel(new MigLayout("insets 0, fillx", "[][]push[][]"));
        JButton paste = new JButton(words.get("list.paste"));
        paste.setName("things-paste");
        paste.setToolTipText(words.get("list.paste.about"));
        paste.addActionListener(event -> paste());
        JButton remove = new JButton(words.get("unit.remove-row"));
        remove.setName("things-remove");
        remove.addActionListener(event -> {
            if (table.isEditing()) {
                table.getCellEditor().cancelCellEditing();
            }
            if (table.getSelectedRow() >= 0) {
                model.remove(table.getSelectedRow());
            }
        });
        add.setName("things-add");
        add.addActionListener(event -> {
            if (table.isEditing()) {
                table.getCellEditor().stopCellEditing();
            }
            if (model.unfit() == 0 && model.filled() > 0) {
                answer.accept(Optional.of(model.edit()));
            }
        });
        JButton cancel = new JButton(words.get("cancel"));
        cancel.setName("things-cancel");
        cancel.addActionListener(event -> answer.accept(Optional.empty()));
        buttons.add(paste);
        buttons.add(remove);
        buttons.add(add, "split 2, tag ok");
        buttons.add(cancel, "tag cancel");
        return buttons;
    }

    private void paste() {
        try {
            Object text = Toolkit.getDefaultToolkit().getSystemClipboard().getData(DataFlavor.stringFlavor);
            paste(String.valueOf(text));
        } catch (UnsupportedFlavorException | IOException | IllegalStateException noText) {
            clipboardProblem.accept(words.get("list.no-text"));
        }
    }

    /** Pastes a block at the selected cell, or at the first. */
    void paste(String block) {
        if (table.isEditing()) {
            table.getCellEditor().cancelCellEditing();
        }
        model.paste(block, table.getSelectedRow(), table.getSelectedColumn());
    }

    private void refresh() {
        int unfit = model.unfit();
        summary.setText(words.get("list.summary", model.filled(), unfit));
        add.setEnabled(unfit == 0 && model.filled() > 0);
    }

    JButton addButton() {
        return add;
    }

    /** How many rows there are, and how many do not fit. */
    String summaryText() {
        return summary.getText();
    }

    private final class Cells extends DefaultTableCellRenderer {
        private static final long serialVersionUID = 1L;

        @Override
        public Component getTableCellRendererComponent(
                JTable of, Object value, boolean selected, boolean focused, int row, int column) {
            super.getTableCellRendererComponent(of, value, selected, focused, row, column);
            setToolTipText(String.valueOf(value));
            if (!selected) {
                setForeground((column == Column.values().length ? Tone.ERROR : Tone.PLAIN).colour());
            }
            return this;
        }
    }
}
