package org.ohmloom.cli;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.Cancel;
import org.ohmloom.analysis.DutySweep;
import org.ohmloom.graph.PointId;
import org.ohmloom.heat.WireRating;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.SegmentId;
import org.ohmloom.model.StateId;
import org.ohmloom.model.WireId;
import org.ohmloom.remedy.RemedyList;
import org.ohmloom.review.Finding;
import org.ohmloom.size.ConductorChoice;
import org.ohmloom.solve.BranchFlow;
import org.ohmloom.solve.Island;
import org.ohmloom.solve.LoadVolts;
import org.ohmloom.solve.Solution;
import org.ohmloom.store.JsonObjectWriter;
import org.ohmloom.store.JsonText;

/** The analysis as JSON by the command line contract, in full double precision. */
final class CheckJson {

    private CheckJson() {}

    static String text(Analysis analysis, List<OperatingState> states, Optional<List<RemedyList>> remedies) {
        return JsonText.object(root -> {
            root.put("harness", analysis.harness().titleBlock().number());
            root.put("title", analysis.harness().titleBlock().title());
            root.put("basis", analysis.evidence().basis().id());
            root.array(
                    "states",
                    array -> states.forEach(state -> analysis.solution(state.id())
                            .ifPresent(solution -> array.object(item -> state(item, analysis, state, solution)))));
            root.array("wires", array -> analysis.ratings()
                    .values()
                    .forEach(rating -> array.object(item -> wire(item, analysis, rating))));
            SegmentsJson.write(analysis, root);
            SplicesJson.write(analysis, root);
            DutyText.write(DutySweep.of(analysis, Cancel.NEVER), root);
            DutyText.leftOut(DutySweep.leftOut(analysis), root);
            ProtectionText.write(analysis.evidence().protection(), root);
            EnvelopeText.write(analysis.evidence().envelope(), root);
            StartUpJson.write(analysis, states, root);
            JointJson.write(analysis.evidence().joint(), root);
            ChargeJson.write(analysis, states, root);
            OffsetsText.write(analysis, states, root);
            LoopsJson.write(analysis, states, root);
            SensorsText.write(analysis, states, root);
            LossesText.write(analysis, states, root);
            CouplingText.write(analysis, root);
            ChannelsJson.write(analysis, root);
            BusesJson.write(analysis, root);
            ReadingsJson.write(analysis, root);
            root.array("findings", array -> analysis.findings()
                    .forEach(finding -> array.object(item -> finding(item, finding))));
            remedies.ifPresent(lists -> RemediesText.write(lists, root));
        });
    }

    private static void state(JsonObjectWriter item, Analysis analysis, OperatingState state, Solution solution) {
        SortedMap<WireId, Double> celsius = analysis.evidence().wireCelsius().getOrDefault(state.id(), new TreeMap<>());
        item.put("name", state.name());
        item.put("status", solution.status().name());
        item.put("residualAmps", solution.residualAmps());
        item.array(
                "islands", array -> solution.islands().forEach(island -> array.object(entry -> island(entry, island))));
        item.array("points", array -> solution.network()
                .points()
                .forEach(point -> array.object(entry -> {
                    entry.put("id", point.value());
                    entry.put("island", island(solution, point));
                    entry.put("volts", solution.volts(point));
                })));
        item.array("branches", array -> solution.flows()
                .values()
                .forEach(flow -> array.object(entry -> branch(entry, flow, celsius))));
        OutputsText.write(solution, item);
        EnergyText.write(solution, item);
        item.array(
                "loads", array -> solution.loads().values().forEach(load -> array.object(entry -> load(entry, load))));
    }

    private static String island(Solution solution, PointId point) {
        return solution.islandOf().getOrDefault(point, point.value());
    }

    private static void island(JsonObjectWriter entry, Island island) {
        entry.put("id", island.id());
        entry.put("status", island.status().name());
        entry.put("sentence", island.sentence());
    }

    private static void branch(JsonObjectWriter entry, BranchFlow flow, SortedMap<WireId, Double> celsius) {
        entry.put("id", flow.branch().id().value());
        entry.put("island", flow.island());
        entry.put("kind", flow.branch().kind().name());
        entry.put("from", flow.branch().from().value());
        entry.put("to", flow.branch().to().value());
        entry.put("ohms", flow.ohms());
        entry.put("amps", flow.amps());
        entry.put("rmsAmps", flow.rmsAmps());
        entry.put("onAmps", flow.onAmps());
        entry.put("dropVolts", flow.dropVolts());
        entry.put("onDropVolts", flow.onDropVolts());
        entry.put("watts", flow.watts());
        entry.put("celsius", temperature(flow, celsius));
    }

