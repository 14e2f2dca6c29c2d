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
    private final JButton edit = new JButton(words.get("calibrate"));

    /** A pane. */
    public ChannelsPane(Desk desk, Services services, Samples samples) {
        super(new BorderLayout(), TabName.of(KEY));
        this.desk = desk;
        this.calibration = new StudyPane<>(new CalibrationStudy(), desk, services.painter(), samples);
        StudyTab pins = new PinPlanPane(desk, services);
        StudyTab buses = new StudyPane<>(new BusStudy(), desk, services.painter(), samples);
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
