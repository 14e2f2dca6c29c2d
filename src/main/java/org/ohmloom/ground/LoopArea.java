package org.ohmloom.ground;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.ReturnLoop;
import org.ohmloom.graph.Route;
import org.ohmloom.ground.LoopReading.Enclosed;
import org.ohmloom.heat.balance.RoundWire;
import org.ohmloom.model.SegmentId;
import org.ohmloom.model.Wire;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/**
 * The area a loop encloses and its inductance, as far as the harness tells them.
 *
 * <p>Three areas can be told, and the largest counts: that of the outline on the layout board ({@link LoopOutline}); where the loop
 * closes through chassis, the length of its wires times their height above it; where it is two wires along the same segments,
 * their length times the spacing of touching wires. Inductance: of wires above chassis by their height, of a loop of wires
 * alone as of a pair whose spacing is the area over half the length of its wires.
 */
final class LoopArea {

    private static final double METRES_PER_MM = 1e-3;

    private final LoopInput input;
    private final LoopMembers members;
    private final OptionalDouble heightMetres;
    private final LoopOutline outline;

    private record Area(double squareMetres, Text how) {}

    LoopArea(LoopInput input, LoopMembers members, OptionalDouble heightMetres) {
        this.input = input;
        this.members = members;
        this.heightMetres = heightMetres;
        outline = new LoopOutline(input.harness(), input.routes());
    }

    /** The area of a loop with its members; empty when nothing tells one. */
    Optional<Enclosed> of(ReturnLoop loop, List<Branch> branches) {
        List<Wire> wires = branches.stream()
                .flatMap(branch -> members.wire(branch).stream())
                .toList();
        boolean throughChassis = branches.stream().anyMatch(branch -> branch.kind() == BranchKind.CHASSIS);
        OptionalDouble length = length(wires);
        Optional<Area> drawn = outline.of(loop, branches).map(each -> new Area(each.squareMetres(), each.how()));
        return Stream.of(drawn, above(wires, length, throughChassis), beside(wires, throughChassis))
                .flatMap(Optional::stream)
                .max(Comparator.comparingDouble(Area::squareMetres))
                .map(area -> enclosed(area, wires, length, throughChassis));
    }

    private OptionalDouble length(List<Wire> wires) {
        double sum = 0;
        for (Wire wire : wires) {
            OptionalDouble each = input.routes().lengthMetres(wire);
            if (each.isEmpty()) {
                return OptionalDouble.empty();
            }
            sum += each.getAsDouble();
        }
        return OptionalDouble.of(sum);
    }

    private Optional<Area> above(List<Wire> wires, OptionalDouble length, boolean throughChassis) {
        if (!throughChassis || heightMetres.isEmpty() || length.isEmpty() || wires.isEmpty()) {
            return Optional.empty();
        }
        double height = heightMetres.getAsDouble();
        return Optional.of(new Area(
                length.getAsDouble() * height,
                ReturnTexts.text("area.above", Formats.metres(length.getAsDouble()), Formats.metres(height))));
    }

    /** Two wires along the same segments touch: their spacing is the mean of their outside diameters. */
    private Optional<Area> beside(List<Wire> wires, boolean throughChassis) {
        if (throughChassis || wires.size() != 2) {
            return Optional.empty();
        }
        Optional<Route> one = input.routes().of(wires.get(0).id());
        Optional<Route> other = input.routes().of(wires.get(1).id());
        RoundWire first = input.shapes().get(wires.get(0).id());
        RoundWire second = input.shapes().get(wires.get(1).id());
        if (one.isEmpty() || other.isEmpty() || first == null || second == null) {
            return Optional.empty();
        }
        List<SegmentId> segments = one.get().segments();
        if (segments.isEmpty() || !one.get().segmentSet().equals(other.get().segmentSet())) {
            return Optional.empty();
        }
        double spacing = (first.outsideDiameterMm() + second.outsideDiameterMm()) / 2 * METRES_PER_MM;
        double along = (one.get().lengthMetres() + other.get().lengthMetres()) / 2;
        return Optional.of(new Area(
                along * spacing, ReturnTexts.text("area.beside", Formats.metres(along), Formats.metres(spacing))));
    }

    private Enclosed enclosed(Area area, List<Wire> wires, OptionalDouble length, boolean throughChassis) {
        OptionalDouble diameter = wires.stream()
                .map(wire -> input.shapes().get(wire.id()))
                .mapToDouble(shape -> shape == null ? Double.NaN : shape.conductorDiameterMm() * METRES_PER_MM)
                .average();
        if (diameter.isEmpty() || Double.isNaN(diameter.getAsDouble()) || length.isEmpty()) {
            return without(area, "inductance.no-wires");
        }
        double d = diameter.getAsDouble();
        if (throughChassis) {
            if (heightMetres.isEmpty()) {
                return without(area, "inductance.no-height");
            }
            double height = heightMetres.getAsDouble();
            if (2 * height < d) {
                return without(area, "inductance.too-low");
            }
            return with(
                    area,
                    LoopInduction.abovePlaneHenries(height, d, length.getAsDouble()),
                    ReturnTexts.text(
                            "inductance.above",
                            Formats.metres(height),
                            Formats.metres(d),
                            Formats.metres(length.getAsDouble())));
        }
        double half = length.getAsDouble() / 2;
        double spacing = Math.max(d, area.squareMetres() / half);
        return with(
                area,
                LoopInduction.pairHenries(spacing, d, half),
                ReturnTexts.text("inductance.pair", Formats.metres(spacing), Formats.metres(d), Formats.metres(half)));
    }

    private static Enclosed without(Area area, String key) {
        return new Enclosed(area.squareMetres(), area.how(), OptionalDouble.empty(), ReturnTexts.text(key));
    }

    private static Enclosed with(Area area, double henries, Text formula) {
        return new Enclosed(area.squareMetres(), area.how(), OptionalDouble.of(henries), formula);
    }
}
