package org.ohmloom.bundle.section;

import java.util.ArrayList;
import java.util.List;
import org.ohmloom.model.Cable;
import org.ohmloom.model.FabricationRules;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Wire;
import org.ohmloom.tables.FabricationTables;

/**
 * Where a wire is marked: at both ends and between them at most every so far; a short wire needs no marking, and a core of a bought
 * cable is marked at its ends only, for nothing goes on it between them.
 *
 * @param metres places of the markings from the wire's from end, m
 * @param source the rows
 */
public record LabelPlan(List<Double> metres, String source) {

    private static final double NOISE_RATIO = 1e-9;

    public LabelPlan {
        metres = List.copyOf(metres);
    }

    /** The markings of a wire of a harness cut to that length, m. */
    public static LabelPlan of(Wire wire, double lengthMetres, Harness harness, FabricationTables tables) {
        LabelPlan plan = of(lengthMetres, harness.rules().fabricationRules(), tables);
        boolean core =
                wire.cable().map(harness.cables()::get).filter(Cable::isBought).isPresent();
        int last = plan.metres.size() - 1;
        return core && last > 1 ? new LabelPlan(List.of(plan.metres.get(0), plan.metres.get(last)), plan.source) : plan;
    }

    /** The markings of a single wire of that length, m. */
    public static LabelPlan of(double lengthMetres, FabricationRules rules, FabricationTables tables) {
        double least = tables.value("label-least").value();
        double first = tables.value("label-first").value();
        double spacing =
                rules.labelSpacingMetres().orElse(tables.value("label-spacing").value());
        String source = tables.value("label-spacing").citation().text() + "; "
                + tables.value("label-first").citation().text();
        List<Double> places = new ArrayList<>();
        if (lengthMetres >= least) {
            double between = lengthMetres - 2 * first;
            if (between <= 0) {
                places.add(lengthMetres / 2);
            } else {
                int gaps = (int)
                        Math.min(SupportPlan.MOST_PLACES, Math.max(1, Math.ceil(between / spacing - NOISE_RATIO)));
                for (int k = 0; k <= gaps; k++) {
                    places.add(first + k * between / gaps);
                }
            }
        }
        return new LabelPlan(places, source);
    }
}
