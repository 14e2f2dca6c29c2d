package org.ohmloom.bundle.length;

import static org.ohmloom.bundle.length.LengthPart.TEXTS;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.bundle.ConductorRows;
import org.ohmloom.bundle.Diameters;
import org.ohmloom.graph.Route;
import org.ohmloom.graph.Routes;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;
import org.ohmloom.tables.CitedValue;
import org.ohmloom.tables.FabricationTables;
import org.ohmloom.tables.WireTables;
import org.ohmloom.words.Text;

/**
 * The cut length of every wire whose length is known; derived from the harness each time and never stored.
 *
 * @param byWire cut length by wire; none for a wire without a way and an entered length
 */
public record CutLengths(SortedMap<WireId, CutLength> byWire) {

    private static final double MILLIMETRES_PER_METRE = 1000;

    /** Rounding up passes over so much of a step, as a share: not by rounding of sums alone. */
    private static final double NOISE_RATIO = 1e-9;

    /** No wire has a length. */
    public static final CutLengths NONE = new CutLengths(new TreeMap<>());

    public CutLengths {
        byWire = Collections.unmodifiableSortedMap(new TreeMap<>(byWire));
    }

    /**
     * The lengths of a harness.
     *
     * @param harness the harness
     * @param tables  published tables
     * @param rows    conductors of its wires, for their thickness where they are twisted
     * @param routes  ways of its wires
     */
    public static CutLengths of(Harness harness, WireTables tables, ConductorRows rows, Routes routes) {
        FabricationTables practice = tables.fabrication();
        EndAllowances ends = new EndAllowances(harness, practice);
        TwistTakeUp twist = new TwistTakeUp(harness, practice, new Diameters(tables, harness.rules(), rows), routes);
        CitedValue usualStep = practice.value("cut-step");
        double stepMm = harness.rules().fabricationRules().cutStepMm().orElse(usualStep.value());
        Text stepSource = harness.rules().fabricationRules().cutStepMm().isPresent()
                ? TEXTS.text("rules")
                : Text.of(usualStep.citation().text());
        SortedMap<WireId, CutLength> lengths = new TreeMap<>();
        for (Wire wire : harness.wires().all()) {
            List<LengthPart> parts = new ArrayList<>();
            if (wire.lengthMetres().isPresent()) {
                parts.add(new LengthPart(
                        LengthPart.Kind.ENTERED,
                        Optional.empty(),
                        wire.lengthMetres().getAsDouble() * MILLIMETRES_PER_METRE,
                        TEXTS.text("entered")));
            } else {
                Optional<Route> route = routes.of(wire.id());
                if (route.isEmpty()) {
                    continue;
                }
                parts.add(new LengthPart(
                        LengthPart.Kind.ROUTE,
                        Optional.empty(),
                        route.get().lengthMetres() * MILLIMETRES_PER_METRE,
                        route.get().segments().isEmpty()
                                ? TEXTS.text("one-place")
                                : Text.of(route.get().words())));
                parts.addAll(twist.of(wire, route.get()));
                parts.addAll(ends.of(wire.from()));
                parts.addAll(ends.of(wire.to()));
                roundUp(parts, stepMm, stepSource);
            }
            // An entered length is kept to the last digit: converting it to millimetres and back may lose one.
            double metres = wire.lengthMetres().orElse(sum(parts) / MILLIMETRES_PER_METRE);
            if (metres > 0) {
                lengths.put(wire.id(), new CutLength(wire.id(), parts, metres, practice.tolerance(metres)));
            }
        }
        return new CutLengths(lengths);
    }

    /** The cut length of a wire. */
    public Optional<CutLength> of(WireId wire) {
        return Optional.ofNullable(byWire.get(wire));
    }

    /** These lengths by wire, m. */
    public SortedMap<WireId, Double> metres() {
        SortedMap<WireId, Double> metres = new TreeMap<>();
        byWire.forEach((wire, length) -> metres.put(wire, length.metres()));
        return metres;
    }

    private static void roundUp(List<LengthPart> parts, double stepMm, Text source) {
        double sum = sum(parts);
        if (stepMm > 0) {
            double rounded = Math.ceil(sum / stepMm - NOISE_RATIO) * stepMm;
            if (rounded > sum) {
                parts.add(new LengthPart(LengthPart.Kind.ROUNDING, Optional.empty(), rounded - sum, source));
            }
        }
    }

    private static double sum(List<LengthPart> parts) {
        return parts.stream().mapToDouble(LengthPart::millimetres).sum();
    }
}
