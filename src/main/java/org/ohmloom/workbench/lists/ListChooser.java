package org.ohmloom.workbench.lists;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.event.KeyEvent;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import javax.swing.DefaultListModel;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.ListCellRenderer;
import javax.swing.ListSelectionModel;
import javax.swing.ScrollPaneConstants;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.workbench.widget.CardPages;
import org.ohmloom.workbench.widget.CellPanel;
import org.ohmloom.workbench.widget.FilterField;
import org.ohmloom.workbench.widget.FocusFrame;
import org.ohmloom.workbench.widget.Keys;
import org.ohmloom.workbench.widget.Tone;
import org.ohmloom.workbench.words.Words;

/** All lists by name with how many rows each has, those without rows soft; a field above finds one by its name. */
final class ListChooser extends JPanel {

    private static final long serialVersionUID = 1L;

    /**
     * One list.
     *
     * @param title what it holds
     * @param rows  how many rows
     * @param page  its page
     */
    private record Entry(String title, int rows, JComponent page) {
        @Override
        public String toString() {
            return rows == 0 ? title : title + ", " + rows;
        }
    }

    private final CardPages pages;
    private final DefaultListModel<Entry> model = new DefaultListModel<>();
    private final JList<Entry> list = new JList<>(model);
    private final JTextField filter;
    private final JScrollPane scroll;
    private transient List<Entry> entries = List.of();
    private boolean quiet;

    ListChooser(CardPages pages) {
        super(new MigLayout("insets 4 6 0 4, fill, wrap 1, gapy 4", "[grow,fill]", "[][grow,fill]"));
        this.pages = pages;
        Words words = Words.of("lists");
        filter = new FilterField(8, words.get("find-list"), words.get("find-list.about"), this::refill);
        filter.setName("find-list");
        filter.addActionListener(event -> {
            refill();
            if (!model.isEmpty()) {
                list.setSelectedIndex(0);
                filter.setText("");
                list.requestFocusInWindow();
            }
        });
        // A list's own use of Ctrl+Insert, to copy, would take it from the command that adds.
        Keys.leave(list, Keys.menu(KeyEvent.VK_INSERT));
        list.setName("lists");
        list.getAccessibleContext().setAccessibleName(words.get("lists"));
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setCellRenderer(new Row());
        list.addListSelectionListener(event -> {
            if (!quiet && !event.getValueIsAdjusting() && list.getSelectedValue() != null) {
                pages.bring(list.getSelectedValue().page());
            }
        });
        scroll = new JScrollPane(
                list, ScrollPaneConstants.VERTICAL_SCROLLBAR_AS_NEEDED, ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        FocusFrame.around(scroll, list);
        add(filter, "wmin 40");
        add(scroll, "grow, push, hmin 40");
        pages.onChange(this::mark);
    }

    /** With room for the bar beside the names, which is there wherever they do not all fit. */
    @Override
    public Dimension getPreferredSize() {
        Dimension size = super.getPreferredSize();
        size.width += scroll.getVerticalScrollBar().getPreferredSize().width;
        return size;
    }

    /**
     * Shows all lists.
     *
     * @param titles what each holds, in the order of the pages
     * @param rows   how many rows each has
     */
    void show(List<String> titles, List<Integer> rows) {
        List<Entry> changed = IntStream.range(0, titles.size())
                .mapToObj(
                        k -> new Entry(titles.get(k), rows.get(k), pages.pages().get(k)))
                .toList();
        if (!changed.equals(entries)) {
            entries = changed;
            refill();
        }
    }

    private void refill() {
        String wanted = filter.getText().strip().toLowerCase(Locale.ROOT);
        quiet = true;
        model.clear();
        entries.stream()
                .filter(entry -> entry.title().toLowerCase(Locale.ROOT).contains(wanted))
                .forEach(model::addElement);
        quiet = false;
        mark();
    }

    /** Marks the list in front. */
    private void mark() {
        quiet = true;
        list.clearSelection();
        IntStream.range(0, model.size())
                .filter(k -> model.get(k).page() == pages.front())
                .findFirst()
                .ifPresent(k -> {
                    list.setSelectedIndex(k);
                    list.ensureIndexIsVisible(k);
                });
        quiet = false;
    }

    /** Name to the left, count to the right. */
    private static final class Row implements ListCellRenderer<Entry> {
        private final JPanel cell = new CellPanel(new MigLayout("insets 2 6 2 8, fill", "[grow,fill]8[24:,right]"));
        private final JLabel title = new JLabel();
        private final JLabel count = new JLabel();

        Row() {
            cell.add(title, "wmin 0");
            cell.add(count);
            count.putClientProperty(FlatClientProperties.STYLE, "font: -1");
        }

        @Override
        public Component getListCellRendererComponent(
                JList<? extends Entry> of, Entry entry, int index, boolean selected, boolean focus) {
            title.setText(entry.title());
            count.setText(entry.rows() == 0 ? "" : String.valueOf(entry.rows()));
            cell.setBackground(selected ? of.getSelectionBackground() : of.getBackground());
            title.setForeground(
                    selected
                            ? of.getSelectionForeground()
                            : entry.rows() == 0 ? Tone.SOFT.colour() : of.getForeground());
            count.setForeground(selected ? of.getSelectionForeground() : Tone.SOFT.colour());
            cell.getAccessibleContext().setAccessibleName(entry.toString());
            // otherwise it keeps asking for the room of the entry before
            cell.invalidate();
            return cell;
        }
    }
}
