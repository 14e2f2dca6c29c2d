package org.ohmloom.analysis;

import java.util.Collections;
import java.util.SortedMap;
import java.util.concurrent.CancellationException;
import org.ohmloom.ground.ReturnStudy;
import org.ohmloom.heat.WireRating;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.WireId;
import org.ohmloom.review.Evidence;
import org.ohmloom.size.DeviceChoice;
import org.ohmloom.size.DeviceChooser;
import org.ohmloom.solve.charge.ChargeStudy;
import org.ohmloom.solve.run.StartUpStudy;
import org.ohmloom.solve.run.StartUps;
import org.ohmloom.tables.WireTables;

/**
 * Runs the whole analysis: graph, then for each operating state solve and heat to agreement, then size, then review.
 * <p>Wires without a size get one first ({@link SizesByWire}, then {@link JointSizing}), so that their currents and drops
 * are those of the harness they will make.
 */
public final class Analyst {

    private Analyst() {}

    /**
     * Analyses one snapshot. Safe on any thread; touches nothing but its arguments.
     *
     * @param harness the snapshot
     * @param tables  published tables
     * @param cancel  asks to stop
     * @throws AnalysisRefusedException when the harness names a table entry that is not there
     * @throws CancellationException    when asked to stop
     */
    public static Analysis analyse(Harness harness, WireTables tables, Cancel cancel) {
        Bench bench = Bench.of(harness, tables);
        Protection protection = Protection.of(bench);
        SizedByEnvelope byEnvelope = SizedByEnvelope.of(
                bench,
                protection,
                JointSizing.of(bench, protection, SizesByWire.of(bench, protection, cancel), cancel),
                cancel);
        JointSized sized = byEnvelope.sized();
        SortedMap<ComponentId, DeviceChoice> devices = new DeviceChooser(byEnvelope.input()).chooseAll();
        SortedMap<WireId, WireRating> ratings = Ratings.of(bench, sized.sizes(), sized.heated());
        AtOnce<StartUps> startUps =
                AtOnce.begin(() -> StartUpStudy.of(harness, sized.heated().solutions(), tables, cancel::isRequested));
        AtOnce<ChargeStudy> charges = AtOnce.begin(
                () -> ChargeStudy.of(harness, tables, sized.heated().solutions(), cancel::isRequested));
        ReturnStudy returns = Returns.study(bench, protection.drawn(), sized.heated(), ratings, cancel);
        Evidence evidence = new Evidence(
                harness,
                tables,
                bench.basis(),
                bench.routes(),
                Collections.unmodifiableSortedMap(sized.heated().solutions()),
                Collections.unmodifiableSortedMap(sized.heated().wireCelsius()),
                Collections.unmodifiableSortedMap(ratings),
                sized.conductors(),
                sized.choice(),
                devices,
                protection.drawn(),
                protection.upstream(),
                startUps.result(),
                protection.study(
                        SizesByWire.input(bench, protection, sized.heated(), sized.sizes()),
                        ratings,
                        startUps.result(),
                        cancel),
                byEnvelope.envelope(),
                charges.result(),
                returns);
        return new Analysis(
                evidence,
                FindingOrder.of(evidence, cancel),
                Summing.of(bench, ratings, sized.heated()),
                LogWriter.of(bench, evidence, sized.heated()));
    }
}
