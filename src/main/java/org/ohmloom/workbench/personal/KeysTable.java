package org.ohmloom.workbench.personal;

import java.awt.event.KeyAdapter;
import java.awt.event.KeyEvent;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.ListSelectionModel;
import javax.swing.table.AbstractTableModel;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.command.CommandBook;
import org.ohmloom.workbench.settings.PreferenceStore;
import org.ohmloom.workbench.widget.FormTable;
import org.ohmloom.workbench.widget.Keys;
import org.ohmloom.workbench.widget.PaneTitle;
import org.ohmloom.workbench.widget.WrappedText;
import org.ohmloom.workbench.words.Words;

/** Every command with its keys; with a row selected, the keys pressed next with Ctrl, Alt or a function key become its keys. */
final class KeysTable extends JPanel {

    private static final long serialVersionUID = 1L;
    private static final int WIDTH = 520;
    private static final int VISIBLE_ROWS = 12;
    private static final int HELD = KeyEvent.CTRL_DOWN_MASK | KeyEvent.ALT_DOWN_MASK | KeyEvent.META_DOWN_MASK;

    private final transient Words words = Words.of("personal");
    private final transient CommandBook book;
    private final transient PreferenceStore preferences;
    private final JTable table;
    private final WrappedText said = WrappedText.of(words.get("keys.about"), "Ohmloom.soft", 0);

    KeysTable(CommandBook book, PreferenceStore preferences) {
        super(new MigLayout("insets 0, fill, wrap 1, gapy 4", "[grow,fill]"));
        this.book = book;
        this.preferences = preferences;
        table = new FormTable(new Rows(), WIDTH, VISIBLE_ROWS);
        table.setName("keys");
        table.getAccessibleContext().setAccessibleName(words.get("keys"));
        table.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        table.addKeyListener(new KeyAdapter() {
            @Override
            public void keyPressed(KeyEvent event) {
                pressed(event);
            }
        });
        said.setName("keys-said");
        JButton usual = new JButton(words.get("keys.usual"));
        usual.setName("keys-usual");
        usual.addActionListener(event -> {
            keep(Map.of());
            said.setText(words.get("keys.about"));
        });
        add(PaneTitle.of(words.get("keys")));
        add(said, "wmin 0");
        add(new JScrollPane(table), "grow, push");
        add(usual, "growx 0, hmin pref");
    }

    JTable table() {
        return table;
    }

    private void pressed(KeyEvent event) {
        int row = table.getSelectedRow();
        int code = event.getKeyCode();
        boolean function = code >= KeyEvent.VK_F1 && code <= KeyEvent.VK_F12;
        boolean modifier = code == KeyEvent.VK_CONTROL
                || code == KeyEvent.VK_ALT
                || code == KeyEvent.VK_SHIFT
                || code == KeyEvent.VK_META
                || code == KeyEvent.VK_ALT_GRAPH;
        if (row < 0 || modifier) {
            return;
        }
        Command command = book.all().get(row);
        if (code == KeyEvent.VK_DELETE || code == KeyEvent.VK_BACK_SPACE) {
            event.consume();
            change(command, Optional.empty());
        } else if (function || (event.getModifiersEx() & HELD) != 0) {
            event.consume();
            change(command, Optional.of(KeyStroke.getKeyStrokeForEvent(event)));
        }
    }

    /** Gives a command keys, or none; says who has them when they are taken. */
    void change(Command command, Optional<KeyStroke> keys) {
        Optional<Command> other = book.all().stream()
                .filter(each ->
                        each != command && keys.isPresent() && each.keys().equals(keys))
                .findFirst();
        if (other.isPresent()) {
            said.setText(words.get(
                    "keys.taken", Keys.text(keys.orElseThrow()), other.get().name()));
            return;
        }
        Map<String, String> changed = new TreeMap<>(preferences.now().personal().keys());
        if (keys.equals(book.usualKeys(command.id()))) {
            changed.remove(command.id());
        } else {
            changed.put(command.id(), keys.map(KeyStroke::toString).orElse(""));
        }
        keep(changed);
        said.setText(words.get("keys.changed", command.listed()));
    }

    private void keep(Map<String, String> changed) {
        preferences.change(before -> before.withPersonal(before.personal().withKeys(changed)));
        book.rebind(changed);
        table.repaint();
    }

    private final class Rows extends AbstractTableModel {
        private static final long serialVersionUID = 1L;

        @Override
        public int getRowCount() {
            return book.all().size();
        }

        @Override
        public int getColumnCount() {
            return 2;
        }

        @Override
        public String getColumnName(int column) {
            return words.get(column == 0 ? "keys.command" : "keys.keys");
        }

        @Override
        public Object getValueAt(int row, int column) {
            Command command = book.all().get(row);
            return column == 0
                    ? command.listed()
                    : command.keys().map(Keys::text).orElse("");
        }
    }
}
