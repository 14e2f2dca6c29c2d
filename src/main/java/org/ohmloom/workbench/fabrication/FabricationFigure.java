package org.ohmloom.workbench.fabrication;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.ohmloom.model.FabricationRules;
import org.ohmloom.units.Unit;
import org.ohmloom.workbench.words.TypedNumbers;

/** The figures of how a harness is made that a person may enter; each is as a table says where it is not entered. */
enum FabricationFigure {
    CONNECTOR_DEPTH(
            "Connector depth",
            "connector-depth",
            Optional.of(Unit.MILLIMETRE),
            FabricationRules::connectorDepthMm,
            "From the wire entry of a connector, where segments are measured to, to the crimp"),
    SERVICE_LOOP(
            "Service loop",
            "service-loop",
            Optional.of(Unit.MILLIMETRE),
            FabricationRules::serviceLoopMm,
            "Loop at each connector to reach another cavity or to open it"),
    RETERMINATIONS(
            "Terminations anew",
            "re-terminations",
            Optional.empty(),
            FabricationRules::reterminationCount,
            "How often each end can be cut off and terminated anew"),
    DRIP_LOOP(
            "Drip loop",
            "drip-loop",
            Optional.of(Unit.MILLIMETRE),
            FabricationRules::dripLoopMm,
            "What a drip loop takes where a connector asks for one"),
    CUT_STEP(
            "Step of cut lengths",
            "cut-step",
            Optional.of(Unit.MILLIMETRE),
            FabricationRules::cutStepMm,
            "Cut lengths are rounded up to whole ones of these; 0 does not round"),
    LAY_RATIO(
            "Lay ratio",
            "lay-ratio",
            Optional.empty(),
            FabricationRules::layRatio,
            "Practical over ideal diameter of wires laid by hand, 1 to 2"),
    MARGIN_RATIO(
            "Margin",
            "margin-ratio",
            Optional.empty(),
            FabricationRules::marginRatio,
            "Growth of bundles kept in reserve, as a factor of the diameter, 1 to 2"),
    SPLICE_CLEARANCE(
            "Splice clearance",
            "splice-clearance",
            Optional.of(Unit.METRE),
            FabricationRules::spliceClearanceMetres,
            "Least distance of a splice from any end; not entered, a joint of several wires takes the row"
                    + " splice-clearance-joint"),
    SPLICE_STAGGER(
            "Splice stagger",
            "splice-stagger",
            Optional.of(Unit.METRE),
            FabricationRules::spliceStaggerMetres,
            "Least distance between splices in one bundle"),
    SUPPORT_SPACING(
            "Support spacing",
            "support-spacing",
            Optional.of(Unit.METRE),
            FabricationRules::supportSpacingMetres,
            "Most distance between supports along a segment"),
    LABEL_SPACING(
            "Label spacing",
            "label-spacing",
            Optional.of(Unit.METRE),
            FabricationRules::labelSpacingMetres,
            "Most distance between markings along a wire"),
    WASTE(
            "Waste",
            "waste",
            Optional.empty(),
            FabricationRules::wasteFraction,
            "Share of wire and covering bought beyond what is used: ends of drums, set-up, mistakes; 0 to 1"),
    TYPICAL(
            "Typical resistance",
            "",
            Optional.empty(),
            FabricationRules::typicalFraction,
            "Least share of the listed resistance that these wires typically measure, above 0 to 1: the lower limit of"
                    + " continuity; not entered, there is none"),
    WORKMANSHIP(
            "Workmanship class",
            "",
            Optional.empty(),
            rules -> rules.workmanshipClass().map(OptionalDouble::of).orElse(OptionalDouble.empty()),
            "Class of workmanship asked for, 1 to 3 as IPC/WHMA-A-620 defines them");

    private final String label;
    private final String item;
    private final Optional<Unit> unit;
    private final Function<FabricationRules, OptionalDouble> entered;
    private final String meaning;

    FabricationFigure(
            String label,
            String item,
            Optional<Unit> unit,
            Function<FabricationRules, OptionalDouble> entered,
            String meaning) {
        this.label = label;
        this.item = item;
        this.unit = unit;
        this.entered = entered;
        this.meaning = meaning;
    }

    /** What people call it. */
    String label() {
        return label;
    }

    /** Row of the tables that says it otherwise; empty where no table does. */
    Optional<String> item(boolean boat) {
        return item.isEmpty()
                ? Optional.empty()
                : Optional.of(this == SUPPORT_SPACING && boat ? item + "-small-craft" : item);
    }

    /** Its unit; none of counts and ratios. */
    Optional<Unit> unit() {
        return unit;
    }

    /** What is entered. */
    OptionalDouble entered(FabricationRules rules) {
        return entered.apply(rules);
    }

    /** What it is, in a sentence. */
    String meaning() {
        return meaning;
    }

    /** A number typed for it, in its unit; nothing for an empty text. */
    OptionalDouble typed(String text) {
        if (text.isBlank()) {
            return OptionalDouble.empty();
        }
        double canonical = TypedNumbers.needed(text, unit.orElse(Unit.FRACTION), label);
        return OptionalDouble.of(unit.orElse(Unit.FRACTION).fromCanonical(canonical));
    }
}
