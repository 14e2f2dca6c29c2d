package org.ohmloom.pack;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.bundle.length.CutLength;
import org.ohmloom.bundle.section.LabelPlan;
import org.ohmloom.graph.Route;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireColour;
import org.ohmloom.model.WireEnd;
import org.ohmloom.pack.page.Block;
import org.ohmloom.pack.page.Cell;
import org.ohmloom.pack.page.Column;
import org.ohmloom.pack.page.Report;
import org.ohmloom.pack.page.Row;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Unit;

/**
 * Every wire to be made, one a row, in the order of cutting within each assembly: by conductor, colour and length, the longest
 * first, with what each end gets. Behind it the splices, ground points and coverings, the route of each wire, what each length is made of,
 * and where the allowances are from.
 */
final class WireList {
    private static final List<Column> COLUMNS = List.of(
            Column.tick("Cut"),
            Column.fileOnly("Assembly"),
            Column.code("Wire").home(),
            Column.fileOnly("Circuit"),
            Column.code("Size"),
            Column.words("Insulation"),
            Column.colour("Colour"),
            Column.number("Length", Unit.MILLIMETRE, 0),
            Column.code("Tolerance mm"),
            Column.words("Length by"),
            Column.code("From").mentioning(),
            Column.fileOnly("From name"),
            Column.words("From gets"),
            Column.number("From strip", Unit.MILLIMETRE, 1),
            Column.code("To").mentioning(),
            Column.fileOnly("To name"),
            Column.words("To gets"),
            Column.number("To strip", Unit.MILLIMETRE, 1),
            Column.fileOnly("Carries"),
            Column.code("Group").mentioning(),
            Column.words("Lay"),
            Column.count("Marks", 0),
            Column.tick("Ends"));

    private static final List<Column> WAYS = List.of(
            Column.code("Wire").mentioning(),
            Column.words("Circuit"),
            Column.words("Carries"),
            Column.code("From").mentioning(),
            Column.words("From name"),
            Column.code("To").mentioning(),
            Column.words("To name"),
            Column.words("Route"),
            Column.number("Route length", Unit.MILLIMETRE, 0),
            Column.words("Splices it ends in"));

    private static final String REMARK =
            "Lengths are cut lengths, never shorter. \"Entered\": given by a person, nothing is added; \"route\": bundle"
                    + " segments and the allowances listed at the end. Strip \"barrel\": as deep as the barrel of the terminal."
                    + " Order: conductor, insulation, colour, longest first.";

    private final Analysis analysis;
    private final Harness harness;
    private final Wording wording;
    private final Terminations terminations;

    WireList(Analysis analysis) {
        this.analysis = analysis;
        this.harness = analysis.harness();
        this.wording = new Wording(harness);
        this.terminations = new Terminations(analysis);
    }

    Report report() {
        List<Wire> wires = harness.wires().all().stream()
                .filter(wire -> !wire.existing())
                .sorted(cuttingOrder())
                .toList();
        List<Block> blocks = new ArrayList<>(FirstPage.blocks(harness));
        blocks.add(summary(wires));
        blocks.add(new Block.Table("", COLUMNS, rows(wires), "No wire is to be made."));
        blocks.addAll(new JointTables(analysis).blocks());
        blocks.addAll(new CoveringTable(analysis).blocks());
        if (!wires.isEmpty()) {
            blocks.add(new Block.Heading("Routes of the wires"));
            blocks.add(new Block.Table(
                    "ways",
                    WAYS,
                    wires.stream()
                            .sorted(Comparator.comparing(Wire::id))
                            .map(this::way)
                            .toList(),
                    ""));
        }
        blocks.addAll(new LengthTables(analysis, wires).blocks());
        return new Report(blocks, REMARK);
    }

    private Comparator<Wire> cuttingOrder() {
        return Comparator.<Wire>comparingDouble(wire ->
                        wire.gauge().map(gauge -> gauge.nominalAreaMm2()).orElse(Double.POSITIVE_INFINITY))
                .thenComparing(wire -> wire.family().orElse(""))
                .thenComparing(wording::insulation)
                .thenComparing(wire -> wire.colour().map(WireColour::text).orElse(""))
                .thenComparing(Comparator.<Wire>comparingDouble(
                                wire -> analysis.routes().lengthMetres(wire).orElse(0))
                        .reversed())
                .thenComparing(Wire::id);
    }

