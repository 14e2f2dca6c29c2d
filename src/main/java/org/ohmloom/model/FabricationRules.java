package org.ohmloom.model;

import static org.ohmloom.units.Require.notBlank;
import static org.ohmloom.units.Require.notNegative;
import static org.ohmloom.units.Require.that;
import static org.ohmloom.units.Require.within;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * What a person asks of how the harness is made. What is empty is as the tables {@code length-allowances},
 * {@code bundle-practice} and {@code support-practice} say.
 *
 * @param connectorDepthMm       from a connector's wire entry to the crimp, mm, 0 or more
 * @param serviceLoopMm          loop at each connector, mm, 0 or more
 * @param reterminationCount     how often each end can be terminated anew, 0 to 10
 * @param dripLoopMm             what a drip loop takes, mm, 0 or more
 * @param cutStepMm              lengths are rounded up to a whole number of these, mm, 0 for no rounding
 * @param connectors             allowances of single connectors
 * @param layRatio               practical over ideal bundle diameter, 1 to 2
 * @param marginRatio            further growth kept in reserve, 1 to 2
 * @param spliceClearanceMetres  least distance of a splice from any end, m, 0 or more
 * @param spliceStaggerMetres    least distance between splices, m, 0 or more
 * @param fixedSplices           splices that stay where they are
 * @param supportSpacingMetres   most distance between supports, m, more than 0
 * @param labelSpacingMetres     most distance between markings, m, more than 0
 * @param routing                where wires may lie
 * @param workmanshipClass       class of workmanship asked for, 1 to 3 as IPC/WHMA-A-620 defines them; the table
 *                               {@code workmanship-classes} tells what each is
 * @param wasteFraction          share of wire and covering bought beyond what is used: ends of drums, set-up, mistakes; 0
 *                               to 1
 * @param currency               currency of the prices, as people write it, for example {@code EUR}
 * @param typicalFraction        least share of the listed resistance that these wires typically measure, more than 0 and at most
 *                               1; empty for no lower limit of continuity
 */
