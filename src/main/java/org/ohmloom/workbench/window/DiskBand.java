package org.ohmloom.workbench.window;

import com.formdev.flatlaf.FlatClientProperties;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.review.Severity;
import org.ohmloom.workbench.desk.Desk;
import org.ohmloom.workbench.desk.DiskWatch;
import org.ohmloom.workbench.desk.Document;
import org.ohmloom.workbench.widget.EdgeLine;
import org.ohmloom.workbench.widget.HelpPage;
import org.ohmloom.workbench.widget.SeverityIcon;
import org.ohmloom.workbench.widget.WrappedText;
import org.ohmloom.workbench.words.Words;

/** Says above the views that somebody else changed the file of the document, and what can be done about it. */
final class DiskBand extends JPanel {

    private static final long serialVersionUID = 1L;

    private final transient Desk desk;
    private final transient DiskWatch watch;
    private final transient Words words = Words.of("disk");
    private final WrappedText text = WrappedText.of("", "Label.foreground", 0);
    private final JButton readAgain;
    private final JButton compare;

    /**
     * A band.
     *
     * @param comparing shows what differs from the file
     */
    DiskBand(Desk desk, DiskWatch watch, Runnable comparing) {
        super(new MigLayout("insets 6 12 6 10, fillx", "[][grow,fill][][][]"));
        this.desk = desk;
        this.watch = watch;
        setName("disk-band");
        HelpPage.name(this, "dialogs/saving");
        setBorder(EdgeLine.around());
        putClientProperty(FlatClientProperties.STYLE, "background: $Ohmloom.warningGround");
        text.setName("disk-text");
        readAgain = button("read-again", watch::readAgain);
        compare = button("compare", comparing);
        add(new JLabel(new SeverityIcon(Severity.WARNING)));
        add(text, "growx, wmin 0");
        add(compare);
        add(readAgain);
        add(button("keep-mine", watch::keepMine));
        watch.listen(this::refresh);
        refresh();
    }

    private JButton button(String key, Runnable task) {
        JButton button = new JButton(words.get(key));
        button.setName("disk-" + key);
        button.setToolTipText(words.get(key + ".about"));
        button.addActionListener(event -> task.run());
        return button;
    }

    private void refresh() {
        DiskWatch.Standing standing = watch.standing();
        boolean gone = standing == DiskWatch.Standing.GONE;
        String name = desk.document().map(Document::name).orElse("");
        text.setText(words.get(gone ? "gone" : "changed", name));
        text.getAccessibleContext().setAccessibleName(text.getText());
        readAgain.setEnabled(!gone);
        compare.setEnabled(!gone);
        setVisible(standing != DiskWatch.Standing.SAME);
        revalidate();
    }
}
