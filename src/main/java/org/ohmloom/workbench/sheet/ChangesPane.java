package org.ohmloom.workbench.sheet;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.event.KeyEvent;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.edit.Edit;
import org.ohmloom.workbench.widget.ColumnHeads;
import org.ohmloom.workbench.widget.HelpPage;
import org.ohmloom.workbench.widget.Keys;
import org.ohmloom.workbench.widget.PaneDialog;
import org.ohmloom.workbench.widget.Tone;
import org.ohmloom.workbench.words.Words;

/** What would change in the cells of a list, cell by cell, with what does not fit; nothing changes before a person agrees. */
public final class ChangesPane extends JPanel {

    private static final long serialVersionUID = 1L;

    private final transient Words words = Words.of("sheets");
    private final transient CellChanges changes;
    private final transient Consumer<Optional<Edit>> answer;
    private final JCheckBox leaveOut = new JCheckBox(words.get("leave-out"));
    private final JButton apply = new JButton();

    /**
     * A pane.
     *
     * @param changes what would change
     * @param answer  takes what a person agrees to, or nothing
     */
    public ChangesPane(CellChanges changes, Consumer<Optional<Edit>> answer) {
        super(new MigLayout("insets 12, fill, wrap 1, gapy 8, hidemode 3", "[grow,fill]"));
        HelpPage.name(this, "dialogs/paste");
        this.changes = changes;
        this.answer = answer;
        int refused = changes.refused().size();
        int fitting = changes.fitting().size();
        JLabel summary = new JLabel(words.get("changes", fitting, refused));
        summary.setName("changes-summary");
        add(summary);
        JTable table = table();
        JScrollPane scroll = new JScrollPane(table);
        scroll.setPreferredSize(new Dimension(UIScale.scale(720), UIScale.scale(300)));
        add(scroll, "grow, push");
        leaveOut.setName("changes-leave-out");
        leaveOut.setVisible(refused > 0 && fitting > 0);
        leaveOut.addActionListener(event -> refresh());
        add(leaveOut);
        apply.setName("changes-apply");
        apply.setText(changes.what());
        apply.addActionListener(event -> answer.accept(changes.edit()));
        JButton cancel = new JButton(words.get("cancel"));
        cancel.setName("changes-cancel");
        cancel.addActionListener(event -> answer.accept(Optional.empty()));
        add(apply, "split 2, tag ok, growx 0");
        add(cancel, "tag cancel, growx 0");
        refresh();
    }

    private void refresh() {
        boolean whole = changes.refused().isEmpty() || leaveOut.isSelected();
        apply.setEnabled(whole && !changes.fitting().isEmpty());
    }

    private JTable table() {
        JTable table = new JTable(new Model(changes, words));
        ColumnHeads.begin(table);
        table.setName("changes");
        table.getAccessibleContext().setAccessibleName(words.get("changes-name"));
        table.setFillsViewportHeight(true);
        table.setDefaultRenderer(Object.class, new Renderer(changes));
        int[] widths = {90, 110, 130, 130, 260};
        for (int k = 0; k < widths.length; k++) {
            table.getColumnModel().getColumn(k).setPreferredWidth(UIScale.scale(widths[k]));
        }
        // Tab leaves the table, since nothing is typed here.
        Keys.leaveByTab(table);
        Keys.leave(table, KeyEvent.VK_ENTER);
        return table;
    }

    /** The button that agrees. */
    JButton applyButton() {
        return apply;
    }

    /** The box that leaves out what does not fit. */
    JCheckBox leaveOutBox() {
        return leaveOut;
    }

    /** Shows a dialog and waits for the answer. */
    public static Optional<Edit> ask(Component owner, CellChanges changes) {
        return new PaneDialog(owner, "changes-dialog", Words.of("sheets").get("title", changes.what()))
                .ask(answer -> new ChangesPane(changes, answer), ChangesPane::applyButton);
    }

    private static final class Model extends AbstractTableModel {
        private static final long serialVersionUID = 1L;

        private final transient CellChanges changes;
        private final transient Words words;

        Model(CellChanges changes, Words words) {
            this.changes = changes;
            this.words = words;
        }

        @Override
        public int getRowCount() {
            return changes.cells().size();
        }

        @Override
        public int getColumnCount() {
            return 5;
        }

        @Override
        public String getColumnName(int column) {
            return words.get(
                    switch (column) {
                        case 0 -> "row";
                        case 1 -> "column";
                        case 2 -> "before";
                        case 3 -> "after";
                        default -> "problem";
                    });
        }

        @Override
        public Object getValueAt(int row, int column) {
            CellChanges.Cell cell = changes.cells().get(row);
            return switch (column) {
                case 0 -> cell.row();
                case 1 -> cell.column();
                case 2 -> cell.before();
                case 3 -> cell.after();
                default -> cell.problem();
            };
        }
    }

    private static final class Renderer extends DefaultTableCellRenderer {
        private static final long serialVersionUID = 1L;

        private final transient CellChanges changes;

        Renderer(CellChanges changes) {
            this.changes = changes;
        }

        @Override
        public Component getTableCellRendererComponent(
                JTable table, Object value, boolean selected, boolean focused, int row, int column) {
            super.getTableCellRendererComponent(table, value, selected, focused, row, column);
            setToolTipText(String.valueOf(value));
            boolean wrong = !changes.cells().get(row).problem().isEmpty();
            if (!selected) {
                setForeground((wrong && column >= 3 ? Tone.ERROR : Tone.PLAIN).colour());
            }
            return this;
        }
    }
}
