package org.ohmloom.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.bundle.section.SegmentSection;
import org.ohmloom.bundle.section.SupportPlan;
import org.ohmloom.model.Assembly;
import org.ohmloom.model.Breakout;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.GroundPoint;
import org.ohmloom.model.Harness;
import org.ohmloom.model.PartId;
import org.ohmloom.model.Strap;
import org.ohmloom.model.ZoneId;
import org.ohmloom.pack.page.Block;
import org.ohmloom.pack.page.Cell;
import org.ohmloom.pack.page.Column;
import org.ohmloom.pack.page.Report;
import org.ohmloom.pack.page.Row;
import org.ohmloom.units.Unit;

/**
 * How the finished assemblies go into the vehicle: where they lie and are held, the ground points, in which order everything is
 * mated, and the fasteners for it.
 */
final class InstallationSheet {
    private static final String REMARK =
            "The battery stays disconnected until the last stage. Protective devices are fitted"
                    + " after the tests of the test sheet, one at a time.";

    private static final List<Column> ROUTE = List.of(
            Column.tick("Done"),
            Column.code("Segment").mentioning(),
            Column.code("Assembly"),
            Column.words("From"),
            Column.words("To"),
            Column.words("Zone"),
            Column.number("Length", Unit.MILLIMETRE, 0),
            Column.number("Diameter", Unit.MILLIMETRE, 1),
            Column.number("Bend radius, least", Unit.MILLIMETRE, 0),
            Column.count("Supports", 0),
            new Column("Supports at", Unit.MILLIMETRE.symbol(), Column.Kind.CODE, 0, true),
            Column.words("Mind"));

    private static final List<Column> MATING = List.of(
            Column.tick("Done"),
            Column.count("Step", 0),
            Column.fileOnly("Stage"),
            Column.code("Join").mentioning(),
            Column.words("Name"),
            Column.words("To"),
            Column.words("Wires"),
            Column.words("Then"),
            Column.blank("By, date"));

    private static final List<Column> FASTENERS = List.of(
            Column.count("Count", 0),
            Column.words("Fastener"),
            Column.code("Part").mentioning(),
            Column.words("For"));

    private final Analysis analysis;
    private final Harness harness;
    private final Wording wording;

    InstallationSheet(Analysis analysis) {
        this.analysis = analysis;
        this.harness = analysis.harness();
        this.wording = new Wording(harness);
    }

    Report report() {
        List<Block> blocks = new ArrayList<>(FirstPage.blocks(harness));
        assemblies().ifPresent(blocks::add);
        blocks.add(new Block.Heading("Lay and hold"));
        blocks.add(new Block.Prose("Supports are measured from the end that stands under From."));
        blocks.add(new Block.Table("route", ROUTE, route(), "The harness has no bundle segments."));
        blocks.addAll(new JointTables(analysis).groundBlocks());
        blocks.add(new Block.Heading("Mate in this order (common practice, no source)"));
        blocks.add(new Block.Table("mating", MATING, mating(), "Nothing is to be mated."));
        blocks.add(new Block.Heading("Fasteners"));
        blocks.add(new Block.Table("fasteners", FASTENERS, fasteners(), "No fastener is asked for."));
        return new Report(blocks, REMARK);
    }

    private Optional<Block> assemblies() {
        if (harness.assemblies().isEmpty()) {
            return Optional.empty();
        }
        List<String> lines = new ArrayList<>();
        for (Assembly assembly : harness.assemblies().all()) {
            lines.add(assembly.number() + " revision " + assembly.revision() + ", " + assembly.name());
        }
        long alone = harness.wires().all().stream()
                .filter(wire -> !wire.existing() && wire.assembly().isEmpty())
                .count();
        if (alone > 0) {
            lines.add(Wording.count(alone, "wire") + " in no assembly: laid one by one in the vehicle");
        }
        return Optional.of(new Block.Points(lines));
    }

    private List<Row> route() {
        List<Row> rows = new ArrayList<>();
        for (BundleSegment segment : harness.segments().all()) {
            Optional<SegmentSection> section = analysis.evidence().bundles().of(segment.id());
            Optional<SupportPlan> supports = section.map(SegmentSection::supports);
            rows.add(Row.of(
                    Cell.empty(),
                    Cell.text(segment.id().value()).toned(Cell.Tone.STRONG),
                    Cell.text(segment.assembly().map(harness.assemblies()::get).map(Assembly::number)),
                    Cell.text(named(harness.breakouts().get(segment.from()))),
                    Cell.text(named(harness.breakouts().get(segment.to()))),
                    Cell.text(segment.zone().map(this::zone)),
                    Cell.number(Unit.MILLIMETRE.fromCanonical(segment.lengthMetres())),
                    section.map(each -> Cell.number(each.finishedMm())).orElse(Cell.empty()),
                    section.map(each -> Cell.number(each.bendLastingMm())).orElse(Cell.empty()),
                    supports.map(each -> Cell.number(each.supportMetres().size()))
                            .orElse(Cell.empty()),
                    Cell.text(supports.map(InstallationSheet::places)),
                    Cell.text(passage(segment))));
        }
        return rows;
    }

