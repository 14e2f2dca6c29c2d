package org.ohmloom.workbench.record;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.CardLayout;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.model.NaturalOrder;
import org.ohmloom.units.Unit;
import org.ohmloom.workbench.command.Command;
import org.ohmloom.workbench.command.CommandButton;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.Document;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.desk.Selection;
import org.ohmloom.workbench.sheet.Sheet;
import org.ohmloom.workbench.sheet.SheetPane;
import org.ohmloom.workbench.sheet.SheetTable;
import org.ohmloom.workbench.study.StudyTab;
import org.ohmloom.workbench.study.TabName;
import org.ohmloom.workbench.widget.FilterField;
import org.ohmloom.workbench.widget.HelpPage;
import org.ohmloom.workbench.widget.Samples;
import org.ohmloom.workbench.widget.TextUndo;
import org.ohmloom.workbench.widget.WrapLayout;
import org.ohmloom.workbench.widget.WrappedLabel;
import org.ohmloom.workbench.words.TypedNumbers;
import org.ohmloom.workbench.words.Words;

/** The as-built record of one built harness: which one, with what and by whom, and below it what was measured. */
public final class RecordPane extends StudyTab {
    private static final Words WORDS = Words.of("as-built");

    private static final long serialVersionUID = 1L;

    /** Key of the tab. */
    public static final String KEY = "as-built";

    private final transient Desk desk;
    private final transient Clock clock;
    private final SheetPane<RecordSheet.Row> list;
    private final JComboBox<String> serial = new JComboBox<>();
    private final JTextField celsius = new JTextField(5);
    private final JTextField instrument = new JTextField(12);
    private final JTextField by = new JTextField(6);
    private final JTextField filter = new FilterField(
            11, WORDS.get("record.filter-rows"), WORDS.get("record.filter-rows.about"), this::applyFilter);
    private final WrappedLabel summary = new WrappedLabel(" ");
    private final JPanel nothing = new JPanel(new MigLayout("insets 24, fill, wrap 1", "[center]", "push[]push"));
    private boolean filling;
    private transient Optional<Document> shownOf = Optional.empty();

    /**
     * A pane.
     *
     * @param takeIn the command that takes in a filled-in sheet
     * @param clock  tells the date of values typed now
     */
    public RecordPane(Desk desk, Samples samples, Command takeIn, Clock clock) {
        super(new CardLayout(), TabName.of(KEY));
        this.desk = desk;
        this.clock = clock;
        list = new SheetPane<>(
                new RecordSheet(this::settings), desk, samples, desk::say, ids -> desk.select(Selection.of(ids)));
        list.table().setName("as-built-list");
        JPanel content = new JPanel(new MigLayout("insets 0, fill, gap 0, wrap 1"));
        content.add(head(takeIn), "growx, wmin 0");
        content.add(list, "grow, push, hmin 60");
        nothing.putClientProperty(FlatClientProperties.STYLE, "background: $Ohmloom.pane");
        nothing.add(new JLabel(WORDS.get("record.being-worked-out")));
        add(content, "content");
        add(nothing, "nothing");
    }

    private JComponent head(Command takeIn) {
        JPanel fields = new JPanel();
        WrapLayout.on(fields, 4);
        serial.setEditable(true);
        serial.setName("as-built-serial");
        serial.setPrototypeDisplayValue("000000000");
        serial.setToolTipText(WORDS.get("record.which-built-harness-of"));
        serial.addActionListener(event -> settingsChanged());
        labelled(fields, WORDS.get("record.serial-number"), serial, "w 80:130:160");
        labelled(fields, WORDS.get("record.at-c"), celsius, "w 40:56:56");
        labelled(fields, WORDS.get("record.instrument"), instrument, "w 60:130:130");
        labelled(fields, WORDS.get("record.by"), by, "w 40:64:64");
        celsius.setToolTipText(WORDS.get("record.temperature-of-the-conductors"));
        celsius.addActionListener(event -> settingsChanged());
        for (JTextField field : List.of(celsius, instrument, by)) {
            TextUndo.install(field);
        }
        JButton take = CommandButton.of(takeIn);
        take.setHideActionText(false);
        take.setName("as-built-take-in");
        HelpPage.name(take, "dialogs/take-in-values");
        fields.add(take);
        summary.putClientProperty(FlatClientProperties.STYLE, "foreground: $Ohmloom.soft");
        summary.setName("as-built-summary");
        JPanel head = new JPanel(new MigLayout("insets 2 4 4 6, fillx, wrap 2", "[grow,fill][]", "[][center]"));
        head.add(fields, "span 2, growx, wmin 0");
        head.add(summary, "growx, wmin 0");
        filter.setName("as-built-filter");
        head.add(filter);
        return head;
    }

