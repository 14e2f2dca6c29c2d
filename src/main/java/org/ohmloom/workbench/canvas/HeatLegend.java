package org.ohmloom.workbench.canvas;

import com.formdev.flatlaf.FlatClientProperties;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.util.List;
import java.util.Optional;
import javax.swing.JLabel;
import javax.swing.JPanel;
import org.ohmloom.draw.HeatScale;
import org.ohmloom.draw.HeatStep;
import org.ohmloom.draw.Line;
import org.ohmloom.draw.LinePattern;
import org.ohmloom.draw.Point;
import org.ohmloom.draw.SceneOptions;
import org.ohmloom.draw.ScenePainter;
import org.ohmloom.model.Harness;
import org.ohmloom.units.ShownUnits;
import org.ohmloom.workbench.desk.SceneQuestion;
import org.ohmloom.workbench.widget.Samples;
import org.ohmloom.workbench.words.TradeWords;
import org.ohmloom.workbench.words.Words;

/** The scale by which the layout is shaded: what is shown, in which state, and each step with its colour, width and limits. */
final class HeatLegend extends JPanel {

    private static final long serialVersionUID = 1L;

    /** Width of a sample of the middle step; wider than on the layout, so that steps can be told at a glance. */
    private static final double SAMPLE_MM = 0.8;

    private final transient Samples samples;

    HeatLegend(ScenePainter painter) {
        super(new FlowLayout(FlowLayout.LEADING, 12, 3));
        this.samples = new Samples(painter);
        setName("heat-legend");
        getAccessibleContext().setAccessibleName(Words.of("numbers").get("legend"));
        setVisible(false);
    }

    /** Shows the scale of a layout; nothing where it is not shaded. */
    void show(SceneQuestion question, Optional<HeatScale> scale) {
        SceneOptions options = question.view().options();
        boolean wanted = options.heat() && options.numbers() != SceneOptions.Numbers.NONE;
        removeAll();
        if (wanted) {
            Words words = Words.of("numbers");
            String about = words.get("about." + TradeWords.lower(options.numbers()));
            boolean ofState =
                    switch (options.numbers()) {
                        case SIZE, DIAMETER -> false;
                        default -> true;
                    };
            String whole = ofState ? words.get("legend.title", about, state(question, words)) : about;
            JLabel title = new JLabel(TradeWords.capital(whole));
            title.putClientProperty(FlatClientProperties.STYLE_CLASS, "small");
            add(title);
            scale.ifPresentOrElse(
                    known -> List.of(HeatStep.values())
                            .forEach(step -> add(sample(known.span(step), options.units(), step, words))),
                    () -> add(new JLabel(words.get("legend.none"))));
        }
        setVisible(wanted);
        revalidate();
        repaint();
    }

    private JLabel sample(HeatScale.Span span, ShownUnits units, HeatStep step, Words words) {
        String text = span.from().isEmpty()
                ? words.get("step.below", units.text(span.to()))
                : span.to().isEmpty()
                        ? words.get("step.from", units.text(span.from()))
                        : words.get("step.between", units.text(span.from()), units.text(span.to()));
        List<Point> points = List.of(new Point(0.8, 1.5), new Point(5.2, 1.5));
        Line line = new Line(points, SAMPLE_MM * step.widthRatio(), step.ink(), LinePattern.CONTINUOUS);
        JLabel label = new JLabel(text, samples.icon(line), JLabel.LEADING);
        label.putClientProperty(FlatClientProperties.STYLE_CLASS, "small");
        return label;
    }

    private static String state(SceneQuestion question, Words words) {
        Harness harness = question.harness();
        return question.view()
                .state()
                .map(id -> harness.states().find(id).map(state -> state.name()).orElse(id.value()))
                .orElseGet(() -> words.get("legend.worst"));
    }

    /** As high as the rows need that the width makes of it. */
    @Override
    public Dimension getPreferredSize() {
        Dimension all = super.getPreferredSize();
        int room = getParent() == null ? 0 : getParent().getWidth();
        if (room <= 0 || all.width <= room) {
            return all;
        }
        FlowLayout flow = (FlowLayout) getLayout();
        int x = flow.getHgap();
        int rows = 1;
        int high = 0;
        for (Component each : getComponents()) {
            Dimension size = each.getPreferredSize();
            high = Math.max(high, size.height);
            if (x > flow.getHgap() && x + size.width + flow.getHgap() > room) {
                rows++;
                x = flow.getHgap();
            }
            x += size.width + flow.getHgap();
        }
        return new Dimension(room, rows * (high + flow.getVgap()) + flow.getVgap());
    }
}
