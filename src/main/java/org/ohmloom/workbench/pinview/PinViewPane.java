package org.ohmloom.workbench.pinview;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.Component;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import javax.swing.BorderFactory;
import javax.swing.DefaultListCellRenderer;
import javax.swing.DefaultListModel;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.edit.CavityFilling;
import org.ohmloom.edit.CavityUse;
import org.ohmloom.edit.EndOfWire;
import org.ohmloom.edit.PlugCavities;
import org.ohmloom.model.CavityGrid;
import org.ohmloom.model.Connector;
import org.ohmloom.model.ConnectorId;
import org.ohmloom.model.Element;
import org.ohmloom.model.Harness;
import org.ohmloom.model.PartId;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.Selection;
import org.ohmloom.workbench.study.StudyTab;
import org.ohmloom.workbench.study.TabName;
import org.ohmloom.workbench.widget.Choices;
import org.ohmloom.workbench.widget.HintLine;
import org.ohmloom.workbench.widget.Keys;
import org.ohmloom.workbench.widget.Samples;
import org.ohmloom.workbench.widget.WrapLayout;
import org.ohmloom.workbench.widget.WrappedLabel;
import org.ohmloom.workbench.words.TradeWords;
import org.ohmloom.workbench.words.Words;

/** One connector with its cavities as they lie, and the loose ends of wires beside it; what is selected elsewhere shows here. */
public final class PinViewPane extends StudyTab {

    private static final long serialVersionUID = 1L;

    /** Key of the tab. */
    public static final String KEY = "pin-view";

    private final transient Words words = Words.of("pin-view");
    private final transient Desk desk;
    private final CavityModel model = new CavityModel();
    private final CavityTable cavities;
    private final JComboBox<String> chooser = new JComboBox<>();
    private final JToggleButton mating = new JToggleButton(words.get("mating-side"));
    private final DefaultListModel<EndOfWire> ends = new DefaultListModel<>();
    private final JList<EndOfWire> loose = new JList<>(ends);
    private final WrappedLabel about = new WrappedLabel(" ");
    private final HintLine clashes = new HintLine("pin-view-clashes", words.get("keys"));
    private final JButton fill = new JButton(words.get("fill"));
    private final JButton plug = new JButton(words.get("plug"));
    private final JButton lift = new JButton(words.get("lift"));
    private boolean filling;

    /** A pane. */
    public PinViewPane(Desk desk, Samples samples) {
        super(new MigLayout("insets 0, fill, gap 0, wrap 1"), TabName.of(KEY));
        this.desk = desk;
        this.cavities = new CavityTable(model, new CavityRenderer(model, samples, words), words, desk::apply);
        add(head(), "growx, wmin 0");
        add(about, "growx, wmin 0, gap 8 8 0 2");
        JPanel middle = new JPanel(new MigLayout("insets 0, fill, gap 0", "[grow 100,fill][fill,150:200:220]"));
        JScrollPane board = new JScrollPane(cavities);
        board.setBorder(BorderFactory.createEmptyBorder(8, 8, 8, 8));
        middle.add(board, "grow, push");
        middle.add(beside(), "grow");
        add(middle, "grow, push");
        add(clashes, "growx, gap 10 10 4 4, wmin 0");
        cavities.getSelectionModel().addListSelectionListener(event -> chosenCavity());
        cavities.getColumnModel().getSelectionModel().addListSelectionListener(event -> chosenCavity());
    }

    private JComponent head() {
        JPanel head = new JPanel();
        WrapLayout.on(head, 4);
        JLabel label = new JLabel(words.get("connector"));
        label.setLabelFor(chooser);
        chooser.setName("pin-view-connector");
        chooser.getAccessibleContext().setAccessibleName(words.get("connector"));
        chooser.addActionListener(event -> {
            if (!filling) {
                chosenConnector()
                        .ifPresent(found ->
                                desk.select(Selection.of(List.of(found.id().value()))));
                showRows();
            }
        });
        about.putClientProperty(FlatClientProperties.STYLE, "foreground: $Ohmloom.soft");
        about.setName("pin-view-about");
        mating.setName("pin-view-side");
        mating.setToolTipText(words.get("mating-side.about"));
        mating.addActionListener(event -> showRows());
        fill.setName("pin-view-fill");
        fill.setToolTipText(words.get("fill.about"));
        fill.addActionListener(event -> fillCavities());
        plug.setName("pin-view-plug");
        plug.setToolTipText(words.get("plug.about"));
        plug.addActionListener(event -> plugUnused());
        lift.setName("pin-view-lift");
        lift.setToolTipText(words.get("lift.about"));
        lift.addActionListener(event -> cavities.liftChosen());
        head.add(label);
        head.add(chooser);
        for (JComponent each : List.of(mating, fill, plug, lift)) {
            head.add(each);
        }
        return head;
    }

