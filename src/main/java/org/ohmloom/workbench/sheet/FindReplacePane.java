package org.ohmloom.workbench.sheet;

import java.awt.Dialog;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.workbench.widget.HelpPage;
import org.ohmloom.workbench.widget.PaneDialog;
import org.ohmloom.workbench.widget.TextUndo;
import org.ohmloom.workbench.words.Words;

/** Finds a text in the cells of a list and replaces it where a cell can be edited, as one step. */
public final class FindReplacePane extends JPanel {

    private static final long serialVersionUID = 1L;

    private final transient Words words = Words.of("sheets");
    private final SheetTable table;
    private final JTextField find = new JTextField(22);
    private final JTextField with = new JTextField(22);
    private final JCheckBox matchCase = new JCheckBox(words.get("match-case"));
    private final JCheckBox whole = new JCheckBox(words.get("whole-cell"));
    private final JCheckBox selected = new JCheckBox(words.get("selected-rows"));
    private final JLabel state = new JLabel(" ");
    private final JButton next = new JButton(words.get("find-next"));
    private final JButton replace = new JButton(words.get("replace-all"));
    private int at = -1;

    /** A pane for a list. */
    public FindReplacePane(SheetTable table) {
        super(new MigLayout("insets 12, fillx, wrap 2", "[][grow,fill]"));
        HelpPage.name(this, "dialogs/find-replace");
        this.table = table;
        field("find", find, words.get("find"));
        field("replace-with", with, words.get("replace-with"));
        for (JCheckBox box : List.of(matchCase, whole, selected)) {
            box.setName("find-" + box.getText());
            add(box, "skip 1");
        }
        selected.setSelected(table.getSelectedRowCount() > 1);
        state.setName("find-state");
        add(state, "span 2, growx");
        next.setName("find-next");
        next.addActionListener(event -> findNext());
        replace.setName("replace-all");
        replace.addActionListener(event -> replaceAll());
        find.addActionListener(event -> findNext());
        with.addActionListener(event -> replaceAll());
        add(next, "span 2, split 2, tag left, growx 0");
        add(replace, "tag ok, growx 0");
    }

    private void field(String name, JTextField field, String text) {
        JLabel label = new JLabel(text);
        label.setLabelFor(field);
        field.setName(name);
        field.getAccessibleContext().setAccessibleName(text);
        TextUndo.install(field);
        add(label);
        add(field);
    }

    private Optional<Pattern> pattern() {
        if (find.getText().isEmpty()) {
            return Optional.empty();
        }
        String quoted = Pattern.quote(find.getText());
        int flags = matchCase.isSelected() ? 0 : Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE;
        return Optional.of(Pattern.compile(whole.isSelected() ? "^" + quoted + "$" : quoted, flags));
    }

    private List<Integer> rows() {
        return selected.isSelected()
                ? IntStream.of(table.getSelectedRows()).boxed().toList()
                : IntStream.range(0, table.getRowCount()).boxed().toList();
    }

    /** Goes to the next cell that holds the text, round the end. */
    void findNext() {
        int columns = table.getColumnCount();
        int cells = table.getRowCount() * columns;
        Optional<Pattern> pattern = pattern();
        for (int k = 1; pattern.isPresent() && k <= cells; k++) {
            int cell = Math.floorMod(at + k, cells);
            int row = cell / columns;
            int column = cell % columns;
            String text = ((CellText) table.getValueAt(row, column)).exact();
            if (pattern.get().matcher(text).find()) {
                at = cell;
                table.changeSelection(row, column, false, false);
                state.setText(words.get("found", text));
                return;
            }
        }
        state.setText(words.get("not-found"));
    }

    /** What replacing would change. */
    CellChanges plan() {
        List<CellChanges.Cell> cells = new ArrayList<>();
        Optional<Pattern> pattern = pattern();
        if (pattern.isPresent()) {
            String then = Matcher.quoteReplacement(with.getText());
            for (int row : rows()) {
                for (int column = 0; column < table.getColumnCount(); column++) {
                    int modelRow = table.convertRowIndexToModel(row);
                    int modelColumn = table.convertColumnIndexToModel(column);
                    if (table.sheet().isCellEditable(modelRow, modelColumn)) {
                        String before = table.sheet().start(modelRow, modelColumn);
                        Matcher found = pattern.get().matcher(before);
                        if (found.find()) {
                            CellChanges.cell(table.sheet(), modelRow, modelColumn, found.replaceAll(then))
                                    .ifPresent(cells::add);
                        }
                    }
                }
            }
        }
        return new CellChanges(words.get("replace"), cells);
    }

    private void replaceAll() {
        CellChanges changes = plan();
        if (changes.cells().isEmpty()) {
            state.setText(words.get("nothing-to-replace"));
        } else {
            boolean done = table.change(changes);
            state.setText(done ? words.get("replaced", changes.fitting().size()) : " ");
        }
    }

    /** Fills the fields, as a person would. */
    void type(String found, String then) {
        find.setText(found);
        with.setText(then);
    }

    String stateText() {
        return state.getText();
    }

    /** Opens it in a window of its own that stays while the list is worked on. */
    public static void open(SheetTable table, String list) {
        PaneDialog dialog = new PaneDialog(
                table, "find-replace", Words.of("sheets").get("find-title", list), Dialog.ModalityType.MODELESS);
        dialog.fill(new FindReplacePane(table));
        dialog.setVisible(true);
    }
}
