package org.ohmloom.workbench.channel;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.BorderLayout;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTabbedPane;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.TakeOut;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.Services;
import org.ohmloom.workbench.study.StudyPane;
import org.ohmloom.workbench.study.StudyTab;
import org.ohmloom.workbench.study.TabName;
import org.ohmloom.workbench.widget.Samples;
import org.ohmloom.workbench.words.Words;

/** Sensors, outputs and the pins they go to: planned, locked and wired; their calibration, and the data buses. */
public final class ChannelsPane extends StudyTab {

    private static final long serialVersionUID = 1L;

    /** Key of the tab. */
    public static final String KEY = "channels";

    private final transient Words words = Words.of("channels");
    private final transient Desk desk;
    private final JTabbedPane tabs = new JTabbedPane();
    private final StudyTab calibration;
    private final StudyTab buses;
    private final JButton edit = new JButton(words.get("calibrate"));
    private final JButton free = new JButton(words.get("calibrate.new"));
    private final JButton bus = new JButton(words.get("bus.change"));
    private final JButton newBus = new JButton(words.get("bus.new"));
    private final JButton noBus = new JButton(words.get("bus.out"));

    /** A pane. */
    public ChannelsPane(Desk desk, Services services, Samples samples) {
        super(new BorderLayout(), TabName.of(KEY));
        this.desk = desk;
        this.calibration = new StudyPane<>(new CalibrationStudy(), desk, services.painter(), samples);
        StudyTab pins = new PinPlanPane(desk, services);
        this.buses = new StudyPane<>(new BusStudy(), desk, services.painter(), samples);
        tabs.setName("channels-lists");
        tabs.getAccessibleContext().setAccessibleName(words.get("tabs"));
        tabs.addTab(pins.title(), pins);
        tabs.addTab(calibration.title(), null, calibration, calibration.about());
        tabs.addTab(buses.title(), null, buses, buses.about());
        tabs.putClientProperty(FlatClientProperties.TABBED_PANE_TRAILING_COMPONENT, trailing(services));
        tabs.addChangeListener(event -> {
            showRows();
            showSelection();
        });
        add(tabs);
        refresh();
    }

    private JComponent trailing(Services services) {
        JPanel bar = new JPanel(new MigLayout("insets 2 0 2 8, fill, hidemode 3", "push[][][][][]"));
        bar.setOpaque(false);
        button(bar, edit, "calibrate", () -> CalibrationDialog.chosen(desk)
                .flatMap(each -> CalibrationDialog.ask(this, desk, services.painter(), each)));
        button(bar, free, "calibrate.new", () -> desk.harness()
                .map(Calibrated::fresh)
                .flatMap(each -> CalibrationDialog.ask(this, desk, services.painter(), each)));
        button(bar, bus, "bus.change", () -> BusDialog.chosen(desk).flatMap(each -> BusDialog.ask(this, desk, each)));
        button(bar, newBus, "bus.new", () -> desk.harness()
                .flatMap(now -> BusDialog.ask(this, desk, BusDialog.fresh(now))));
        button(bar, noBus, "bus.out", () -> BusDialog.chosen(desk).map(each -> new TakeOut(List.of(each.id()))));
        return bar;
    }

    private void button(JPanel bar, JButton made, String key, Supplier<Optional<? extends Edit>> edits) {
        made.setName("channels-" + key.replace('.', '-'));
        made.setToolTipText(words.get(key + ".about"));
        made.addActionListener(event -> edits.get().ifPresent(desk::apply));
        bar.add(made);
    }

    private void refresh() {
        boolean ofSensors = tabs.getSelectedComponent() == calibration;
        List.of(edit, free).forEach(each -> {
            each.setVisible(ofSensors);
            each.setEnabled(desk.harness().isPresent());
        });
        boolean ofBuses = tabs.getSelectedComponent() == buses;
        List.of(bus, newBus, noBus).forEach(each -> each.setVisible(ofBuses));
        boolean any = BusDialog.chosen(desk).isPresent();
        bus.setEnabled(any);
        noBus.setEnabled(any);
        newBus.setEnabled(desk.harness().isPresent());
    }

    private StudyTab shown() {
        return (StudyTab) tabs.getSelectedComponent();
    }

    @Override
    public JComponent front() {
        return shown().front();
    }

    @Override
    public void showRows() {
        shown().showRows();
        refresh();
    }

    @Override
    public void showSelection() {
        shown().showSelection();
    }
}
