package org.ohmloom.draw.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.bundle.packing.ConcentricLay;
import org.ohmloom.bundle.section.CoveringFit;
import org.ohmloom.bundle.section.Member;
import org.ohmloom.bundle.section.SegmentSection;
import org.ohmloom.draw.Anchor;
import org.ohmloom.draw.Disc;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Fill;
import org.ohmloom.draw.Ink;
import org.ohmloom.draw.Item;
import org.ohmloom.draw.Layer;
import org.ohmloom.draw.Line;
import org.ohmloom.draw.LinePattern;
import org.ohmloom.draw.Mark;
import org.ohmloom.draw.Point;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.draw.SignalLook;
import org.ohmloom.draw.Text;
import org.ohmloom.draw.Weight;
import org.ohmloom.draw.Words;
import org.ohmloom.model.Harness;
import org.ohmloom.model.SignalClass;
import org.ohmloom.tables.CoveringSize;
import org.ohmloom.units.Formats;

/**
 * The cross-section of one bundle segment: wires at their real diameters in the ideal packing, or in their layers where they are
 * twisted, each edged in the colour of its signal class with its id, of a thin wire beside the bundle at the end of a line; the
 * practical diameter as a dashed circle; the covering as a ring round it.
 */
public final class SectionPicture {
    private static final double MARGIN_MM = 2;
    private static final double HEAD_MM = 2.4;
    private static final double WORDS_MM = 2;
    private static final double LINE_MM = 3.4;
    private static final double LEAST_ID_MM = 1.1;
    private static final double MOST_ID_MM = 2;
    private static final double THIN_MM = 0.13;
    private static final double EDGE_SHARE = 0.09;
    private static final double MOST_EDGE_MM = 0.7;
    private static final double MOST_SCALE = 8;
    private static final int CORNERS = 96;

    private final SegmentSection section;
    private final Harness harness;
    private final SceneFonts fonts;
    private final List<Item> items = new ArrayList<>();
    private final List<SideNames.Place> small = new ArrayList<>();

    private SectionPicture(SegmentSection section, Harness harness, SceneFonts fonts) {
        this.section = section;
        this.harness = harness;
        this.fonts = fonts;
    }

    /**
     * The picture on a rectangle.
     *
     * @param section  the cross-section
     * @param harness  its harness, for the classes of its wires
     * @param fonts    the drawing fonts
     * @param widthMm  width, mm, 20 or more
     * @param heightMm height, mm, 30 or more
     */
    public static Scene of(SegmentSection section, Harness harness, SceneFonts fonts, double widthMm, double heightMm) {
        return new SectionPicture(section, harness, fonts).scene(widthMm, heightMm);
    }

    private Scene scene(double widthMm, double heightMm) {
        List<String> words = words();
        text(section.segment().value(), widthMm, MARGIN_MM + HEAD_MM, HEAD_MM, Weight.BOLD, Ink.TEXT);
        double bottom = heightMm - MARGIN_MM - words.size() * LINE_MM;
        for (int k = 0; k < words.size(); k++) {
            text(
                    words.get(k),
                    widthMm,
                    bottom + (k + 1) * LINE_MM - 0.8,
                    WORDS_MM,
                    Weight.REGULAR,
                    k == 0 ? Ink.TEXT : Ink.SOFT_TEXT);
        }
        double top = MARGIN_MM + HEAD_MM + 2;
        double roomMm = Math.max(5, Math.min(widthMm - 2 * MARGIN_MM, bottom - top - 1));
        Point centre = new Point(widthMm / 2, (top + bottom - 1) / 2);
        if (!section.members().isEmpty()) {
            double largest = Math.min(MOST_SCALE, roomMm / section.finishedMm());
            boolean beside = section.members().stream().anyMatch(member -> idMm(member, largest) < LEAST_ID_MM);
            double room = Math.max(5, widthMm - 2 * (MARGIN_MM + SideNames.WIDE_MM));
            double scale = beside ? Math.min(largest, room / section.finishedMm()) : largest;
            draw(centre, scale);
            Extent area = new Extent(MARGIN_MM, top, widthMm - MARGIN_MM, bottom - 1);
            items.addAll(SideNames.items(small, centre, section.finishedMm() / 2 * scale, area, fonts));
        }
        return new Scene(widthMm, heightMm, items);
    }

    private void draw(Point centre, double scale) {
        rings(centre, scale);
        if (section.lay().isPresent()) {
            layers(section.lay().get(), centre, scale);
        } else {
            for (Member member : section.members()) {
                wire(
                        member,
                        centre.plus(member.disc().xMm() * scale, -member.disc().yMm() * scale),
                        scale);
            }
        }
    }

    private String say(String key, Object... values) {
        return fonts.said(Words.text(key, values));
    }

