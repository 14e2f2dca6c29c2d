package org.ohmloom.workbench.window;

import com.formdev.flatlaf.FlatClientProperties;
import javax.swing.JButton;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.ohmloom.review.Cautions;
import org.ohmloom.workbench.settings.PreferenceStore;
import org.ohmloom.workbench.settings.Preferences;
import org.ohmloom.workbench.widget.WrappedText;
import org.ohmloom.workbench.words.Words;

/** The cautions above the views, until a person says that they are understood. */
final class CautionBanner extends JPanel {
    private static final Words WORDS = Words.of("window");

    private static final long serialVersionUID = 1L;

    CautionBanner(PreferenceStore preferences, Runnable more) {
        super(new MigLayout("insets 6 12 6 10, fillx", "[grow,fill][][]"));
        setName("cautions");
        putClientProperty(FlatClientProperties.STYLE, "background: $Ohmloom.warningGround");
        JButton all = new JButton(WORDS.get("caution-banner.all-cautions"));
        all.addActionListener(event -> more.run());
        JButton understood = new JButton(WORDS.get("caution-banner.understood"));
        understood.setName("understood");
        understood.addActionListener(event -> {
            preferences.change(Preferences::withCautionsRead);
            setVisible(false);
        });
        add(WrappedText.of(Words.said(Cautions.STANDING), "Label.foreground", 0), "growx, wmin 0");
        add(all);
        add(understood);
        setVisible(!preferences.now().cautions());
    }
}
