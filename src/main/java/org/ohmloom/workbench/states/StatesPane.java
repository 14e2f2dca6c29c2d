package org.ohmloom.workbench.states;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Font;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.swing.BorderFactory;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.DefaultTableModel;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.edit.DuplicateElements;
import org.ohmloom.edit.NewThing;
import org.ohmloom.edit.PutElements;
import org.ohmloom.edit.TakeOut;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.OperatingState;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.Selection;
import org.ohmloom.workbench.study.StudyTab;
import org.ohmloom.workbench.study.TabName;
import org.ohmloom.workbench.widget.Choices;
import org.ohmloom.workbench.widget.FocusFrame;
import org.ohmloom.workbench.widget.HintLine;
import org.ohmloom.workbench.widget.ReadRows;
import org.ohmloom.workbench.widget.Tone;
import org.ohmloom.workbench.words.Words;

/** What every operating state sets, as a matrix; two states side by side with what they come to. */
public final class StatesPane extends StudyTab {

    private static final long serialVersionUID = 1L;

    /** Key of the tab. */
    public static final String KEY = "state-matrix";

    private final transient Words words = Words.of("state-matrix");
    private final transient Desk desk;
    private final MatrixModel model;
    private final MatrixTable table;
    private final JCheckBox compare = new JCheckBox(words.get("compare"));
    private final JComboBox<String> one = new JComboBox<>();
    private final JComboBox<String> other = new JComboBox<>();
    private final JCheckBox differs = new JCheckBox(words.get("only-differences"));
    private final DefaultTableModel results = new ReadRows(List.of());
    private final JTable resultTable = new JTable(results);
    private final JScrollPane resultScroll = new JScrollPane(resultTable);
    private final HintLine hint = new HintLine("states-hint", words.get("keys"));
    private boolean filling;

    /** A pane. */
    public StatesPane(Desk desk) {
        super(new BorderLayout(), TabName.of(KEY));
        this.desk = desk;
        this.model = new MatrixModel(words, desk::apply);
        this.table = new MatrixTable(model, words, hint::say);
        add(head(), BorderLayout.NORTH);
        JPanel middle = new JPanel(new MigLayout("insets 0, fill, gap 0, hidemode 3", "[grow,fill][]"));
        JScrollPane scroll = new JScrollPane(table);
        FocusFrame.around(scroll, table);
        middle.add(scroll, "grow, push");
        resultTable.setName("states-results");
        resultTable.getAccessibleContext().setAccessibleName(words.get("results"));
        resultTable.setDefaultRenderer(Object.class, new NumberRenderer());
        resultTable.setFillsViewportHeight(true);
        middle.add(resultScroll, "growy, w 42%:46%:50%");
        add(middle, BorderLayout.CENTER);
        hint.setBorder(BorderFactory.createEmptyBorder(4, 10, 4, 10));
        add(hint, BorderLayout.SOUTH);
    }

    private JComponent head() {
        JPanel head = new JPanel(new MigLayout("insets 6 10 6 8, fillx, hidemode 3", "[][][][][]push[][][]"));
        compare.setName("states-compare");
        compare.addActionListener(event -> showRows());
        head.add(compare);
        for (JComboBox<String> chooser : List.of(one, other)) {
            chooser.setName(chooser == one ? "states-one" : "states-other");
            chooser.getAccessibleContext().setAccessibleName(words.get(chooser == one ? "first" : "second"));
            chooser.addActionListener(event -> {
                if (!filling) {
                    showRows();
                }
            });
            head.add(chooser, "w 120:170:170");
        }
        differs.setName("states-differences");
        differs.addActionListener(event -> showRows());
        head.add(differs);
        button(head, "add", this::addState);
        button(head, "copy", this::copyState);
        button(head, "remove", this::removeState);
        return head;
    }

    private void button(JPanel head, String key, Runnable task) {
        JButton button = new JButton(words.get(key));
        button.setName("states-" + key);
        button.setToolTipText(words.get(key + ".about"));
        button.putClientProperty(FlatClientProperties.BUTTON_TYPE, FlatClientProperties.BUTTON_TYPE_TOOLBAR_BUTTON);
        button.addActionListener(event -> {
            if (table.commit()) {
                task.run();
            }
        });
        head.add(button);
    }

    private void addState() {
        desk.harness().ifPresent(now -> put(NewThing.STATE.added(now)));
    }

    private void copyState() {
        chosenState()
                .ifPresent(state ->
                        put(DuplicateElements.of(desk.harness().orElseThrow(), List.<ElementId>of(state.id()))));
    }

    private void removeState() {
        chosenState().ifPresent(state -> desk.apply(new TakeOut(List.of(state.id()))));
    }

    private void put(PutElements edit) {
        desk.apply(edit);
        desk.select(Selection.of(List.of(edit.elements().get(0).id().value())));
    }

