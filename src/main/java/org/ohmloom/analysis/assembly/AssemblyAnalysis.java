package org.ohmloom.analysis.assembly;

import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.Totals;
import org.ohmloom.bundle.length.CutLengths;
import org.ohmloom.bundle.section.BundleStudy;
import org.ohmloom.graph.Routes;
import org.ohmloom.model.AssemblyId;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Harness;
import org.ohmloom.review.Evidence;
import org.ohmloom.review.Finding;

/**
 * The results of the whole harness, as far as they are about one assembly: sizes, lengths, cross-sections and findings are those
 * found with all assemblies joined.
 */
public final class AssemblyAnalysis {

    private AssemblyAnalysis() {}

    /** The results about an assembly. */
    public static Analysis of(Analysis whole, AssemblyId assembly) {
        Harness part = AssemblyHarness.of(whole.harness(), assembly);
        Set<String> ids = part.elements().map(each -> each.id().value()).collect(Collectors.toSet());
        Evidence all = whole.evidence();
        Routes routes = new Routes(
                within(ids, all.routes().byWire()),
                within(ids, all.routes().conductorMetres()),
                within(ids, all.routes().refused()));
        BundleStudy bundles = new BundleStudy(
                within(ids, all.bundles().bySegment()),
                within(ids, all.bundles().splices()));
        Evidence evidence = new Evidence(
                part,
                all.tables(),
                all.basis(),
                routes,
                new CutLengths(within(ids, all.lengths().byWire())),
                all.solutions(),
                all.wireCelsius(),
                within(ids, all.ratings()),
                within(ids, all.conductors()),
                all.joint(),
                within(ids, all.devices()),
                all.drawn(),
                all.upstream(),
                all.studies().with(bundles));
        List<Finding> findings = whole.findings().stream()
                .filter(finding -> finding.subjects().stream().anyMatch(ids::contains))
                .toList();
        return new Analysis(evidence, findings, Totals.of(evidence), whole.log());
    }

    private static <I extends ElementId, V> SortedMap<I, V> within(Set<String> ids, SortedMap<I, V> all) {
        SortedMap<I, V> kept = new TreeMap<>();
        all.forEach((id, value) -> {
            if (ids.contains(id.value())) {
                kept.put(id, value);
            }
        });
        return kept;
    }
}