    private void applyFilter() {
        list.table().filter(filter.getText());
    }

    private static void labelled(JPanel fields, String text, JComponent field, String width) {
        JLabel label = new JLabel(text);
        label.setLabelFor(field);
        field.getAccessibleContext().setAccessibleName(text);
        JPanel both = new JPanel(new MigLayout("insets 1, gapx 6", "", "[center]"));
        both.add(label);
        both.add(field, width + ", h pref!");
        fields.add(both);
    }

    private void settingsChanged() {
        if (!filling) {
            showRows();
        }
    }

    /** What holds for values typed now. */
    RecordSettings settings() {
        return new RecordSettings(
                words(String.valueOf(serial.getEditor().getItem())),
                temperature(),
                words(instrument.getText()),
                words(by.getText()),
                Optional.of(LocalDate.now(clock).toString()));
    }

    private OptionalDouble temperature() {
        try {
            return TypedNumbers.optional(celsius.getText(), Unit.DEGREE_CELSIUS);
        } catch (IllegalArgumentException wrong) {
            desk.say(WORDS.get("record.at-c-2", Words.said(wrong)));
            return OptionalDouble.empty();
        }
    }

    private static Optional<String> words(String text) {
        return Optional.of(text.strip()).filter(each -> !each.isEmpty() && !each.equals("null"));
    }

    /** What is listed. */
    public Sheet<?> sheet() {
        return list.sheet();
    }

    /** Shows the record of a built harness. */
    void showSerial(String number) {
        serial.getEditor().setItem(number);
        showRows();
    }

    @Override
    public JComponent front() {
        return list.table();
    }

    public SheetTable table() {
        return list.table();
    }

    /** What is said above the list. */
    String summaryText() {
        return summary.getText();
    }

    @Override
    public void showRows() {
        Optional<Readout> readout = Readout.of(desk);
        fillSerials(readout);
        list.show(readout);
        boolean any = list.table().getModel().getRowCount() > 0;
        ((CardLayout) getLayout()).show(this, any ? "content" : "nothing");
        String all = readout.flatMap(Readout::analysis)
                .filter(analysis -> !analysis.harness().readings().isEmpty())
                .map(analysis -> analysis.evidence().tests().record())
                .map(record -> WORDS.get("record.all-serial-numbers", record.told()))
                .orElse(WORDS.get("record.nothing-was-measured-yet"));
        summary.say(all);
        summary.setToolTipText(all);
    }

    private void fillSerials(Optional<Readout> readout) {
        filling = true;
        try {
            Object typed = serial.getEditor().getItem();
            List<String> known = readout.stream()
                    .flatMap(each -> each.harness().readings().all().stream())
                    .flatMap(reading -> reading.serialNumber().stream())
                    .distinct()
                    .sorted(NaturalOrder.INSTANCE)
                    .toList();
            boolean same = serial.getItemCount() == known.size() + 1;
            for (int k = 0; same && k < known.size(); k++) {
                same = known.get(k).equals(serial.getItemAt(k + 1));
            }
            if (!same) {
                serial.removeAllItems();
                serial.addItem("");
                known.forEach(serial::addItem);
                serial.getEditor().setItem(typed);
            }
            if (!shownOf.equals(desk.document())) {
                // Of a harness just opened the record that is there comes first, not an empty one.
                shownOf = desk.document();
                serial.getEditor().setItem(firstSerial(readout));
            }
        } finally {
            filling = false;
        }
    }

    private static String firstSerial(Optional<Readout> readout) {
        return readout.stream()
                .flatMap(each -> each.harness().readings().all().stream())
                .flatMap(reading -> reading.serialNumber().stream())
                .min(NaturalOrder.INSTANCE)
                .orElse("");
    }

    @Override
    public void showSelection() {}
}
