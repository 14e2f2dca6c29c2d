package org.ohmloom.pack;

import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.bundle.section.CoveringFit;
import org.ohmloom.bundle.section.SegmentSection;
import org.ohmloom.model.AssemblyId;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.Cable;
import org.ohmloom.model.Covering;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.tables.ConductorFamily;
import org.ohmloom.words.Text;

/**
 * What is bought by length: wire as cut, cables, coverings with what winding and shrinking take; and the terminals at wire ends outside connectors. The cores of a
 * cable come with it; an unshielded twisted pair without a part number is twisted from single wires.
 */
final class WireMaterials {
    private final Analysis analysis;
    private final Harness harness;
    private final Wording wording;
    private final Materials materials;

    WireMaterials(Analysis analysis, Materials materials) {
        this.analysis = analysis;
        this.harness = analysis.harness();
        this.wording = new Wording(harness);
        this.materials = materials;
    }

    void collect() {
        for (Wire wire : harness.wires().all()) {
            if (!wire.existing()) {
                if (wire.cable()
                        .map(harness.cables()::get)
                        .filter(Cable::isBought)
                        .isEmpty()) {
                    wire(wire);
                }
                terminals(wire);
            }
        }
        for (Cable cable : harness.cables().all()) {
            if (cable.isBought()) {
                cable(cable);
            }
        }
        for (BundleSegment segment : harness.segments().all()) {
            segment.covering().ifPresent(covering -> covering(segment, covering));
        }
    }

    private void wire(Wire wire) {
        Text size = wire.gauge()
                .map(gauge -> Text.of(Wording.size(gauge)))
                .orElseGet(() -> MaterialTexts.text("size-not-chosen"));
        Text what = wire.family()
                .map(family -> MaterialTexts.text(
                        "wire-of",
                        size,
                        wording.insulation(wire),
                        analysis.evidence()
                                .tables()
                                .findFamily(family)
                                .map(ConductorFamily::title)
                                .orElse(family)))
                .orElseGet(() -> MaterialTexts.text("wire", size, wording.insulation(wire)));
        Material material =
                new Material(wire.assembly(), MaterialKind.WIRE, Optional.empty(), what, wire.colour(), Material.METRE);
        materials.length(
                material, analysis.routes().lengthMetres(wire), wire.id().value());
    }

    private void terminals(Wire wire) {
        for (WireEnd end : wire.ends()) {
            if (end instanceof WireEnd.AtGround || end instanceof WireEnd.AtTerminal) {
                Text size = wire.gauge()
                        .map(gauge -> Text.of(Wording.size(gauge)))
                        .orElseGet(() -> MaterialTexts.text("no-size"));
                Text words = end instanceof WireEnd.AtGround at
                        ? MaterialTexts.text("ring-terminal", size, thread(at))
                        : MaterialTexts.text("terminal", size);
                materials.piece(
                        Material.piece(wire.assembly(), MaterialKind.TERMINAL, Optional.empty(), words),
                        end.text() + " (" + wire.id() + ")");
            }
        }
    }

    private Text thread(WireEnd.AtGround at) {
        OptionalDouble stud = harness.grounds().get(at.ground()).studMm();
        return stud.isPresent() ? Text.of(JointTables.thread(stud.getAsDouble())) : MaterialTexts.text("stud-size");
    }

    private void cable(Cable cable) {
        OptionalDouble longest = OptionalDouble.empty();
        int cores = 0;
        boolean made = false;
        Optional<AssemblyId> assembly = cable.assembly();
        for (Wire wire : harness.wires().all()) {
            if (wire.cable().filter(cable.id()::equals).isPresent()) {
                cores++;
                made |= !wire.existing();
                OptionalDouble length = analysis.routes().lengthMetres(wire);
                if (length.isPresent() && length.getAsDouble() > longest.orElse(0)) {
                    longest = length;
                }
            }
        }
        if (made) {
            boolean multicore = cable.kind() == Cable.Kind.MULTICORE;
            String sort =
                    cable.shielded() ? multicore ? "cable-shielded" : "pair-shielded" : multicore ? "cable" : "pair";
            Text words = cable.part().isPresent() ? Text.NONE : MaterialTexts.text(sort, String.valueOf(cores));
            materials.length(
                    Material.length(assembly, MaterialKind.CABLE, cable.part(), words),
                    longest,
                    cable.id().value());
        }
    }

    private void covering(BundleSegment segment, Covering covering) {
        double perMetre = analysis.evidence()
                .bundles()
                .of(segment.id())
                .flatMap(SegmentSection::covering)
                .map(CoveringFit::materialMetres)
                .orElse(1.0);
        materials.length(
                Material.length(
                        segment.assembly(),
                        MaterialKind.COVERING,
                        covering.part(),
                        covering.part().isPresent() ? Text.NONE : Text.of(Wording.covering(covering))),
                OptionalDouble.of(segment.lengthMetres() * perMetre),
                segment.id().value());
    }
}