    private static String named(Breakout breakout) {
        return breakout.id() + " " + breakout.name();
    }

    private String zone(ZoneId id) {
        return harness.zones().get(id).name();
    }

    private static String places(SupportPlan plan) {
        return plan.supportMetres().stream()
                .map(metres -> String.valueOf(Math.round(Unit.MILLIMETRE.fromCanonical(metres))))
                .collect(Collectors.joining(", "));
    }

    /** Where a segment meets one of another zone it goes through a wall or an edge. */
    private String passage(BundleSegment segment) {
        TreeSet<String> passages = new TreeSet<>();
        for (BundleSegment other : harness.segments().all()) {
            if (segment.zone().isPresent()
                    && other.zone().isPresent()
                    && !other.zone().equals(segment.zone())) {
                for (var end : List.of(segment.from(), segment.to())) {
                    if (end.equals(other.from()) || end.equals(other.to())) {
                        passages.add("at " + end + " into " + zone(other.zone().get()));
                    }
                }
            }
        }
        return passages.isEmpty() ? "" : "grommet or edge guard " + String.join(", ", passages);
    }

    private List<Row> mating() {
        List<Row> rows = new ArrayList<>();
        Optional<MatingOrder.Stage> before = Optional.empty();
        int step = 0;
        for (MatingOrder.Joint joint : new MatingOrder(harness).joints()) {
            if (!before.equals(Optional.of(joint.stage()))) {
                rows.add(Row.group(joint.stage().words()));
                before = Optional.of(joint.stage());
            }
            rows.add(Row.of(
                    Cell.empty(),
                    Cell.number(++step),
                    Cell.text(joint.stage().words()),
                    Cell.text(joint.what()).toned(Cell.Tone.STRONG),
                    Cell.text(joint.name()),
                    Cell.text(joint.to()),
                    Cell.text(joint.wires().stream()
                            .map(wire -> wire.id()
                                    + wire.gauge()
                                            .map(gauge -> " " + Wording.size(gauge))
                                            .orElse(""))
                            .collect(Collectors.joining(", "))),
                    Cell.text(joint.lock().map(part -> "close lock " + part)),
                    Cell.empty()));
        }
        return rows;
    }

    private List<Row> fasteners() {
        List<Row> rows = new ArrayList<>();
        SortedMap<Long, List<String>> bySize = new TreeMap<>();
        SortedMap<Long, Integer> supports = new TreeMap<>();
        for (BundleSegment segment : harness.segments().all()) {
            analysis.evidence()
                    .bundles()
                    .of(segment.id())
                    .filter(section -> !section.supports().supportMetres().isEmpty())
                    .ifPresent(section -> {
                        long size = Fixings.sizeMm(section);
                        supports.merge(size, section.supports().supportMetres().size(), Integer::sum);
                        bySize.computeIfAbsent(size, key -> new ArrayList<>())
                                .add(segment.id().value());
                    });
        }
        supports.forEach((size, count) -> rows.add(Row.of(
                Cell.number(count),
                Cell.text(Fixings.support(size).english()),
                Cell.missing(Wording.NOT_CHOSEN),
                Cell.text(String.join(", ", bySize.get(size))))));
        SortedMap<PartId, List<String>> byPart = new TreeMap<>();
        List<String> unknown = new ArrayList<>();
        for (GroundPoint ground : harness.grounds().all()) {
            if (!ground.existing()) {
                put(byPart, unknown, ground.part(), ground.id().value());
            }
        }
        byPart.forEach((part, uses) -> rows.add(Row.of(
                Cell.number(uses.size()),
                Cell.text(harness.parts().get(part).description()),
                Cell.text(part.value()),
                Cell.text(String.join(", ", uses)))));
        if (!unknown.isEmpty()) {
            rows.add(Row.of(
                    Cell.number(unknown.size()),
                    Cell.text("ground fasteners"),
                    Cell.missing(Wording.NOT_CHOSEN),
                    Cell.text(String.join(", ", unknown))));
        }
        for (Strap strap : harness.straps().all()) {
            if (strap.existing()) {
                continue;
            }
            rows.add(Row.of(
                    Cell.number(1),
                    Cell.text("bonding strap " + strap.id() + " from " + strap.from() + " to " + strap.to()),
                    Wording.part(strap.part()),
                    Cell.text(strap.id().value())));
        }
        return rows;
    }

    private static void put(Map<PartId, List<String>> byPart, List<String> unknown, Optional<PartId> part, String use) {
        part.ifPresentOrElse(
                id -> byPart.computeIfAbsent(id, key -> new ArrayList<>()).add(use), () -> unknown.add(use));
    }
}
