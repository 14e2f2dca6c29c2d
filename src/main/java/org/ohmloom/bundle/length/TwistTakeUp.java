package org.ohmloom.bundle.length;

import static org.ohmloom.bundle.length.LengthPart.TEXTS;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.bundle.Diameters;
import org.ohmloom.bundle.packing.ConcentricLay;
import org.ohmloom.graph.Route;
import org.ohmloom.graph.Routes;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.Cable;
import org.ohmloom.model.Harness;
import org.ohmloom.model.SegmentId;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Wire;
import org.ohmloom.tables.FabricationTables;
import org.ohmloom.tables.PracticeFigure;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/**
 * What twisting takes up of a wire. The wires of a twisted pair run on a circle as wide as one of them is thick, by the
 * helix; a pair of unknown lay length or thickness takes the handbook's share. In a segment twisted in concentric layers
 * every wire is cut for the outermost layer, so that it reaches whichever layer it is laid into. The cores of a bought
 * cable are cut with the cable and take up nothing here.
 */
final class TwistTakeUp {
    private final Harness harness;
    private final PracticeFigure usual;
    private final Diameters diameters;
    private final Map<SegmentId, List<Wire>> bySegment = new HashMap<>();

    TwistTakeUp(Harness harness, FabricationTables tables, Diameters diameters, Routes routes) {
        this.harness = harness;
        this.usual = tables.figure("twist-loss");
        this.diameters = diameters;
        boolean any = harness.segments().all().stream()
                .anyMatch(segment -> segment.layLengthMm().isPresent());
        if (any) {
            for (Wire wire : harness.wires().all()) {
                routes.of(wire.id()).ifPresent(route -> route.segmentSet().forEach(segment -> bySegment
                        .computeIfAbsent(segment, id -> new ArrayList<>())
                        .add(wire)));
            }
        }
    }

    /** The parts that twisting adds to a wire on its way. */
    List<LengthPart> of(Wire wire, Route route) {
        List<LengthPart> parts = new ArrayList<>();
        wire.cable()
                .map(harness.cables()::get)
                .filter(cable -> cable.kind() == Cable.Kind.TWISTED_PAIR && wire.signalClass() != SignalClass.SHIELD)
                .ifPresent(
                        cable -> add(parts, pair(wire, cable), route.lengthMetres(), TEXTS.text("pair", cable.id())));
        for (int k = 0; k < route.segments().size(); k++) {
            BundleSegment segment = harness.segments().get(route.segments().get(k));
            if (segment.layLengthMm().isPresent()) {
                add(parts, layers(segment), route.stretchMetres().get(k), TEXTS.text("segment", segment.id()));
            }
        }
        return parts;
    }

    /** How much longer, and why. */
    private record TakeUp(double ratio, Text source) {}

    private TakeUp pair(Wire wire, Cable cable) {
        OptionalDouble lay = cable.layLengthMm();
        Optional<Diameters.Known> outside = diameters.of(wire);
        if (lay.isEmpty() || outside.isEmpty()) {
            return handbook();
        }
        return helix(outside.get().millimetres(), lay.getAsDouble());
    }

    private TakeUp layers(BundleSegment segment) {
        List<Double> all = bySegment.getOrDefault(segment.id(), List.of()).stream()
                .map(diameters::of)
                .flatMap(Optional::stream)
                .map(Diameters.Known::millimetres)
                .toList();
        if (all.isEmpty()) {
            return handbook();
        }
        double lay = segment.layLengthMm().getAsDouble();
        return helix(ConcentricLay.of(all, lay).outermostPitchDiameterMm(), lay);
    }

    private TakeUp helix(double pitchMm, double layMm) {
        return new TakeUp(
                Helix.takeUpRatio(pitchMm, layMm),
                TEXTS.text("helix", Helix.FORMULA, Formats.millimetres(pitchMm), Formats.millimetres(layMm)));
    }

    private TakeUp handbook() {
        return new TakeUp(
                usual.value().value(), Text.of(usual.value().citation().text()));
    }

    private static void add(List<LengthPart> parts, TakeUp takeUp, double metres, Text where) {
        double millimetres = (takeUp.ratio() - 1) * metres * 1000;
        if (millimetres > 0) {
            parts.add(new LengthPart(LengthPart.Kind.TWIST, Optional.of(where), millimetres, takeUp.source()));
        }
    }
}
