package org.ohmloom.workbench.channel;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.BorderLayout;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JTabbedPane;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.Services;
import org.ohmloom.workbench.study.StudyPane;
import org.ohmloom.workbench.study.StudyTab;
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
    private final PinPlanPane pins;
    private final StudyPane<?> calibration;
    private final StudyPane<?> buses;
    private final JButton edit = new JButton(words.get("calibrate"));

    /** A pane. */
    public ChannelsPane(Desk desk, Services services, Samples samples) {
        super(new BorderLayout());
        this.desk = desk;
        this.pins = new PinPlanPane(desk, services);
        this.calibration = new StudyPane<>(new CalibrationStudy(), desk, services.painter(), samples);
        this.buses = new StudyPane<>(new BusStudy(), desk, services.painter(), samples);
        setName("view-" + KEY);
        tabs.setName("channels-lists");
        tabs.getAccessibleContext().setAccessibleName(words.get("tabs"));
        tabs.addTab(words.get("tab.pins"), pins);
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
        JPanel bar = new JPanel(new MigLayout("insets 2 0 2 8, fill", "push[]"));
        bar.setOpaque(false);
        edit.setName("channels-calibrate");
        edit.setToolTipText(words.get("calibrate.about"));
        edit.addActionListener(event -> desk.harness()
                .flatMap(now -> CalibrationDialog.ask(this, desk, services.painter()))
                .ifPresent(desk::apply));
        bar.add(edit);
        return bar;
    }

    private void refresh() {
        edit.setVisible(tabs.getSelectedComponent() == calibration);
        edit.setEnabled(desk.analysis().isPresent());
    }

    /** The plan of the pins. */
    PinPlanPane pins() {
        return pins;
    }

    @Override
    public String key() {
        return KEY;
    }

    @Override
    public String title() {
        return words.get("title");
    }

    @Override
    public String about() {
        return words.get("title.about");
    }

    @Override
    public JComponent front() {
        if (tabs.getSelectedComponent() == calibration) {
            return calibration.front();
        }
        return tabs.getSelectedComponent() == buses ? buses.front() : pins.front();
    }

    @Override
    public void showRows() {
        if (tabs.getSelectedComponent() == calibration) {
            calibration.showRows();
        } else if (tabs.getSelectedComponent() == buses) {
            buses.showRows();
        } else {
            pins.showRows();
        }
        refresh();
    }

    @Override
    public void showSelection() {
        if (tabs.getSelectedComponent() == calibration) {
            calibration.showSelection();
        } else if (tabs.getSelectedComponent() == buses) {
            buses.showSelection();
        } else {
            pins.showSelection();
        }
    }
}