    private static OptionalDouble temperature(BranchFlow flow, SortedMap<WireId, Double> celsius) {
        return flow.branch()
                .element()
                .filter(WireId.class::isInstance)
                .filter(id -> id.value().equals(flow.branch().id().value()))
                .map(id -> celsius.get((WireId) id))
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
    }

    private static void load(JsonObjectWriter entry, LoadVolts load) {
        entry.put("id", load.load().value());
        entry.put("reference", load.reference().value());
        entry.put("amps", load.amps());
        entry.put("volts", load.volts());
        entry.put("feedDropVolts", load.feedDropVolts());
        entry.put("returnDropVolts", load.returnDropVolts());
        entry.put("contactDropVolts", load.contactDropVolts());
        entry.put("deviceDropVolts", load.deviceDropVolts());
        entry.put("onAmps", load.on().amps());
        entry.put("onVolts", load.on().volts());
        entry.put("onFeedDropVolts", load.on().feedDropVolts());
        entry.put("onReturnDropVolts", load.on().returnDropVolts());
        entry.put("onContactDropVolts", load.on().contactDropVolts());
        entry.put("onDeviceDropVolts", load.on().deviceDropVolts());
        entry.put("onDropVolts", load.onDropVolts());
        entry.put("limitVolts", load.limitVolts());
    }

    private static void wire(JsonObjectWriter item, Analysis analysis, WireRating rating) {
        ConductorChoice choice = analysis.conductors().get(rating.wire().id());
        item.put("id", rating.wire().id().value());
        item.put("gauge", rating.gauge().text());
        item.put("chosen", rating.provisional());
        item.put("areaMm2", rating.areaMm2());
        item.put("lengthMetres", rating.lengthMetres());
        item.texts(
                "route",
                analysis.routes().of(rating.wire().id()).stream()
                        .flatMap(route -> route.segments().stream())
                        .map(SegmentId::value)
                        .toList());
        item.put("worstState", rating.peakState().map(id -> name(analysis, id)));
        item.put("worstAmps", rating.peakAmps());
        item.put("lastingState", rating.worstState().map(id -> name(analysis, id)));
        item.put("lastingAmps", rating.worstAmps());
        item.put("celsius", rating.celsius());
        item.put(
                "limitCelsius",
                rating.ampacity()
                        .map(limit -> OptionalDouble.of(limit.limitCelsius()))
                        .orElse(OptionalDouble.empty()));
        item.put(
                "ampacityAmps",
                rating.ampacity()
                        .map(limit -> OptionalDouble.of(limit.limitAmps()))
                        .orElse(OptionalDouble.empty()));
        if (choice == null) {
            item.putNull("requiredAreaMm2")
                    .putNull("requiredGauge")
                    .putNull("governedBy")
                    .putNull("source");
        } else {
            item.put("requiredAreaMm2", choice.governing().areaMm2());
            item.put("requiredGauge", choice.gauge().map(gauge -> gauge.text()));
            item.put("governedBy", choice.governing().governor().words());
            item.put("source", choice.governing().citation().text());
            JointJson.requirements(item, choice);
        }
        HeatJson.put(item, analysis, rating);
        analysis.evidence().lengths().of(rating.wire().id()).ifPresent(length -> CutJson.put(item, length));
    }

    private static String name(Analysis analysis, StateId id) {
        return analysis.harness().states().get(id).name();
    }

    private static void finding(JsonObjectWriter item, Finding finding) {
        item.put("rule", finding.rule());
        item.put("severity", finding.severity().name());
        item.texts("subjects", finding.subjects());
        item.put("message", finding.message());
        item.put("source", finding.source());
        item.object("values", values -> finding.values()
                .forEach((name, quantity) -> values.object(name, value -> {
                    value.put("value", quantity.canonical());
                    value.put("unit", quantity.unit().symbol());
                })));
        item.put("waived", finding.waiver().map(waiver -> waiver.reason()));
    }
}
