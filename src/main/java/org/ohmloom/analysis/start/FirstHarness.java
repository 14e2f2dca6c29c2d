package org.ohmloom.analysis.start;

import java.util.Optional;
import org.ohmloom.analysis.Analyst;
import org.ohmloom.analysis.Cancel;
import org.ohmloom.analysis.SizedHarness;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.DesignRules;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Note;
import org.ohmloom.model.NoteId;
import org.ohmloom.model.TitleBlock;
import org.ohmloom.review.Severity;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.Formats;
import org.ohmloom.units.GaugeSystem;

/** Lays out a first harness from the answers of a plan. */
public final class FirstHarness {

    private static final double AMBIENT_CELSIUS = 40;
    private static final double DROP_FRACTION = 0.05;

    private FirstHarness() {}

    /**
     * A harness with everything placed and wired: a fuse for each circuit, a return of its own for each load, sensors apart from
     * power. Wires have no size yet.
     *
     * @param gauges whether sizes are to be chosen in AWG or mm2
     * @param tables where types of fuse and inrush multiples come from
     */
    public static Harness laidOut(StartPlan plan, GaugeSystem gauges, WireTables tables) {
        StartDraft draft = new StartDraft(plan);
        StartPlaces places = new StartPlaces(draft);
        StartFuses fuses = new StartFuses(draft, places, tables);
        StartReturns returns = new StartReturns(draft, places);
        StartStates states = new StartStates();
        double totalAmps = StartFigures.UNIT_AMPS
                + plan.loads().stream().mapToDouble(StartLoad::amps).sum();
        Optional<ComponentId> alternator = new StartSources(draft, places, fuses, returns).build(totalAmps);
        Optional<StartUnit> unit = plan.unitPlace().map(place -> new StartUnit(draft, places));
        StartLoads loads = new StartLoads(draft, places, fuses, returns, unit, states, tables);
        plan.loads().forEach(loads::build);
        loads.finish();
        unit.ifPresent(reader -> {
            StartSensors sensors = new StartSensors(draft, places, reader);
            plan.sensors().forEach(sensors::build);
            sensors.finish();
            reader.build(fuses, returns, plan.unitPlace().orElseThrow());
        });
        fuses.build();
        returns.build();
        states.build(draft, alternator);
        draft.add(new Note(new NoteId("N-1"), Optional.empty(), taken(plan)));
        return Harness.empty(TitleBlock.of(plan.title(), "1"), rules(plan, gauges))
                .withAll(draft.elements());
    }

    /**
     * The harness laid out, with conductors and protective devices chosen. Where a short circuit is more than a fuse can
     * interrupt it gets a type that can interrupt more, and where an error is left all is chosen anew with the types proposed.
     * What no type listed can do stays a finding.
     *
     * @param cancel asks to stop
     */
    public static SizedHarness sized(StartPlan plan, GaugeSystem gauges, WireTables tables, Cancel cancel) {
        SizedHarness sized = SizedHarness.of(Analyst.analyse(laidOut(plan, gauges, tables), tables, cancel), cancel);
        for (int round = 0; round < StrongerFuses.MOST_ROUNDS; round++) {
            Harness now = sized.analysis().harness();
            Harness stronger = StrongerFuses.of(sized.analysis());
            if (stronger == now) {
                break;
            }
            sized = SizedHarness.of(Analyst.analyse(stronger, tables, cancel), cancel);
        }
        return sized.analysis().count(Severity.ERROR) == 0 ? sized : SizedHarness.anew(sized.analysis(), cancel);
    }

    private static DesignRules rules(StartPlan plan, GaugeSystem gauges) {
        return new DesignRules(
                plan.craft().basis(),
                plan.supply().nominalVolts(),
                DROP_FRACTION,
                gauges,
                plan.craft().insulation(),
                Optional.empty(),
                AMBIENT_CELSIUS);
    }

    /** What was taken for granted, for the builder to replace. */
    private static String taken(StartPlan plan) {
        StartSupply supply = plan.supply();
        return "Laid out from a few answers. Taken for granted until it is measured or read off a data sheet: battery resistance "
                + Formats.ohms(StartFigures.BATTERY_OHM_AMP_HOURS * supply.blocks() / supply.ampHours())
                + ", branches of " + Formats.metres(StartFigures.BRANCH_METRES)
                + ", switch contacts of " + Formats.ohms(StartFigures.SWITCH_OHMS)
                + ", relay contacts of " + Formats.ohms(StartFigures.RELAY_OHMS)
                + ", bolted joints of " + Formats.ohms(StartFigures.JOINT_OHMS)
                + ", the least usual inrush of motors and lamps. Contacts, parts and coverings are not chosen yet.";
    }
}
