package org.ohmloom.draw;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ohmloom.model.Breakout;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.Covering;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Place;
import org.ohmloom.model.Splice;
import org.ohmloom.model.WireId;
import org.ohmloom.units.Formats;

/** What is written along the ties and at the breakouts, and how much room that needs. For one thread. */
final class RunTexts {

    static final double LENGTH_MM = 2.0;
    static final double SMALL_MM = 1.8;
    static final double INSET_MM = 2;
    static final double BETWEEN_MM = 1.5;

    private static final double LEAST_RUN_MM = 16;
    private static final double MOST_NAME_MM = 26;
    private static final double MOST_SOFT_MM = 45;
    private static final String WIDEST_NUMBER = "max 88.8 mV in ";

    private final Harness harness;
    private final Figures figures;
    private final Lettering lettering;
    private final Map<String, List<WireId>> wiresOf;
    private final boolean steady;
    private final Map<Asked, RunText> known = new HashMap<>();
    private final Map<String, Double> splices = new HashMap<>();

    RunTexts(Harness harness, Figures figures, Lettering lettering, Map<String, List<WireId>> wiresOf, boolean steady) {
        this.harness = harness;
        this.figures = figures;
        this.lettering = lettering;
        this.wiresOf = wiresOf;
        this.steady = steady;
    }

    /**
     * The texts of a tie.
     *
     * @param towards   the breakout it leads to
     * @param branching whether the harness branches there
     * @param first     whether the breakout it comes from is named by no other tie
     */
    RunText of(Tie tie, BreakoutId towards, boolean branching, boolean first) {
        return known.computeIfAbsent(
                new Asked(tie.id(), towards, branching, first), asked -> make(tie, towards, branching, first));
    }

    private record Asked(String tie, BreakoutId towards, boolean branching, boolean first) {}

    private RunText make(Tie tie, BreakoutId towards, boolean branching, boolean first) {
        if (tie.segment().isEmpty()) {
            return new RunText("", "", Optional.empty(), "", "", 0);
        }
        String near = first ? joint(tie.other(towards), true) : "";
        String far = joint(towards, branching);
        String length = Formats.millimetres(tie.lengthMetres() * 1000);
        String covering =
                tie.segment().get().covering().map(each -> " " + covering(each)).orElse("");
        String zone = tie.segment().get().zone().map(each -> " " + each).orElse("");
        String soft = lettering.cut(tie.id() + zone + covering, Weight.REGULAR, SMALL_MM, MOST_SOFT_MM);
        Optional<String> number = figures.ofBundle(wiresOf.getOrDefault(tie.id(), List.of()));
        double above = lettering.widthMm(length, Weight.BOLD, LENGTH_MM)
                + BETWEEN_MM
                + lettering.widthMm(soft, Weight.REGULAR, SMALL_MM);
        double below = numberMm(tie, number)
                + (first ? lettering.widthMm(near, Weight.REGULAR, SMALL_MM) + BETWEEN_MM : 0)
                + lettering.widthMm(far, Weight.REGULAR, SMALL_MM);
        double width = Math.max(LEAST_RUN_MM, Math.max(above, below) + 2 * INSET_MM);
        return new RunText(length, soft, number, near, far, width);
    }

    /** Room for the number; where the layout must not change with it, for the widest number there may be. */
    private double numberMm(Tie tie, Optional<String> number) {
        double actual = number.map(text -> lettering.widthMm(text, Weight.REGULAR, SMALL_MM) + BETWEEN_MM)
                .orElse(0.0);
        if (!steady) {
            return actual;
        }
        List<WireId> wires = wiresOf.getOrDefault(tie.id(), List.of());
        double widest = figures.sizes(wires).stream()
                .mapToDouble(text -> lettering.widthMm(text, Weight.REGULAR, SMALL_MM))
                .max()
                .orElse(0);
        for (WireId wire : wires) {
            widest = Math.max(widest, lettering.widthMm(WIDEST_NUMBER + wire, Weight.REGULAR, SMALL_MM));
        }
        return Math.max(actual, widest + BETWEEN_MM);
    }

    /** What is written at a breakout: its id, and its name where the harness branches. */
    String joint(BreakoutId id, boolean branching) {
        Breakout breakout = harness.breakouts().get(id);
        String name = branching ? Spot.name(breakout) : id.value();
        return lettering.cut(name, Weight.REGULAR, SMALL_MM, MOST_NAME_MM);
    }

    /** Extra run for the splices along a segment, mm: each needs its own label. */
    double splicesMm(Tie tie) {
        return splices.computeIfAbsent(tie.id(), id -> splices(tie).stream()
                .mapToDouble(splice -> Math.max(8, lettering.widthMm(splice.id().value(), Weight.BOLD, SMALL_MM) + 3))
                .sum());
    }

    /** Splices along a tie, nearest to its {@code from} end first. */
    List<Splice> splices(Tie tie) {
        return harness.splices().all().stream()
                .filter(splice -> splice.place()
                        .filter(place -> place instanceof Place.OnSegment on
                                && tie.segment().isPresent()
                                && on.segment().equals(tie.segment().get().id()))
                        .isPresent())
                .sorted(java.util.Comparator.comparingDouble(
                        splice -> ((Place.OnSegment) splice.place().orElseThrow()).distanceMetres()))
                .toList();
    }

    private static String covering(Covering covering) {
        return switch (covering.kind()) {
            case TAPE -> "tape";
            case BRAIDED_SLEEVE -> "braid";
            case CONDUIT -> "conduit";
            case HEAT_SHRINK -> "heat shrink";
            case TUBE -> "tube";
        };
    }
}
