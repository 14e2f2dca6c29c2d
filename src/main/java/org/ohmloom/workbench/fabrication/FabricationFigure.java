package org.ohmloom.workbench.fabrication;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.ohmloom.model.FabricationRules;
import org.ohmloom.units.Unit;
import org.ohmloom.workbench.words.TypedNumbers;
import org.ohmloom.workbench.words.Words;

/** The figures of how a harness is made that a person may enter; each is as a table says where it is not entered. */
enum FabricationFigure {
    CONNECTOR_DEPTH("connector-depth", Optional.of(Unit.MILLIMETRE), FabricationRules::connectorDepthMm),
    SERVICE_LOOP("service-loop", Optional.of(Unit.MILLIMETRE), FabricationRules::serviceLoopMm),
    RETERMINATIONS("re-terminations", Optional.empty(), FabricationRules::reterminationCount),
    DRIP_LOOP("drip-loop", Optional.of(Unit.MILLIMETRE), FabricationRules::dripLoopMm),
    CUT_STEP("cut-step", Optional.of(Unit.MILLIMETRE), FabricationRules::cutStepMm),
    LAY_RATIO("lay-ratio", Optional.empty(), FabricationRules::layRatio),
    MARGIN_RATIO("margin-ratio", Optional.empty(), FabricationRules::marginRatio),
    SPLICE_CLEARANCE("splice-clearance", Optional.of(Unit.METRE), FabricationRules::spliceClearanceMetres),
    SPLICE_STAGGER("splice-stagger", Optional.of(Unit.METRE), FabricationRules::spliceStaggerMetres),
    SUPPORT_SPACING("support-spacing", Optional.of(Unit.METRE), FabricationRules::supportSpacingMetres),
    LABEL_SPACING("label-spacing", Optional.of(Unit.METRE), FabricationRules::labelSpacingMetres),
    WASTE("waste", Optional.empty(), FabricationRules::wasteFraction),
    TYPICAL("", Optional.empty(), FabricationRules::typicalFraction),
    WORKMANSHIP("", Optional.empty(), rules -> rules.workmanshipClass()
            .map(OptionalDouble::of)
            .orElse(OptionalDouble.empty()));

    private final String item;
    private final Optional<Unit> unit;
    private final Function<FabricationRules, OptionalDouble> entered;

    FabricationFigure(String item, Optional<Unit> unit, Function<FabricationRules, OptionalDouble> entered) {
        this.item = item;
        this.unit = unit;
        this.entered = entered;
    }

    /** What people call it. */
    String label() {
        return word("");
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
        return word(".about");
    }

    /** A number typed for it, in its unit; nothing for an empty text. */
    OptionalDouble typed(String text) {
        if (text.isBlank()) {
            return OptionalDouble.empty();
        }
        double canonical = TypedNumbers.needed(text, unit.orElse(Unit.FRACTION), label());
        return OptionalDouble.of(unit.orElse(Unit.FRACTION).fromCanonical(canonical));
    }

    private String word(String what) {
        return Words.of("fabrication")
                .get("figure." + name().toLowerCase(Locale.ROOT).replace('_', '-') + what);
    }
}
