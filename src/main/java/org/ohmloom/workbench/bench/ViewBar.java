package org.ohmloom.workbench.bench;

import com.formdev.flatlaf.FlatClientProperties;
import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JSeparator;
import javax.swing.JToggleButton;
import javax.swing.SwingConstants;
import org.ohmloom.workbench.widget.CardPages;
import org.ohmloom.workbench.widget.WrapLayout;
import org.ohmloom.workbench.words.Words;

/**
 * Chooses a view: the jobs first, then the views of the job in hand. A job that is chosen shows its view looked at last.
 */
final class ViewBar extends JPanel {

    private static final long serialVersionUID = 1L;

    /** The jobs in the order of a person's work, each with the keys of its views. */
    private static final Map<String, List<String>> JOBS = jobs();

    private final transient Words words = Words.of("views");
    private final CardPages pages;
    private final transient Map<String, JToggleButton> jobs = new LinkedHashMap<>();
    private final transient Map<JComponent, JToggleButton> views = new LinkedHashMap<>();
    private final transient Map<JComponent, String> jobOf = new HashMap<>();
    private final transient Map<String, JComponent> lastOf = new HashMap<>();

    ViewBar(CardPages pages) {
        this.pages = pages;
        setName("view-bar");
        WrapLayout.on(this, 2);
        JOBS.keySet().forEach(job -> {
            JToggleButton button = button("job-" + job, words.get("job." + job), words.get("job.about." + job));
            button.putClientProperty(FlatClientProperties.STYLE, "font: semibold");
            button.addActionListener(event -> {
                if (lastOf.containsKey(job)) {
                    pages.bring(lastOf.get(job));
                }
                mark();
            });
            jobs.put(job, button);
            add(button);
        });
        JSeparator line = new JSeparator(SwingConstants.VERTICAL);
        line.setPreferredSize(new Dimension(UIScale.scale(9), UIScale.scale(20)));
        add(line);
        pages.onChange(this::mark);
    }

    private static Map<String, List<String>> jobs() {
        Map<String, List<String>> jobs = new LinkedHashMap<>();
        jobs.put("draw", List.of("layout", "pin-view", "channels"));
        jobs.put(
                "run", List.of("currents", "state-matrix", "start-up", "charge", "combinations", "duty", "duty-range"));
        jobs.put("size", List.of("conductors", "protection", "returns", "tolerance"));
        jobs.put("build", List.of("fabrication", "as-built"));
        jobs.put("change", List.of("what-if", "revision"));
        return Collections.unmodifiableMap(jobs);
    }

    /** A view behind the others; one no job names belongs to the last job. */
    void addView(String key, String title, String about, JComponent page) {
        String job = JOBS.entrySet().stream()
                .filter(each -> each.getValue().contains(key))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElse("change");
        JToggleButton button = button("view-of-" + key, title, about);
        button.addActionListener(event -> {
            pages.bring(page);
            mark();
        });
        jobOf.put(page, job);
        lastOf.putIfAbsent(job, page);
        views.put(page, button);
    }

    /** Puts the views in the order of their jobs. */
    void arrange() {
        JOBS.forEach((job, keys) -> views.entrySet().stream()
                .filter(each -> jobOf.get(each.getKey()).equals(job))
                .forEach(each -> add(each.getValue())));
        mark();
    }

    private static JToggleButton button(String name, String text, String about) {
        JToggleButton button = new JToggleButton(text);
        button.setName(name);
        button.setToolTipText(about);
        button.getAccessibleContext().setAccessibleName(text);
        button.putClientProperty(FlatClientProperties.BUTTON_TYPE, FlatClientProperties.BUTTON_TYPE_TOOLBAR_BUTTON);
        return button;
    }

    private void mark() {
        JComponent front = pages.front();
        String job = jobOf.get(front);
        lastOf.put(job, front);
        jobs.forEach((each, button) -> button.setSelected(each.equals(job)));
        views.forEach((page, button) -> {
            button.setVisible(jobOf.get(page).equals(job));
            button.setSelected(page == front);
        });
        revalidate();
        repaint();
    }
}
