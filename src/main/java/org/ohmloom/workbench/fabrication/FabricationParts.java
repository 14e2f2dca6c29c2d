package org.ohmloom.workbench.fabrication;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.model.ConnectorAllowance;
import org.ohmloom.model.FabricationRules;
import org.ohmloom.model.SpliceId;
import org.ohmloom.workbench.words.Words;

/** Fabrication rules put together anew with one thing changed. */
final class FabricationParts {
    private static final Words WORDS = Words.of("fabrication");

    private FabricationParts() {}

    /** The rules with a figure entered, or left to the table. */
    static FabricationRules with(FabricationRules was, FabricationFigure figure, OptionalDouble entered) {
        return of(was, Map.of(figure, entered), was.connectors(), was.fixedSplices(), was.currency());
    }

    /** The rules with other allowances of connectors. */
    static FabricationRules withAllowances(FabricationRules was, List<ConnectorAllowance> connectors) {
        return of(was, Map.of(), connectors, was.fixedSplices(), was.currency());
    }

    /** The rules with other splices that stay where they are. */
    static FabricationRules withFixed(FabricationRules was, List<SpliceId> splices) {
        return of(was, Map.of(), was.connectors(), splices, was.currency());
    }

    /** The rules with prices in another currency. */
    static FabricationRules withCurrency(FabricationRules was, Optional<String> currency) {
        return of(was, Map.of(), was.connectors(), was.fixedSplices(), currency);
    }

    private static FabricationRules of(
            FabricationRules was,
            Map<FabricationFigure, OptionalDouble> entered,
            List<ConnectorAllowance> connectors,
            List<SpliceId> splices,
            Optional<String> currency) {
        OptionalDouble workmanship = now(was, entered, FabricationFigure.WORKMANSHIP);
        return new FabricationRules(
                now(was, entered, FabricationFigure.CONNECTOR_DEPTH),
                now(was, entered, FabricationFigure.SERVICE_LOOP),
                now(was, entered, FabricationFigure.RETERMINATIONS),
                now(was, entered, FabricationFigure.DRIP_LOOP),
                now(was, entered, FabricationFigure.CUT_STEP),
                connectors,
                now(was, entered, FabricationFigure.LAY_RATIO),
                now(was, entered, FabricationFigure.MARGIN_RATIO),
                now(was, entered, FabricationFigure.SPLICE_CLEARANCE),
                now(was, entered, FabricationFigure.SPLICE_STAGGER),
                splices,
                now(was, entered, FabricationFigure.SUPPORT_SPACING),
                now(was, entered, FabricationFigure.LABEL_SPACING),
                was.routing(),
                workmanship.isPresent() ? Optional.of(whole(workmanship.getAsDouble())) : Optional.empty(),
                now(was, entered, FabricationFigure.WASTE),
                currency,
                now(was, entered, FabricationFigure.TYPICAL));
    }

    private static int whole(double value) {
        if (value != Math.rint(value)) {
            throw new IllegalArgumentException(WORDS.get("fabrication-parts.a-class-of-workmanship"));
        }
        return (int) value;
    }

    private static OptionalDouble now(
            FabricationRules was, Map<FabricationFigure, OptionalDouble> entered, FabricationFigure figure) {
        return entered.getOrDefault(figure, figure.entered(was));
    }
}
