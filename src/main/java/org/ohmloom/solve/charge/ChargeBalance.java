package org.ohmloom.solve.charge;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.graph.AlternatorCondition;
import org.ohmloom.graph.BatteryCondition;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.Network;
import org.ohmloom.graph.PointId;
import org.ohmloom.graph.Sensing;
import org.ohmloom.graph.SourceConditions;
import org.ohmloom.model.Alternator;
import org.ohmloom.model.Battery;
import org.ohmloom.model.BatteryModel;
import org.ohmloom.model.Component;
import org.ohmloom.model.Harness;
import org.ohmloom.model.OperatingState;
import org.ohmloom.solve.BranchFlow;
import org.ohmloom.solve.charge.AlternatorBalance.Mode;
import org.ohmloom.tables.BatteryType;

/** Works out the charge balance of a state from what was published of it; shares no code with the search. */
final class ChargeBalance {

    /** A mean current this close to its limit, A, is at it. */
    private static final double SAME_AMPS = 1e-6;

    private final Harness harness;
    private final SourceConditions conditions;
    private final OperatingState state;
    private final Network network;
    private final Map<PointId, Double> volts;
    private final Map<BranchId, BranchFlow> flows;

    private ChargeBalance(Harness harness, SourceConditions conditions, OperatingState state, Published published) {
        this.harness = harness;
        this.conditions = conditions;
        this.state = state;
        network = published.network();
        volts = published.volts();
        flows = published.flows();
    }

    /** What is published of a solution. */
    record Published(Network network, Map<PointId, Double> volts, Map<BranchId, BranchFlow> flows) {}

    static StateCharge of(Harness harness, SourceConditions conditions, OperatingState state, Published published) {
        ChargeBalance balance = new ChargeBalance(harness, conditions, state, published);
        List<AlternatorBalance> alternators = new ArrayList<>();
        List<BatteryBalance> batteries = new ArrayList<>();
        for (Component component : harness.components().all()) {
            if (!state.sourceOn(component.id(), component.device())) {
                continue;
            }
            if (component.device() instanceof Alternator alternator) {
                balance.alternator(component, alternator).ifPresent(alternators::add);
            } else if (component.device() instanceof Battery battery) {
                balance.battery(component, battery).ifPresent(batteries::add);
            }
        }
        return new StateCharge(state.id(), alternators, batteries, BalanceSentences.of(state, alternators, batteries));
    }

    private Optional<AlternatorBalance> alternator(Component component, Alternator alternator) {
        AlternatorCondition condition = conditions.alternator(component, alternator, state);
        BranchId id = new BranchId(component.id().value());
        Optional<Branch> branch = network.branch(id);
        if (branch.isEmpty()) {
            return Optional.empty();
        }
        Optional<Sensing> sensing = network.sensings().stream()
                .filter(each -> each.source().equals(id) && volts(each.sense()).isPresent())
                .filter(each -> !each.sense().equals(branch.get().to()))
                .findFirst();
        PointId sense = sensing.map(Sensing::sense).orElse(branch.get().to());
        OptionalDouble held = difference(sense, branch.get().from());
        double amps = flows.get(id).amps();
        if (condition.limitAmps() <= 0 || held.isEmpty()) {
            return Optional.of(balance(component, condition, Mode.AT_REST, 0, sense, held.orElse(0), 0));
        }
        double droop = sensing.isPresent() ? 0 : condition.ohms() * amps;
        double miss = held.getAsDouble() - (condition.setPointVolts() - droop);
        boolean fullAlways = amps >= condition.limitAmps() - SAME_AMPS;
        Mode mode = fullAlways ? Mode.AT_LIMIT : amps <= SAME_AMPS ? Mode.IDLE : Mode.REGULATES;
        boolean mayBeBelow = mode == Mode.AT_LIMIT;
        boolean mayBeAbove = mode == Mode.IDLE;
        double residual = miss < 0 ? (mayBeBelow ? 0 : -miss) : mayBeAbove ? 0 : miss;
        return Optional.of(balance(component, condition, mode, amps, sense, held.getAsDouble(), residual));
    }

    private static AlternatorBalance balance(
            Component component,
            AlternatorCondition condition,
            Mode mode,
            double amps,
            PointId sense,
            double senseVolts,
            double residualVolts) {
        return new AlternatorBalance(
                component.id(),
                mode,
                amps,
                condition.limitAmps(),
                condition.setPointVolts(),
                sense.value(),
                senseVolts,
                residualVolts,
                condition.steps());
    }

    private Optional<BatteryBalance> battery(Component component, Battery battery) {
        Optional<Branch> branch = network.branch(new BranchId(component.id().value()));
        OptionalDouble terminal =
                branch.map(each -> difference(each.to(), each.from())).orElse(OptionalDouble.empty());
        if (terminal.isEmpty()) {
            return Optional.empty();
        }
        BatteryCondition condition = conditions.battery(component, battery, state);
        double amps = flows.get(branch.get().id()).amps();
        OptionalDouble plain = amps > BatteryBalance.NOTHING_AMPS
                ? OptionalDouble.of(condition.chargeFraction() * battery.capacityAmpHours() / amps)
                : OptionalDouble.empty();
        return Optional.of(new BatteryBalance(
                component.id(),
                amps,
                terminal.getAsDouble(),
                condition.emfVolts(),
                condition.ohms(),
                condition.acceptanceAmps(),
                condition.chargeFraction(),
                condition.celsius(),
                plain.isPresent() ? endurance(battery, condition, amps) : OptionalDouble.empty(),
                plain,
                condition.steps()));
    }

    private OptionalDouble endurance(Battery battery, BatteryCondition condition, double amps) {
        Optional<BatteryModel> model = battery.model();
        Optional<BatteryType> type = conditions.type(battery);
        if (model.isEmpty() || type.isEmpty()) {
            return OptionalDouble.empty();
        }
        double exponent =
                model.get().peukertExponent().orElse(type.get().peukert().value());
        double full = Peukert.hours(battery.capacityAmpHours(), model.get().ratedHours(), exponent, amps);
        return OptionalDouble.of(full * condition.chargeFraction());
    }

    private OptionalDouble volts(PointId point) {
        Double value = volts.get(point);
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    private OptionalDouble difference(PointId positive, PointId negative) {
        OptionalDouble high = volts(positive);
        OptionalDouble low = volts(negative);
        return high.isPresent() && low.isPresent()
                ? OptionalDouble.of(high.getAsDouble() - low.getAsDouble())
                : OptionalDouble.empty();
    }
}