public record FabricationRules(
        OptionalDouble connectorDepthMm,
        OptionalDouble serviceLoopMm,
        OptionalDouble reterminationCount,
        OptionalDouble dripLoopMm,
        OptionalDouble cutStepMm,
        List<ConnectorAllowance> connectors,
        OptionalDouble layRatio,
        OptionalDouble marginRatio,
        OptionalDouble spliceClearanceMetres,
        OptionalDouble spliceStaggerMetres,
        List<SpliceId> fixedSplices,
        OptionalDouble supportSpacingMetres,
        OptionalDouble labelSpacingMetres,
        List<RoutingRule> routing,
        Optional<Integer> workmanshipClass,
        OptionalDouble wasteFraction,
        Optional<String> currency,
        OptionalDouble typicalFraction) {

    /** Nothing asked. */
    public static final FabricationRules NONE = new FabricationRules(
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            List.of(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            List.of(),
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            List.of());

    /** Class of workmanship of the most demanding products. */
    private static final int HIGHEST_CLASS = 3;

    private static final double LEAST_SPACING_METRES = 0.01;

    public FabricationRules {
        connectorDepthMm.ifPresent(value -> notNegative(value, "depth of connectors"));
        serviceLoopMm.ifPresent(value -> notNegative(value, "service loop"));
        reterminationCount.ifPresent(value -> within(value, 0, 10, "count of terminations anew"));
        dripLoopMm.ifPresent(value -> notNegative(value, "drip loop"));
        cutStepMm.ifPresent(value -> notNegative(value, "step of cut lengths"));
        connectors = List.copyOf(connectors);
        Set<ConnectorId> named = new HashSet<>();
        for (ConnectorAllowance each : connectors) {
            that(named.add(each.connector()), "connector %s has two allowances", each.connector());
        }
        layRatio.ifPresent(value -> within(value, 1, 2, "lay ratio of bundles"));
        marginRatio.ifPresent(value -> within(value, 1, 2, "margin of bundles"));
        spliceClearanceMetres.ifPresent(value -> notNegative(value, "clearance of splices"));
        spliceStaggerMetres.ifPresent(value -> notNegative(value, "stagger of splices"));
        fixedSplices = List.copyOf(fixedSplices);
        supportSpacingMetres.ifPresent(value -> within(value, LEAST_SPACING_METRES, 100, "spacing of supports"));
        labelSpacingMetres.ifPresent(value -> within(value, LEAST_SPACING_METRES, 100, "spacing of labels"));
        routing = List.copyOf(routing);
        workmanshipClass.ifPresent(value -> within(value, 1, HIGHEST_CLASS, "class of workmanship"));
        wasteFraction.ifPresent(value -> within(value, 0, 1, "waste of wire"));
        currency.ifPresent(value -> notBlank(value, "currency"));
        typicalFraction.ifPresent(value -> within(value, Double.MIN_NORMAL, 1, "typical share of a listed resistance"));
    }

    /** Rules that ask for no class of workmanship and say nothing of waste, money and typical resistances. */
    public FabricationRules(
            OptionalDouble connectorDepthMm,
            OptionalDouble serviceLoopMm,
            OptionalDouble reterminationCount,
            OptionalDouble dripLoopMm,
            OptionalDouble cutStepMm,
            List<ConnectorAllowance> connectors,
            OptionalDouble layRatio,
            OptionalDouble marginRatio,
            OptionalDouble spliceClearanceMetres,
            OptionalDouble spliceStaggerMetres,
            List<SpliceId> fixedSplices,
            OptionalDouble supportSpacingMetres,
            OptionalDouble labelSpacingMetres,
            List<RoutingRule> routing) {
        this(
                connectorDepthMm,
                serviceLoopMm,
                reterminationCount,
                dripLoopMm,
                cutStepMm,
                connectors,
                layRatio,
                marginRatio,
                spliceClearanceMetres,
                spliceStaggerMetres,
                fixedSplices,
                supportSpacingMetres,
                labelSpacingMetres,
                routing,
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                OptionalDouble.empty());
    }

    /** The allowance of a connector, when it has one of its own. */
    public Optional<ConnectorAllowance> at(ConnectorId connector) {
        return connectors.stream()
                .filter(each -> each.connector().equals(connector))
                .findFirst();
    }

    /** These with other routing rules. */
    public FabricationRules withRouting(List<RoutingRule> changed) {
        return with(changed, workmanshipClass, wasteFraction, currency, typicalFraction);
    }

    /** These with another class of workmanship, waste and currency. */
    public FabricationRules withWorkshop(
            Optional<Integer> changedClass, OptionalDouble changedWasteFraction, Optional<String> changedCurrency) {
        return with(routing, changedClass, changedWasteFraction, changedCurrency, typicalFraction);
    }

    /** These with another typical share of the listed resistance, or none. */
    public FabricationRules withTypicalFraction(OptionalDouble changed) {
        return with(routing, workmanshipClass, wasteFraction, currency, changed);
    }

    private FabricationRules with(
            List<RoutingRule> otherRouting,
            Optional<Integer> otherClass,
            OptionalDouble otherWasteFraction,
            Optional<String> otherCurrency,
            OptionalDouble otherTypicalFraction) {
        return new FabricationRules(
                connectorDepthMm,
                serviceLoopMm,
                reterminationCount,
                dripLoopMm,
                cutStepMm,
                connectors,
                layRatio,
                marginRatio,
                spliceClearanceMetres,
                spliceStaggerMetres,
                fixedSplices,
                supportSpacingMetres,
                labelSpacingMetres,
                otherRouting,
                otherClass,
                otherWasteFraction,
                otherCurrency,
                otherTypicalFraction);
    }

    /** These without mention of those wires. */
    public FabricationRules without(Set<WireId> gone) {
        return withRouting(routing.stream()
                .map(rule -> rule.without(gone))
                .flatMap(Optional::stream)
                .toList());
    }
}
