package org.ohmloom.workbench.drafting;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import org.ohmloom.draw.Point;
import org.ohmloom.edit.Compound;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.NewThing;
import org.ohmloom.edit.PutElements;
import org.ohmloom.edit.board.PaintZone;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.Component;
import org.ohmloom.model.Connector;
import org.ohmloom.model.Element;
import org.ohmloom.model.GroundPoint;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Zone;
import org.ohmloom.model.ZoneId;
import org.ohmloom.units.Formats;
import org.ohmloom.workbench.desk.Topic;
import org.ohmloom.workbench.widget.Choices;
import org.ohmloom.workbench.widget.Tone;
import org.ohmloom.workbench.words.Words;

/** Says in which zone things lie: a click paints one thing, dragging all that lies wholly within the rectangle. */
final class ZoneTool extends BoardTool {

    private final JComboBox<ZoneChoice> zones = new JComboBox<>();
    private final JComponent options;

    /**
     * A zone to choose.
     *
     * @param zone  the zone; empty for none, or for one to be made
     * @param added whether it is to be made
     * @param text  what it is called
     */
    record ZoneChoice(Optional<ZoneId> zone, boolean added, String text) {

        @Override
        public String toString() {
            return text;
        }
    }

    ZoneTool(Easel easel) {
        super(easel);
        zones.setName("tool-zones");
        zones.getAccessibleContext().setAccessibleName(easel.words().get("zone.about"));
        zones.setToolTipText(easel.words().get("zone.about"));
        options = ToolOptions.row(easel.words().get("zone"), zones);
        easel.desk().listen(topic -> {
            if (topic == Topic.DOCUMENT || topic == Topic.HARNESS) {
                fill();
            }
        });
        fill();
    }

    private void fill() {
        Choices.put(zones, choices(easel()));
    }

    /** The zones there are, none, and a new one. */
    static List<ZoneChoice> choices(Easel easel) {
        Words words = easel.words();
        List<ZoneChoice> all = new ArrayList<>();
        for (Zone zone : easel.harness().map(now -> now.zones().all()).orElse(List.of())) {
            String text = words.get("zone.choice", zone.name(), Formats.celsius(zone.ambientCelsius()));
            all.add(new ZoneChoice(Optional.of(zone.id()), false, text));
        }
        all.add(new ZoneChoice(Optional.empty(), false, words.get("zone.none")));
        all.add(new ZoneChoice(Optional.empty(), true, words.get("zone.new")));
        return all;
    }

    private ZoneChoice choice() {
        return zones.getItemAt(Math.max(0, zones.getSelectedIndex()));
    }

    @Override
    public String key() {
        return "zone";
    }

    @Override
    public void hint() {
        easel().say("hint.zone");
    }

    @Override
    public Optional<JComponent> options() {
        return Optional.of(options);
    }

    /** Whether a thing can lie in a zone. */
    static boolean canLie(Element element) {
        return element instanceof BundleSegment
                || element instanceof Component
                || element instanceof Connector
                || element instanceof GroundPoint;
    }

    @Override
    List<Point> targets() {
        return easel().centres(ZoneTool::canLie);
    }

    @Override
    void put(Aim at) {
        paint(easel().under(at.scene(), ZoneTool::canLie).stream().limit(1).toList());
    }

    @Override
    void drawn(Aim from, Aim to) {
        PickedArea area = new PickedArea(false, from.scene());
        area.to(to.scene());
        paint(easel().canvas().scene().stream()
                .flatMap(scene -> area.picked(scene).stream())
                .filter(id -> easel().is(id, ZoneTool::canLie))
                .toList());
    }

    private void paint(List<String> ids) {
        if (ids.isEmpty()) {
            easel().wrong(easel().words().get("zone.nothing"));
            return;
        }
        easel().harness().ifPresent(harness -> {
            ZoneChoice choice = choice();
            easel().apply(edit(harness, ids, choice));
            if (choice.added()) {
                fill();
                zones.setSelectedIndex(Math.max(0, zones.getItemCount() - 3));
            }
            easel().say("zone.painted", String.valueOf(ids.size()), choice.text());
        });
    }

    /** The edit that puts things into a zone, into a new one, or out of theirs. */
    static Edit edit(Harness harness, List<String> ids, ZoneChoice choice) {
        if (!choice.added()) {
            return new PaintZone(ids, choice.zone());
        }
        PutElements made = NewThing.ZONE.added(harness);
        Edit paint =
                new PaintZone(ids, Optional.of((ZoneId) made.elements().get(0).id()));
        return new Compound(paint.label(), List.of(made, paint));
    }

    @Override
    void preview(Graphics2D g, Aim at) {
        draggedFrom().ifPresent(start -> {
            PickedArea area = new PickedArea(false, start.scene());
            area.to(at.scene());
            Shape shape = easel().canvas().transform().affine().createTransformedShape(area.outline());
            g.setColor(Tone.colour("Ohmloom.selection"));
            g.setStroke(new BasicStroke(UIScale.scale(1.2f)));
            g.draw(shape);
        });
        label(g, at.scene(), choice().text());
    }
}
