package org.ohmloom.pack;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.bench.CrimpFamily;
import org.ohmloom.bench.TestPlan;
import org.ohmloom.model.Cable;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Splice;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.tables.BuildTime;

/**
 * How long a harness takes at the bench: each operation counted, times its minutes.
 *
 * @param counts  how often each operation is done, by its name in the table
 * @param minutes sum of counts times minutes, min
 */
record BuildTimes(Map<String, Long> counts, double minutes) {

    static BuildTimes of(Analysis analysis) {
        Harness harness = analysis.harness();
        TestPlan plan = analysis.evidence().tests().plan();
        Map<String, Long> counts = new LinkedHashMap<>();
        counts.put(BuildTime.WIRE, made(harness));
        counts.put(
                BuildTime.CRIMP,
                plan.crimps().stream().mapToLong(CrimpFamily::crimps).sum());
        counts.put(
                BuildTime.TWIST,
                harness.cables().all().stream()
                        .filter(cable -> cable.kind() == Cable.Kind.TWISTED_PAIR)
                        .count());
        counts.put(
                BuildTime.SPLICE,
                harness.splices().all().stream()
                        .filter(splice -> !splice.existing())
                        .map(Splice::id)
                        .count());
        counts.put(BuildTime.SEGMENT, (long) harness.segments().size());
        counts.put(BuildTime.CAVITY, ends(harness, WireEnd.AtCavity.class));
        counts.put(
                BuildTime.COVERING,
                harness.segments().all().stream()
                        .filter(segment -> segment.covering().isPresent())
                        .count());
        counts.put(BuildTime.GROUND, ends(harness, WireEnd.AtGround.class));
        counts.put(BuildTime.NET, (long) plan.nets().size());
        double minutes = counts.entrySet().stream()
                .mapToDouble(entry -> entry.getValue()
                        * analysis.evidence()
                                .tables()
                                .buildMinutes(entry.getKey())
                                .value())
                .sum();
        return new BuildTimes(counts, minutes);
    }

    private static long made(Harness harness) {
        return harness.wires().all().stream().filter(wire -> !wire.existing()).count();
    }

    private static long ends(Harness harness, Class<? extends WireEnd> kind) {
        return harness.wires().all().stream()
                .filter(wire -> !wire.existing())
                .map(Wire::ends)
                .flatMap(List::stream)
                .filter(kind::isInstance)
                .count();
    }
}
