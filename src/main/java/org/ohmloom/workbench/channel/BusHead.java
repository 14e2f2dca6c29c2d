package org.ohmloom.workbench.channel;

import com.formdev.flatlaf.FlatClientProperties;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.model.BusId;
import org.ohmloom.model.DataBus;
import org.ohmloom.signal.bus.traffic.FramePacking;
import org.ohmloom.signal.bus.wiring.BusWiringStudy;
import org.ohmloom.tables.SignalTables;
import org.ohmloom.units.Formats;
import org.ohmloom.units.QuantityParser;
import org.ohmloom.units.Unit;
import org.ohmloom.workbench.widget.Choices;
import org.ohmloom.workbench.widget.TextChanges;
import org.ohmloom.workbench.widget.TextUndo;
import org.ohmloom.workbench.words.TypedNumbers;
import org.ohmloom.workbench.words.Words;

/** What a data bus is as a whole: its name, the limits it keeps, its bit rate, and how channels are put into messages. */
final class BusHead extends JPanel {

    private static final long serialVersionUID = 1L;

    private final transient Words words;
    private final transient SignalTables tables;
    private final transient DataBus before;
    private final JTextField name = new JTextField(18);
    private final JComboBox<String> kind = new JComboBox<>();
    private final JComboBox<String> rate = new JComboBox<>();
    private final JComboBox<String> identifiers = new JComboBox<>();
    private final JTextField valueBits = new JTextField(6);
    private final JTextField perFrame = new JTextField(6);
    private final JTextField first = new JTextField(6);
    private final JTextField jitter = new JTextField(6);

    /**
     * A head.
     *
     * @param changed called after every change
     */
    BusHead(Words words, SignalTables tables, DataBus bus, Runnable changed) {
        super(new MigLayout("insets 0, wrap 4, gap 8 6", "[right][grow,fill]14[right][grow,fill]"));
        this.words = words;
        this.tables = tables;
        this.before = bus;
        name.setText(bus.name());
        tables.limitSets().forEach(set -> kind.addItem(title(set)));
        kind.setSelectedIndex(Math.max(0, tables.limitSets().indexOf(BusWiringStudy.limitSet(bus, tables))));
        rate.setEditable(true);
        offerRates();
        rate.setSelectedItem(text(bus.bitsPerSecond()));
        identifiers.addItem(words.get("bus.head.bits", DataBus.SHORT_BITS));
        identifiers.addItem(words.get("bus.head.bits", DataBus.LONG_BITS));
        identifiers.setSelectedIndex(bus.identifierBits() == DataBus.LONG_BITS ? 1 : 0);
        bus.packing().ifPresent(packing -> {
            packing.signalBits().ifPresent(bits -> valueBits.setText(String.valueOf(bits)));
            packing.signalsPerFrame().ifPresent(most -> perFrame.setText(String.valueOf(most)));
            packing.firstIdentifier().ifPresent(from -> first.setText(BusText.identifier(from, DataBus.SHORT_BITS)));
            packing.jitterSeconds()
                    .ifPresent(
                            late -> jitter.setText(TypedNumbers.exact(Unit.MILLISECOND.fromCanonical(late)) + " ms"));
        });
        blank(valueBits, String.valueOf(DataBus.Packing.USUAL_BITS));
        blank(perFrame, words.get("bus.head.per-frame.blank"));
        blank(first, BusText.identifier(FramePacking.USUAL_FIRST_IDENTIFIER, DataBus.SHORT_BITS));
        blank(jitter, Formats.in(0, Unit.MILLISECOND));
        field("bus.head.name", "bus-name", name);
        field("bus.head.bits-of-value", "bus-value-bits", valueBits);
        field("bus.head.kind", "bus-kind", kind);
        field("bus.head.per-frame", "bus-per-frame", perFrame);
        field("bus.head.rate", "bus-rate", rate);
        field("bus.head.first", "bus-first", first);
        field("bus.head.identifiers", "bus-identifiers", identifiers);
        field("bus.head.jitter", "bus-jitter", jitter);
        kind.addActionListener(event -> {
            offerRates();
            changed.run();
        });
        rate.addActionListener(event -> changed.run());
        identifiers.addActionListener(event -> changed.run());
        for (JTextField each : List.of(name, valueBits, perFrame, first, jitter, typedRate())) {
            TextChanges.listen(each, changed);
            TextUndo.install(each);
        }
    }