    private Block summary(List<Wire> wires) {
        double metres = 0;
        int withoutLength = 0;
        for (Wire wire : wires) {
            OptionalDouble length = analysis.routes().lengthMetres(wire);
            metres += length.orElse(0);
            withoutLength += length.isPresent() ? 0 : 1;
        }
        long existing = harness.wires().size() - wires.size();
        long withoutSize = wires.stream().filter(wire -> wire.gauge().isEmpty()).count();
        List<Block.Fact> facts = new ArrayList<>();
        facts.add(new Block.Fact("To be made", Wording.count(wires.size(), "wire")));
        facts.add(new Block.Fact("Length of all", Formats.metres(metres)));
        facts.add(new Block.Fact("Without a length", String.valueOf(withoutLength)));
        facts.add(new Block.Fact("Without a size", String.valueOf(withoutSize)));
        facts.add(new Block.Fact("Already in the vehicle, not listed", Wording.count(existing, "wire")));
        facts.add(Workmanship.fact(analysis));
        return new Block.Facts(facts);
    }

    private List<Row> rows(List<Wire> wires) {
        Map<String, List<Wire>> byAssembly = new LinkedHashMap<>();
        harness.assemblies()
                .all()
                .forEach(assembly -> byAssembly.put(wording.assembly(Optional.of(assembly.id())), new ArrayList<>()));
        for (Wire wire : wires) {
            byAssembly
                    .computeIfAbsent(wording.assembly(wire.assembly()), name -> new ArrayList<>())
                    .add(wire);
        }
        List<Row> rows = new ArrayList<>();
        byAssembly.forEach((assembly, members) -> {
            if (!members.isEmpty() && !harness.assemblies().isEmpty()) {
                String name = assembly.isEmpty() ? "In no assembly" : assembly;
                rows.add(Row.group(name + ": " + Wording.count(members.size(), "wire")));
            }
            members.forEach(wire -> rows.add(row(assembly, wire)));
        });
        return rows;
    }

    private Row row(String assembly, Wire wire) {
        OptionalDouble length = Wording.lengthMm(wire, analysis.routes());
        return Row.of(
                Cell.empty(),
                Cell.text(assembly),
                Cell.text(wire.id().value()).toned(Cell.Tone.STRONG),
                Cell.text(wire.circuit()),
                Wording.size(wire),
                Cell.text(wording.insulation(wire)),
                Wording.colour(wire),
                Cell.number(length),
                Cell.text(analysis.evidence().lengths().of(wire.id()).map(WireList::tolerance)),
                wire.lengthMetres().isPresent()
                        ? Cell.text("entered")
                        : length.isPresent() ? Cell.text("route") : Cell.missing("unknown"),
                Wording.end(wire.from()),
                Cell.text(wording.joinedTo(wire.from())),
                terminations.of(wire.from()),
                terminations.strip(wire.from()),
                Wording.end(wire.to()),
                Cell.text(wording.joinedTo(wire.to())),
                terminations.of(wire.to()),
                terminations.strip(wire.to()),
                Cell.text(Wording.signalClass(wire)),
                Cell.text(wire.cable().map(cable -> cable.value())),
                Cell.text(wording.lay(wire)),
                marks(wire, length),
                Cell.empty());
    }

    private Cell marks(Wire wire, OptionalDouble lengthMm) {
        if (lengthMm.isEmpty()) {
            return Cell.empty();
        }
        LabelPlan plan = LabelPlan.of(
                wire,
                Unit.MILLIMETRE.toCanonical(lengthMm.getAsDouble()),
                harness,
                analysis.evidence().tables().fabrication());
        return Cell.number(plan.metres().size());
    }

    private Row way(Wire wire) {
        Optional<Route> route = analysis.routes().of(wire.id());
        String splices = wire.ends().stream()
                .filter(WireEnd.AtSplice.class::isInstance)
                .map(WireEnd::text)
                .collect(Collectors.joining(", "));
        return Row.of(
                Cell.text(wire.id().value()).toned(Cell.Tone.STRONG),
                Cell.text(wire.circuit()),
                Cell.text(Wording.signalClass(wire)),
                Wording.end(wire.from()),
                Cell.text(wording.joinedTo(wire.from())),
                Wording.end(wire.to()),
                Cell.text(wording.joinedTo(wire.to())),
                route.map(each -> Cell.text(each.words())).orElseGet(() -> Cell.missing("none")),
                route.map(each -> Cell.number(Unit.MILLIMETRE.fromCanonical(each.lengthMetres())))
                        .orElseGet(Cell::empty),
                Cell.text(splices));
    }

    private static String tolerance(CutLength length) {
        return "+" + Math.round(Unit.MILLIMETRE.fromCanonical(length.toleranceMetres())) + " / 0";
    }
}
