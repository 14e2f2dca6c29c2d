package org.ohmloom.workbench.channel;

import com.formdev.flatlaf.util.UIScale;
import java.awt.CardLayout;
import java.awt.Component;
import java.awt.Dimension;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.DefaultListCellRenderer;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.Harness;
import org.ohmloom.signal.unit.UnitDescription;
import org.ohmloom.signal.unit.UnitLibrary;
import org.ohmloom.signal.unit.UnitSheetException;
import org.ohmloom.store.CsvTableException;
import org.ohmloom.workbench.desk.Services;
import org.ohmloom.workbench.widget.PaneTitle;
import org.ohmloom.workbench.widget.WrappedText;
import org.ohmloom.workbench.words.Words;

/** The units there are to choose from, the pins of the one looked at, and where it goes. */
final class UnitPane extends JPanel {

    private static final long serialVersionUID = 1L;

    private final transient Words words = Words.of("channels");
    private final transient Services services;
    private final transient Optional<Path> folder;
    private final DefaultListModel<UnitDescription> units = new DefaultListModel<>();
    private final JList<UnitDescription> list = new JList<>(units);
    private final UnitPins pins = new UnitPins(words);
    private final UnitForm form;
    private final CardLayout cards = new CardLayout();
    private final JPanel shown = new JPanel(cards);
    private final UnitPlace place;
    private final JLabel source = new JLabel(" ");
    private final WrappedText problem = WrappedText.of("", "Ohmloom.error", 0);
    private final JButton ok = new JButton(words.get("unit.put"));
    private final JButton open = new JButton(words.get("unit.file"));
    private final JButton change = new JButton(words.get("unit.change"));
    private transient Optional<UnitDescription> chosen = Optional.empty();

    /**
     * A pane.
     *
     * @param folder where to look for sheets
     * @param answer takes the edit that puts the unit in, or nothing when a person gives up
     */
    UnitPane(Harness harness, Optional<Path> folder, Services services, Consumer<Optional<Edit>> answer) {
        super(new MigLayout("insets 14 16 12 16, fill, wrap 2, gap 12 6, hidemode 3", "[270::,fill]12[grow,fill]"));
        this.services = services;
        this.folder = folder;
        this.place = new UnitPlace(harness, words);
        this.form = new UnitForm(words, services, folder, this::typed);
        setName("unit");
        UnitLibrary.shipped().forEach(units::addElement);
        list.setName("unit-list");
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.getAccessibleContext().setAccessibleName(words.get("unit.list"));
        list.setCellRenderer(new Titles());
        list.addListSelectionListener(event -> show(list.getSelectedValue()));
        add(PaneTitle.of(words.get("unit.list")));
        add(source, "wmin 0");
        JScrollPane titles = new JScrollPane(list);
        titles.setPreferredSize(new Dimension(UIScale.scale(280), UIScale.scale(260)));
        add(titles, "grow, pushy");
        shown.add(pins, "pins");
        shown.add(form, "form");
        shown.setPreferredSize(new Dimension(UIScale.scale(620), UIScale.scale(260)));
        add(shown, "grow, push");
        add(beside(), "growx");
        add(place, "growx");
        add(problem, "span 2, wmin 0, growx");
        add(buttons(answer), "span 2, growx");
        list.setSelectedIndex(0);
    }

    private JComponent beside() {
        JPanel beside = new JPanel(new MigLayout("insets 0, wrap 1", "[grow,fill]", "[]4[]push"));
        open.setName("unit-file");
        open.setToolTipText(words.get("unit.file.about"));
        open.addActionListener(event -> read());
        change.setName("unit-change");
        change.setToolTipText(words.get("unit.change.about"));
        change.addActionListener(event -> chosen.ifPresent(unit -> {
            list.clearSelection();
            cards.show(shown, "form");
            form.begin(unit);
        }));
        beside.add(open);
        beside.add(change);
        return beside;
    }

    private JComponent buttons(Consumer<Optional<Edit>> answer) {
        JPanel buttons = new JPanel(new MigLayout("insets 4 0 0 0, fillx", "push[][]"));
        ok.setName("unit-put");
        ok.addActionListener(event -> {
            try {
                answer.accept(Optional.of(place.edit(chosen.orElseThrow())));
            } catch (IllegalArgumentException refused) {
                say(Words.said(refused));
            }
        });
        JButton cancel = new JButton(words.get("cancel"));
        cancel.setName("unit-cancel");
        cancel.addActionListener(event -> answer.accept(Optional.empty()));
        buttons.add(ok, "split 2, tag ok");
        buttons.add(cancel, "tag cancel");
        return buttons;
    }

    private void read() {
        services.prompts().unitSheet(folder).ifPresent(file -> services.reader().execute(() -> {
            try {
                UnitDescription unit = UnitLibrary.find(String.valueOf(file));
                services.eventThread().execute(() -> {
                    units.addElement(unit);
                    list.setSelectedIndex(units.size() - 1);
                });
            } catch (CsvTableException | UnitSheetException unreadable) {
                services.eventThread().execute(() -> say(Words.said(unreadable)));
            }
        }));
    }

    private void show(UnitDescription unit) {
        if (unit != null) {
            cards.show(shown, "pins");
            choose(Optional.of(unit));
        }
    }

    /** What is typed into the form describes a unit now, or does not yet. */
    private void typed(Optional<UnitDescription> unit, String wrong) {
        choose(unit);
        say(wrong);
    }

    private void choose(Optional<UnitDescription> unit) {
        chosen = unit;
        unit.ifPresent(each -> {
            pins.show(each);
            place.propose(each);
            source.setText(words.get("unit.source", each.unit().pins().size(), each.source()));
        });
        say("");
        refresh();
    }

    private void refresh() {
        ok.setEnabled(chosen.isPresent());
        change.setEnabled(chosen.isPresent());
    }

    private void say(String text) {
        problem.setText(text);
        problem.setVisible(!text.isEmpty());
        revalidate();
    }

    JButton okButton() {
        return ok;
    }

    /** The list of units. */
    JList<UnitDescription> unitList() {
        return list;
    }

    /** What is wrong, if anything. */
    String problemText() {
        return problem.getText();
    }

    private static final class Titles extends DefaultListCellRenderer {
        private static final long serialVersionUID = 1L;

        @Override
        public Component getListCellRendererComponent(
                JList<?> of, Object value, int index, boolean selected, boolean focused) {
            UnitDescription unit = (UnitDescription) value;
            super.getListCellRendererComponent(of, unit.title(), index, selected, focused);
            setToolTipText(unit.title());
            return this;
        }
    }
}
