package org.ohmloom.workbench.channel;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTabbedPane;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.PutElements;
import org.ohmloom.model.DataBus;
import org.ohmloom.model.Harness;
import org.ohmloom.signal.bus.traffic.BusTraffic;
import org.ohmloom.signal.bus.traffic.PackedMessage;
import org.ohmloom.signal.channel.SensorChannel;
import org.ohmloom.tables.SignalTables;
import org.ohmloom.tables.WireTables;
import org.ohmloom.workbench.widget.HelpPage;
import org.ohmloom.workbench.words.Words;

/** A data bus as a form: what it is, its nodes in order, its terminations and messages, and what comes of them told as they are typed. */
final class BusPane extends JPanel {

    private static final long serialVersionUID = 1L;

    private final transient Words words = Words.of("channels");
    private final transient SignalTables tables = WireTables.bundled().signals();
    private final transient Harness harness;
    private final transient DataBus before;
    private final transient List<SensorChannel> channels;
    private final BusHead head;
    private final transient BusNodes nodes;
    private final transient BusEnds ends;
    private final transient BusMessages messages;
    private final JTabbedPane tabs = new JTabbedPane();
    private final JTextArea told = new JTextArea(7, 60);
    private final JButton ok = new JButton(words.get("bus.enter"));
    private transient Optional<DataBus> typed = Optional.empty();

    /**
     * A pane.
     *
     * @param bus      the bus as it is, or as a new one begins
     * @param channels channels of the harness
     * @param answer   takes the edit that enters it, or nothing when a person gives up
     */
    BusPane(Harness harness, DataBus bus, List<SensorChannel> channels, Consumer<Optional<Edit>> answer) {
        super(new MigLayout("insets 14 16 12 16, fill, wrap 1, gapy 8", "[grow,fill]"));
        this.harness = harness;
        this.before = bus;
        this.channels = channels;
        setName("bus-form");
        HelpPage.name(this, "dialogs/data-bus");
        this.head = new BusHead(words, tables, bus, this::refresh);
        this.nodes = new BusNodes(words, harness, bus.nodes());
        this.ends = new BusEnds(words, harness, bus.terminations(), this::nodesNow);
        this.messages = new BusMessages(words, bus.messages(), this::proposed, head::bitsOfValue, head::identifierBits);
        messages.senders(bus.nodes());
        add(head);
        tabs.setName("bus-tabs");
        tabs.getAccessibleContext().setAccessibleName(words.get("bus.tabs"));
        tabs.addTab(words.get("bus.nodes"), null, nodes.table(), words.get("bus.nodes.about"));
        tabs.addTab(words.get("bus.ends"), null, ends.table(), words.get("bus.ends.about"));
        tabs.addTab(words.get("bus.messages"), null, messages.table(), words.get("bus.messages.about"));
        add(tabs, "grow, push");
        told.setName("bus-told");
        told.setEditable(false);
        told.setLineWrap(true);
        told.setWrapStyleWord(true);
        told.getAccessibleContext().setAccessibleName(words.get("bus.told"));
        add(new JScrollPane(told), "growx, hmin 110");
        add(buttons(answer));
        nodes.table().onChange(row -> {
            ends.refresh();
            messages.senders(nodesNow());
            refresh();
        });
        ends.table().onChange(row -> refresh());
        messages.table().onChange(row -> refresh());
        refresh();
    }

    private JPanel buttons(Consumer<Optional<Edit>> answer) {
        ok.setName("bus-ok");
        ok.addActionListener(event -> {
            List.of(nodes.table(), ends.table(), messages.table()).forEach(TypedRows::commit);
            if (typed.isPresent()) {
                answer.accept(edit());
            }
        });
        JButton cancel = new JButton(words.get("cancel"));
        cancel.setName("bus-cancel");
        cancel.addActionListener(event -> answer.accept(Optional.empty()));
        JPanel buttons = new JPanel(new MigLayout("insets 0, fillx", "push[][]"));
        buttons.add(ok, "split 2, tag ok");
        buttons.add(cancel, "tag cancel");
        return buttons;
    }

    private Optional<Edit> edit() {
        return typed.filter(bus ->
                        !harness.element(bus.id().value()).filter(bus::equals).isPresent())
                .map(bus -> PutElements.one(words.text("bus.edit", bus.id()), bus));
    }

    private List<DataBus.Node> nodesNow() {
        try {
            return nodes.read();
        } catch (IllegalArgumentException unfit) {
            return List.of();
        }
    }

    /** Messages the packing makes of what no entered one carries. */
    private List<PackedMessage> proposed() {
        return typed.map(bus -> BusTraffic.of(bus, channels, tables).messages().stream()
                        .filter(each -> bus.messages().stream()
                                .noneMatch(own -> own.identifier()
                                                == each.message().identifier()
                                        && own.identifierBits()
                                                == each.message().format().identifierBits()))
                        .toList())
                .orElse(List.of());
    }

    private void refresh() {
        try {
            List<DataBus.Node> now = nodes.read();
            if (now.isEmpty()) {
                throw new IllegalArgumentException(words.get("bus.nodes.none"));
            }
            DataBus bus = head.read(before.id(), now, ends.read(), messages.read(now));
            typed = Optional.of(bus);
            tell(new BusTold(words, harness, tables, channels).lines(bus));
        } catch (IllegalArgumentException unfit) {
            typed = Optional.empty();
            tell(List.of(Words.said(unfit)));
        }
        ok.setEnabled(typed.isPresent());
    }

    private void tell(List<String> lines) {
        told.setText(String.join("\n", new ArrayList<>(lines)));
        told.setCaretPosition(0);
    }

    JButton okButton() {
        return ok;
    }

    /** What is told of the bus as it is typed. */
    String toldText() {
        return told.getText();
    }
}