    private JComponent beside() {
        JPanel beside = new JPanel(new MigLayout("insets 8 0 8 10, fill, wrap 1, gapy 4"));
        JLabel title = new JLabel(words.get("loose-ends"));
        title.setLabelFor(loose);
        loose.setName("pin-view-loose");
        loose.getAccessibleContext().setAccessibleName(words.get("loose-ends"));
        loose.setToolTipText(words.get("loose-ends.about"));
        loose.setCellRenderer(new DefaultListCellRenderer() {
            private static final long serialVersionUID = 1L;

            @Override
            public Component getListCellRendererComponent(
                    JList<?> list, Object value, int index, boolean selected, boolean focus) {
                return super.getListCellRendererComponent(list, text((EndOfWire) value), index, selected, focus);
            }
        });
        Keys.bind(loose, WHEN_FOCUSED, Keys.plain(KeyEvent.VK_ENTER), "put", () -> Optional.ofNullable(
                        loose.getSelectedValue())
                .ifPresent(cavities::putInChosen));
        CavityDrag.from(loose, cavities);
        beside.add(title);
        beside.add(new JScrollPane(loose), "grow, push");
        return beside;
    }

    private String text(EndOfWire end) {
        Wire wire = model.wire(end);
        String size = wire.gauge().map(desk.units()::size).orElse("");
        String colour = wire.colour().map(each -> each.text()).orElse("");
        String other = desk.harness().map(now -> end.other(now).text()).orElse("");
        return List.of(wire.id().value(), size, colour, TradeWords.signal(wire.signalClass()), words.get("to", other))
                .stream()
                .filter(each -> !each.isBlank())
                .collect(Collectors.joining("  ·  "));
    }

    private Optional<Connector> chosenConnector() {
        return Optional.ofNullable((String) chooser.getSelectedItem())
                .map(text -> text.split(" ", 2)[0])
                .flatMap(id -> desk.harness().flatMap(now -> now.connectors().find(new ConnectorId(id))));
    }

    private void chosenCavity() {
        lift.setEnabled(cavities.chosen().filter(use -> !use.ends().isEmpty()).isPresent());
    }

    /** Puts the selected loose ends, or all of them, into cavities that suit them. */
    private void fillCavities() {
        model.connector().ifPresent(connector -> {
            Harness now = desk.harness().orElseThrow();
            List<EndOfWire> wanted = loose.getSelectedValuesList();
            List<EndOfWire> all = new ArrayList<>();
            for (int k = 0; k < ends.size(); k++) {
                all.add(ends.get(k));
            }
            CavityFilling filled = CavityFilling.of(now, connector.id(), wanted.isEmpty() ? all : wanted);
            filled.edit().ifPresent(desk::apply);
            desk.say(words.get("filled", filled.cavities().size(), filled.left().size()));
        });
    }

    private void plugUnused() {
        model.connector().ifPresent(connector -> plugOf(desk.harness().orElseThrow(), connector)
                .ifPresentOrElse(
                        part -> desk.apply(PlugCavities.unused(desk.harness().orElseThrow(), connector.id(), part)),
                        () -> desk.say(words.get("no-plug"))));
    }