    private JTextField typedRate() {
        JTextField typed = (JTextField) rate.getEditor().getEditorComponent();
        typed.getAccessibleContext().setAccessibleName(words.get("bus.head.rate"));
        return typed;
    }

    /** Says in a field that is left blank what is taken then. */
    private static void blank(JTextField field, String taken) {
        field.putClientProperty(FlatClientProperties.PLACEHOLDER_TEXT, taken);
    }

    private void field(String key, String called, JComponent field) {
        JLabel label = new JLabel(words.get(key));
        label.setLabelFor(field);
        field.setName(called);
        field.setToolTipText(words.get(key + ".about"));
        field.getAccessibleContext().setAccessibleName(words.get(key));
        add(label);
        add(field);
    }

    /** What people call a set of limits. */
    private String title(String set) {
        return tables.rates(set).stream()
                .findFirst()
                .flatMap(top -> tables.limit(set, top))
                .map(limit -> limit.title())
                .orElse(set);
    }

    private String set() {
        return tables.limitSets().get(Math.max(0, kind.getSelectedIndex()));
    }

    /** Offers the rates the limits list; one they list no row for gives way to their highest. */
    private void offerRates() {
        List<Double> listed = tables.rates(set());
        String typed = String.valueOf(rate.getEditor().getItem());
        Choices.put(rate, listed.stream().map(BusHead::text).toList());
        boolean serves = listed.stream().map(BusHead::text).anyMatch(typed::equals);
        rate.setSelectedItem(serves ? typed : text(listed.get(0)));
    }

    private static String text(double bitsPerSecond) {
        return Formats.in(bitsPerSecond / 1000, Unit.KILOBIT_PER_SECOND);
    }

    /** Bits of a channel's value. */
    int bitsOfValue() {
        return packing().orElse(DataBus.Packing.USUAL).valueBits();
    }

    /** Bits of the identifiers. */
    int identifierBits() {
        return identifiers.getSelectedIndex() == 1 ? DataBus.LONG_BITS : DataBus.SHORT_BITS;
    }

    private Optional<DataBus.Packing> packing() {
        DataBus.Packing typed = new DataBus.Packing(
                whole(valueBits, "bus.head.bits-of-value"),
                whole(perFrame, "bus.head.per-frame"),
                whole(first, "bus.head.first"),
                TypedNumbers.optional(jitter.getText(), Unit.MILLISECOND));
        return typed.equals(DataBus.Packing.USUAL) ? Optional.empty() : Optional.of(typed);
    }

    private Optional<Integer> whole(JTextField field, String key) {
        return field.getText().isBlank()
                ? Optional.empty()
                : Optional.of(BusText.whole(words, field.getText(), words.get(key)));
    }

    /**
     * The bus typed.
     *
     * @throws IllegalArgumentException when something does not fit; one sentence says what would be right
     */
    DataBus read(BusId id, List<DataBus.Node> nodes, List<DataBus.Termination> ends, List<DataBus.Sent> messages) {
        String typed = String.valueOf(rate.getEditor().getItem());
        OptionalDouble bits = typed.isBlank()
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                        QuantityParser.parse(typed, Unit.KILOBIT_PER_SECOND).canonical());
        String set = set();
        boolean same = set.equals(BusWiringStudy.limitSet(before, tables));
        return new DataBus(
                id,
                name.getText().strip(),
                bits.orElseThrow(() -> new IllegalArgumentException(words.get("bus.head.no-rate"))),
                identifierBits(),
                same ? before.limits() : Optional.of(set),
                nodes,
                ends,
                packing(),
                messages);
    }
}