    /** The state of the column with the focus, or else the only one there is. */
    private Optional<OperatingState> chosenState() {
        int column = table.getSelectedColumn() - MatrixModel.FIRST;
        List<OperatingState> states = model.states();
        if (column < 0 || column >= states.size()) {
            hint.say(words.get("select-state"));
            return Optional.empty();
        }
        return Optional.of(states.get(column));
    }

    @Override
    public JComponent front() {
        return table;
    }

    /** The matrix. */
    MatrixTable matrix() {
        return table;
    }

    /** The box that puts two states side by side. */
    JCheckBox compareBox() {
        return compare;
    }

    /** The box that leaves out rows in which they do not differ. */
    JCheckBox differencesBox() {
        return differs;
    }

    /** The numbers of two states. */
    JTable results() {
        return resultTable;
    }

    String hintText() {
        return hint.getText();
    }

    @Override
    public void showRows() {
        Optional<Harness> now = desk.harness();
        List<OperatingState> all =
                now.stream().flatMap(harness -> harness.states().all().stream()).toList();
        fill(all);
        boolean two = compare.isSelected() && all.size() >= 2;
        List<OperatingState> shown =
                two ? List.of(all.get(one.getSelectedIndex()), all.get(other.getSelectedIndex())) : all;
        int[] rows = table.getSelectedRows();
        int[] columns = table.getSelectedColumns();
        if (!table.isEditing()) {
            model.show(now, shown, two && differs.isSelected());
            table.arrange(two);
            restore(rows, columns);
        }
        compare.setEnabled(all.size() >= 2);
        for (JComponent each : List.of(one, other, differs, resultScroll)) {
            each.setVisible(two);
        }
        showResults(two ? shown : List.of());
        revalidate();
    }

    private void restore(int[] rows, int[] columns) {
        if (rows.length > 0
                && columns.length > 0
                && rows[rows.length - 1] < table.getRowCount()
                && columns[columns.length - 1] < table.getColumnCount()) {
            table.setRowSelectionInterval(rows[0], rows[rows.length - 1]);
            table.setColumnSelectionInterval(columns[0], columns[columns.length - 1]);
        }
    }

    private void fill(List<OperatingState> all) {
        List<String> names =
                all.stream().map(state -> state.id() + " " + state.name()).toList();
        filling = true;
        try {
            for (JComboBox<String> chooser : List.of(one, other)) {
                int index = Math.max(chooser == one ? 0 : 1, chooser.getSelectedIndex());
                if (Choices.put(chooser, names)) {
                    chooser.setSelectedIndex(Math.min(index, names.size() - 1));
                }
            }
        } finally {
            filling = false;
        }
    }

    private void showResults(List<OperatingState> states) {
        if (states.size() < 2) {
            return;
        }
        results.setDataVector(new Object[0][], new Object[] {
            words.get("number"),
            words.get("unit"),
            states.get(0).name(),
            states.get(1).name(),
            words.get("difference")
        });
        Harness now = desk.harness().orElseThrow();
        StateComparison comparison = StateComparison.of(
                now,
                desk.analysis().flatMap(found -> found.solution(states.get(0).id())),
                desk.analysis().flatMap(found -> found.solution(states.get(1).id())),
                words);
        for (StateComparison.Line line : comparison.lines()) {
            results.addRow(new Object[] {
                line.what(), line.unit(), text(line.one()), text(line.other()), signed(line.difference())
            });
        }
        resultTable.getColumnModel().getColumn(0).setPreferredWidth(190);
        resultTable.getColumnModel().getColumn(1).setPreferredWidth(28);
    }

    private String text(OptionalDouble value) {
        return value.isPresent() ? desk.units().number(value.getAsDouble()) : "–";
    }

    private String signed(OptionalDouble value) {
        if (value.isEmpty()) {
            return "–";
        }
        double number = value.getAsDouble();
        return number == 0 ? "0" : (number < 0 ? "−" : "+") + desk.units().number(Math.abs(number));
    }

    @Override
    public void showSelection() {}

    /** Numbers to the right; slanted and soft while newer ones are being worked out. */
    private final class NumberRenderer extends DefaultTableCellRenderer {
        private static final long serialVersionUID = 1L;

        @Override
        public Component getTableCellRendererComponent(
                JTable from, Object value, boolean selected, boolean focused, int row, int column) {
            super.getTableCellRendererComponent(from, value, selected, focused, row, column);
            boolean number = column >= 2;
            setHorizontalAlignment(number ? TRAILING : LEADING);
            setToolTipText(String.valueOf(value));
            boolean old = number && !desk.isCurrent();
            setFont(old ? from.getFont().deriveFont(Font.ITALIC) : from.getFont());
            if (!selected) {
                setForeground((old ? Tone.SOFT : Tone.PLAIN).colour());
            }
            return this;
        }
    }
}