    private List<String> words() {
        List<String> words = new ArrayList<>();
        if (section.members().isEmpty()) {
            words.add(say("section.none"));
            return words;
        }
        words.add(say("section.finished", Words.wires(section.wireCount()), Formats.millimetres(section.finishedMm())));
        words.add(say(
                "section.ideal", Formats.millimetres(section.idealMm()), Formats.millimetres(section.practicalMm())));
        section.covering().ifPresent(fit -> {
            words.add(fit.size().words());
            bore(fit.size()).ifPresent(words::add);
        });
        words.add(say("section.bend", Formats.millimetres(section.bendLastingMm())));
        return words;
    }

    /** Bore and outside of what has a fixed bore. */
    private Optional<String> bore(CoveringSize size) {
        if (size.insideMaxMm().isEmpty() || size.insideMinMm().isPresent()) {
            return Optional.empty();
        }
        double bore = size.insideMaxMm().getAsDouble();
        return Optional.of(
                say("section.inside", Formats.millimetres(bore), Formats.millimetres(bore + 2 * size.wallMm())));
    }

    private void rings(Point centre, double scale) {
        Optional<CoveringFit> covering = section.covering();
        covering.ifPresent(fit -> {
            double outer = section.finishedMm() / 2 * scale;
            double inner = Math.max(0.1, outer - fit.size().wallMm() * scale);
            shape(new Disc(centre, outer, Fill.of(Ink.COMPONENT, Ink.FRAME, THIN_MM)), Layer.ZONES);
            shape(new Disc(centre, inner, Fill.of(Ink.GROUND, Ink.FRAME, THIN_MM)), Layer.ZONES);
        });
        double radius = section.practicalMm() / 2 * scale;
        List<Point> circle = new ArrayList<>();
        for (int k = 0; k <= CORNERS; k++) {
            double angle = 2 * Math.PI * k / CORNERS;
            circle.add(centre.plus(radius * Math.cos(angle), radius * Math.sin(angle)));
        }
        shape(new Line(circle, THIN_MM, Ink.RULE, LinePattern.DASHED), Layer.BUNDLES);
    }

    private void layers(ConcentricLay lay, Point centre, double scale) {
        for (ConcentricLay.Layer layer : lay.layers()) {
            for (int k = 0; k < layer.places(); k++) {
                double angle = 2 * Math.PI * k / layer.places() - Math.PI / 2;
                double reach = layer.pitchDiameterMm() / 2 * scale;
                Point place = centre.plus(reach * Math.cos(angle), reach * Math.sin(angle));
                if (k < layer.wires().size()) {
                    wire(section.members().get(layer.wires().get(k)), place, scale);
                } else {
                    shape(
                            new Disc(place, lay.placeMm() / 2 * scale, Fill.of(Ink.BUNDLE_INSIDE, Ink.RULE, THIN_MM)),
                            Layer.WIRES);
                }
            }
        }
    }

    private void wire(Member member, Point place, double scale) {
        double radius = member.disc().diameterMm() / 2 * scale;
        double edge = Math.min(MOST_EDGE_MM, 2 * radius * EDGE_SHARE);
        SignalClass signal = harness.wires().get(member.wires().get(0)).signalClass();
        String diameter = Formats.millimetres(member.disc().diameterMm());
        String description =
                member.id() + ", " + fonts.said(SignalLook.of(signal).word()) + ", "
                        + (member.isListed() ? diameter : say("section.estimated", diameter));
        items.add(Item.of(
                Layer.WIRES,
                new Disc(
                        place,
                        radius - edge / 2,
                        Fill.of(Ink.PLATE, SignalLook.of(signal).ink(), edge)),
                member.id(),
                description));
        double height = idMm(member, scale);
        if (height < LEAST_ID_MM) {
            small.add(new SideNames.Place(member.id(), description, place));
        } else {
            items.add(Item.of(
                    Layer.NUMBERS,
                    new Text(
                            member.id(),
                            place.plus(0, height / 2),
                            height,
                            fonts.widthMm(member.id(), Weight.REGULAR, height),
                            Anchor.MIDDLE,
                            0,
                            Weight.REGULAR,
                            Ink.TEXT),
                    member.id(),
                    description));
        }
    }

    /** Height of an id that fits into its wire, mm. */
    private double idMm(Member member, double scale) {
        double radius = member.disc().diameterMm() / 2 * scale;
        double edge = Math.min(MOST_EDGE_MM, 2 * radius * EDGE_SHARE);
        double room = 2 * (radius - edge) * 0.92;
        double wide = fonts.widthMm(member.id(), Weight.REGULAR, 1);
        return Math.min(MOST_ID_MM, Math.min(room / Math.hypot(wide, 1), room * 0.6));
    }

    private void text(String words, double widthMm, double baseMm, double heightMm, Weight weight, Ink ink) {
        double wide = fonts.widthMm(words, weight, heightMm);
        double height = heightMm * Math.min(1, (widthMm - 2 * MARGIN_MM) / wide);
        shape(
                new Text(
                        words,
                        new Point(widthMm / 2, baseMm),
                        height,
                        fonts.widthMm(words, weight, height),
                        Anchor.MIDDLE,
                        0,
                        weight,
                        ink),
                Layer.NUMBERS);
    }

    private void shape(Mark mark, Layer layer) {
        items.add(Item.of(layer, mark));
    }
}