    /** The plug used in this connector already, or else most in the harness. */
    private static Optional<PartId> plugOf(Harness harness, Connector connector) {
        return connector.cavities().stream()
                .flatMap(cavity -> cavity.plug().stream())
                .findFirst()
                .or(() -> harness.connectors().all().stream()
                        .flatMap(each -> each.cavities().stream())
                        .flatMap(cavity -> cavity.plug().stream())
                        .collect(Collectors.groupingBy(part -> part, TreeMap::new, Collectors.counting()))
                        .entrySet()
                        .stream()
                        .max(Map.Entry.comparingByValue())
                        .map(Map.Entry::getKey));
    }

    @Override
    public JComponent front() {
        return cavities;
    }

    /** The cavities. */
    CavityTable cavities() {
        return cavities;
    }

    /** The line that says what cannot stay as it is. */
    String clashText() {
        return clashes.getText();
    }

    @Override
    public void showRows() {
        Optional<Harness> now = desk.harness();
        fillChooser(now);
        Optional<Connector> connector = chosenConnector();
        Optional<CavityUse> before = cavities.chosen();
        boolean other = model.show(
                now, connector, mating.isSelected() ? CavityGrid.Side.MATING_SIDE : CavityGrid.Side.WIRE_SIDE);
        cavities.arrange();
        if (other) {
            cavities.choose(0, 0);
        } else {
            before.flatMap(use -> model.place(use.cavity().name()))
                    .ifPresent(place -> cavities.choose(place[0], place[1]));
        }
        ends.clear();
        now.ifPresent(harness -> harness.wires().all().forEach(wire -> {
            if (wire.from() instanceof WireEnd.Loose) {
                ends.addElement(new EndOfWire(wire.id(), true));
            }
            if (wire.to() instanceof WireEnd.Loose) {
                ends.addElement(new EndOfWire(wire.id(), false));
            }
        }));
        String grid = connector.filter(each -> each.grid().isEmpty()).isPresent() ? words.get("in-order") : "";
        about.say(connector.map(this::matesWith).orElse(words.get("no-connector")) + grid);
        about.setToolTipText(about.getText());
        showClashes();
        fill.setEnabled(connector.isPresent() && !ends.isEmpty());
        plug.setEnabled(model.uses().stream().anyMatch(CavityUse::isFree));
        chosenCavity();
    }

    private String matesWith(Connector connector) {
        return connector
                .component()
                .map(id -> words.get("plugs-into", id))
                .or(() -> desk.harness()
                        .flatMap(now -> now.mate(connector))
                        .map(mate -> words.get("mates-with", mate.id())))
                .orElse(words.get("plugs-into-nothing"));
    }

    private void showClashes() {
        clashes.say(model.clashing().stream()
                .flatMap(use -> use.clashes().stream()
                        .map(clash -> use.cavity().name() + ": " + CavityModel.said(words, clash)))
                .collect(Collectors.joining("; ")));
    }

    private void fillChooser(Optional<Harness> now) {
        List<String> wanted = now.stream()
                .flatMap(harness -> harness.connectors().all().stream())
                .map(connector -> connector.id() + " " + connector.name())
                .toList();
        filling = true;
        try {
            Choices.put(chooser, wanted);
        } finally {
            filling = false;
        }
    }

    @Override
    public void showSelection() {
        desk.harness().ifPresent(now -> desk.selection()
                .lead()
                .flatMap(now::element)
                .flatMap(element -> connectorOf(now, element))
                .filter(found -> !model.connector().map(Connector::id).equals(Optional.of(found.id())))
                .ifPresent(found -> {
                    filling = true;
                    try {
                        chooser.setSelectedItem(found.id() + " " + found.name());
                    } finally {
                        filling = false;
                    }
                    showRows();
                }));
    }

    private static Optional<Connector> connectorOf(Harness now, Element element) {
        if (element instanceof Connector connector) {
            return Optional.of(connector);
        }
        if (element instanceof org.ohmloom.model.Component component) {
            return now.connectors().all().stream()
                    .filter(each ->
                            each.component().filter(component.id()::equals).isPresent())
                    .findFirst();
        }
        if (element instanceof Wire wire) {
            return wire.ends().stream()
                    .filter(WireEnd.AtCavity.class::isInstance)
                    .map(end -> now.connectors().get(((WireEnd.AtCavity) end).connector()))
                    .findFirst();
        }
        return Optional.empty();
    }
}
