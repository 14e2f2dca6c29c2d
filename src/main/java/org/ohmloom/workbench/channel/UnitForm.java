package org.ohmloom.workbench.channel;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javax.swing.DefaultCellEditor;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.table.TableModel;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.signal.unit.UnitDescription;
import org.ohmloom.signal.unit.UnitSheet;
import org.ohmloom.signal.unit.UnitSheetException;
import org.ohmloom.store.CsvTableException;
import org.ohmloom.workbench.desk.Services;
import org.ohmloom.workbench.words.Words;

/** A unit typed as a table: its head first, then a row for each use of each pin; told at once whether it is one. */
final class UnitForm extends JPanel {

    private static final long serialVersionUID = 1L;

    private final transient Words words;
    private final transient Services services;
    private final transient Optional<Path> folder;
    private final transient BiConsumer<Optional<UnitDescription>, String> typed;
    private final transient UnitTableText text = new UnitTableText();
    private final JTable head;
    private final JTable pins;

    /**
     * A form.
     *
     * @param typed takes the unit typed so far, or nothing and what is wrong
     */
    UnitForm(
            Words words,
            Services services,
            Optional<Path> folder,
            BiConsumer<Optional<UnitDescription>, String> typed) {
        super(new MigLayout("insets 0, fill, wrap 1, gapy 4", "[grow,fill]"));
        this.words = words;
        this.services = services;
        this.folder = folder;
        this.typed = typed;
        this.head = table(text.head(), "unit-head", words.get("unit.head"));
        this.pins = table(text.pins(), "unit-form", words.get("unit.form"));
        pins.setAutoResizeMode(JTable.AUTO_RESIZE_OFF);
        text.choices().forEach((column, choices) -> pins.getColumnModel()
                .getColumn(column)
                .setCellEditor(choosing(choices, text.pins().getColumnName(column))));
        text.head().addTableModelListener(event -> check());
        text.pins().addTableModelListener(event -> check());
        add(new JScrollPane(head), "h 92!");
        add(new JScrollPane(pins), "grow, push");
        add(buttons());
    }

    private static JTable table(TableModel model, String name, String spoken) {
        JTable table = new JTable(model);
        table.setName(name);
        table.getAccessibleContext().setAccessibleName(spoken);
        table.getTableHeader().getAccessibleContext().setAccessibleName(spoken);
        table.getTableHeader().setReorderingAllowed(false);
        table.setSurrendersFocusOnKeystroke(true);
        table.putClientProperty("terminateEditOnFocusLost", true);
        JTextField field = new JTextField();
        field.getAccessibleContext().setAccessibleName(spoken);
        table.setDefaultEditor(Object.class, new DefaultCellEditor(field));
        return table;
    }

    private static DefaultCellEditor choosing(List<String> choices, String name) {
        JComboBox<String> box = new JComboBox<>(choices.toArray(new String[0]));
        box.putClientProperty("JComboBox.isTableCellEditor", true);
        box.getAccessibleContext().setAccessibleName(name);
        return new DefaultCellEditor(box);
    }

    private JPanel buttons() {
        JPanel buttons = new JPanel(new MigLayout("insets 0, gapx 6"));
        JButton more = new JButton(words.get("unit.add-row"));
        more.setName("unit-add-row");
        more.addActionListener(event -> {
            commit();
            text.addRow(pins.getSelectedRow());
            int row = Math.min(pins.getSelectedRow() + 1, pins.getRowCount() - 1);
            pins.changeSelection(row < 1 ? pins.getRowCount() - 1 : row, 0, false, false);
            pins.requestFocusInWindow();
        });
        JButton less = new JButton(words.get("unit.remove-row"));
        less.setName("unit-remove-row");
        less.addActionListener(event -> {
            if (pins.isEditing()) {
                pins.getCellEditor().cancelCellEditing();
            }
            if (pins.getSelectedRow() >= 0) {
                text.pins().removeRow(pins.getSelectedRow());
            }
        });
        JButton save = new JButton(words.get("unit.save"));
        save.setName("unit-save");
        save.setToolTipText(words.get("unit.save.about"));
        save.addActionListener(event -> save());
        buttons.add(more);
        buttons.add(less);
        buttons.add(save);
        return buttons;
    }

    /** Begins with a unit there is. */
    void begin(UnitDescription unit) {
        text.begin(unit);
        check();
        pins.requestFocusInWindow();
    }

    private void commit() {
        for (JTable table : List.of(head, pins)) {
            if (table.isEditing()) {
                table.getCellEditor().stopCellEditing();
            }
        }
    }

    private void check() {
        try {
            typed.accept(Optional.of(UnitSheet.read(text.csv(), words.get("unit.typed"))), "");
        } catch (UnitSheetException unfit) {
            typed.accept(
                    Optional.empty(),
                    Words.said(unfit.words(line -> words.text("unit.row", line - text.linesBefore()))));
        } catch (CsvTableException | IllegalArgumentException unfit) {
            typed.accept(Optional.empty(), Words.said(unfit));
        }
    }

    private void save() {
        commit();
        String csv = text.csv();
        services.prompts().fileForUnitSheet(folder, text.fileName()).ifPresent(file -> services.reader()
                .execute(() -> {
                    try {
                        Files.write(file, csv.getBytes(StandardCharsets.UTF_8));
                    } catch (IOException failed) {
                        services.eventThread().execute(() -> services.prompts()
                                .problem(
                                        words.get("unit.save"),
                                        words.get("unit.not-saved", file.toString(), Words.said(failed))));
                    }
                }));
    }

    /** What is typed, row by row, for readers of the table. */
    List<String> rows() {
        return IntStream.range(0, text.pins().getRowCount())
                .mapToObj(row -> IntStream.range(0, text.pins().getColumnCount())
                        .mapToObj(column -> String.valueOf(text.pins().getValueAt(row, column)))
                        .collect(Collectors.joining(",")))
                .toList();
    }
}
