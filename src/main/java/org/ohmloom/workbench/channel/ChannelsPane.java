package org.ohmloom.workbench.channel;

import java.awt.BorderLayout;
import javax.swing.JComponent;
import javax.swing.JTabbedPane;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.Services;
import org.ohmloom.workbench.study.StudyTab;
import org.ohmloom.workbench.words.Words;

/** Sensors, outputs and the pins they go to: planned, locked and wired. */
public final class ChannelsPane extends StudyTab {

    private static final long serialVersionUID = 1L;

    /** Key of the tab. */
    public static final String KEY = "channels";

    private final transient Words words = Words.of("channels");
    private final JTabbedPane tabs = new JTabbedPane();
    private final PinPlanPane pins;

    /** A pane. */
    public ChannelsPane(Desk desk, Services services) {
        super(new BorderLayout());
        this.pins = new PinPlanPane(desk, services);
        setName("view-" + KEY);
        tabs.setName("channels-lists");
        tabs.getAccessibleContext().setAccessibleName(words.get("tabs"));
        tabs.addTab(words.get("tab.pins"), pins);
        add(tabs);
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
        return pins.front();
    }

    @Override
    public void showRows() {
        pins.showRows();
    }

    @Override
    public void showSelection() {
        pins.showSelection();
    }
}
