package org.ohmloom.draw.section;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ohmloom.BesideOthers;
import org.ohmloom.bundle.section.BundleInput;
import org.ohmloom.bundle.section.Member;
import org.ohmloom.bundle.section.Sections;
import org.ohmloom.bundle.section.SegmentSection;
import org.ohmloom.draw.Disc;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Item;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.draw.Text;
import org.ohmloom.graph.Routes;
import org.ohmloom.heat.ConductorResistance;
import org.ohmloom.model.Harness;
import org.ohmloom.store.HarnessFiles;
import org.ohmloom.tables.WireTables;

/** Pictures of cross-sections, of all segments of examples. */
@BesideOthers
class SectionPictureTest {
    private static final WireTables TABLES = WireTables.bundled();
    private static final SceneFonts FONTS = SceneFonts.load();
    private static final double DRAWN_MM = 1e-6;

    private static List<SegmentSection> sections(Harness harness) {
        ConductorResistance rows = new ConductorResistance(TABLES, TABLES.basis("road-vehicle"));
        return List.copyOf(Sections.of(new BundleInput(
                        harness,
                        TABLES,
                        "road-vehicle",
                        wire -> wire.gauge().map(gauge -> rows.row(wire, gauge)),
                        Routes.of(harness),
                        wire -> 0))
                .bySegment()
                .values());
    }

    private static Harness example(String name) throws Exception {
        return HarnessFiles.read(Path.of("examples", name + ".harness.json"));
    }

    @ParameterizedTest
    @CsvSource({"star-ground, 62, 74", "star-ground, 126, 120", "rescue-pickup, 62, 74", "workboat, 84, 72"})
    void everyWireIsDrawnOnceAndNothingLeavesThePicture(String name, double widthMm, double heightMm) throws Exception {
        Harness harness = example(name);
        for (SegmentSection section : sections(harness)) {
            Scene scene = SectionPicture.of(section, harness, FONTS, widthMm, heightMm);
            TreeSet<String> drawn = new TreeSet<>(scene.elements());
            TreeSet<String> expected = new TreeSet<>();
            section.members().stream().map(Member::id).forEach(expected::add);
            assertEquals(expected, drawn, section.segment().value());
            for (String id : expected) {
                long discs = scene.itemsOf(id).stream()
                        .filter(item -> item.mark() instanceof Disc)
                        .count();
                assertEquals(1, discs, id + " in " + section.segment());
            }
            for (Item item : scene.items()) {
                Extent bounds = item.mark().bounds();
                assertTrue(
                        bounds.leftMm() >= -DRAWN_MM
                                && bounds.topMm() >= -DRAWN_MM
                                && bounds.rightMm() <= widthMm + DRAWN_MM
                                && bounds.bottomMm() <= heightMm + DRAWN_MM,
                        section.segment() + ": " + item.mark().dump());
            }
        }
    }

    /** Inside the wire where it is thick enough, otherwise beside the bundle, outside its finished diameter. */
    @ParameterizedTest
    @CsvSource({"star-ground, 126, 120", "star-ground, 62, 74", "rescue-pickup, 62, 74"})
    void everyIdStandsOnceInItsWireOrBesideTheBundle(String example, double widthMm, double heightMm) throws Exception {
        Harness harness = example(example);
        int written = 0;
        for (SegmentSection section : sections(harness)) {
            Scene scene = SectionPicture.of(section, harness, FONTS, widthMm, heightMm);
            double outer = scene.items().stream()
                    .map(Item::mark)
                    .filter(Disc.class::isInstance)
                    .mapToDouble(mark -> ((Disc) mark).radiusMm())
                    .max()
                    .orElse(0);
            for (Member member : section.members()) {
                List<Item> items = scene.itemsOf(member.id());
                Disc disc = (Disc) items.stream()
                        .map(Item::mark)
                        .filter(Disc.class::isInstance)
                        .findFirst()
                        .orElseThrow();
                List<Text> names = items.stream()
                        .map(Item::mark)
                        .filter(Text.class::isInstance)
                        .map(Text.class::cast)
                        .toList();
                assertEquals(1, names.size(), member.id() + " in " + section.segment());
                Extent bounds = names.get(0).bounds();
                if (disc.bounds().contains(bounds.centre())) {
                    assertTrue(bounds.widthMm() < 2 * disc.radiusMm(), member.id());
                } else {
                    double beside = Math.abs(bounds.centre().xMm() - widthMm / 2) - bounds.widthMm() / 2;
                    assertTrue(section.covering().isEmpty() || beside > outer, member.id() + " beside the bundle");
                }
                written++;
            }
        }
        assertTrue(written > 40, written + " ids are written");
    }
}
