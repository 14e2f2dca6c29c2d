package org.ohmloom.draw;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.ohmloom.model.Harness;
import org.ohmloom.units.ShownUnits;

/**
 * Five steps that numbers of one kind are sorted into. Currents and drops go by 1 and 3 of each decade, sizes and diameters by
 * 1, 2 and 5, temperatures by equal steps, each chosen so that the largest number falls into the last step or the one before;
 * margins always by 0, 10, 25 and 50 %, the smallest last.
 *
 * @param numbers the kind
 * @param limits  the four limits between the steps, ascending, in the unit of {@link Readings}
 */
public record HeatScale(SceneOptions.Numbers numbers, List<Double> limits) {

    private static final List<Double> HALF_DECADES = List.of(1.0, 3.0);
    private static final List<Double> ONE_TWO_FIVE = List.of(1.0, 2.0, 5.0);
    private static final List<Double> EVEN_STEPS = List.of(1.0, 2.0, 2.5, 5.0);
    private static final List<Double> MARGINS = List.of(0.0, 0.1, 0.25, 0.5);
    private static final int LIMITS = HeatStep.values().length - 1;
    private static final double NOISE = 1e-9;

    public HeatScale {
        limits = List.copyOf(limits);
        if (limits.size() != LIMITS) {
            throw new IllegalArgumentException("a scale needs " + LIMITS + " limits, had " + limits);
        }
    }

    /** The scale of what a layout is asked to show; empty without numbers, or where heat is not asked for. */
    static Optional<HeatScale> of(Harness harness, Readings readings, SceneOptions options) {
        if (!options.heat() || options.numbers() == SceneOptions.Numbers.NONE) {
            return Optional.empty();
        }
        Stream<Double> ofWires = harness.wires().all().stream().flatMap(wire -> readings.ofWire(wire.id()).stream());
        Stream<Double> ofSegments = options.numbers() == SceneOptions.Numbers.DIAMETER
                ? harness.segments().all().stream()
                        .flatMap(segment -> readings.ofBundle(segment.id().value(), List.of()).stream())
                : Stream.empty();
        List<Double> values = Stream.concat(ofWires, ofSegments).sorted().toList();
        return values.isEmpty()
                ? Optional.empty()
                : Optional.of(of(options.numbers(), values.get(0), values.get(values.size() - 1)));
    }

    /** The scale for numbers from one value to another. */
    static HeatScale of(SceneOptions.Numbers numbers, double least, double most) {
        return new HeatScale(
                numbers,
                switch (numbers) {
                    case CURRENT, DROP -> descending(HALF_DECADES, most);
                    case SIZE, DIAMETER -> descending(ONE_TWO_FIVE, most);
                    case MARGIN -> MARGINS;
                    default -> even(least, most);
                });
    }

    /** The step a number falls into; a number on a limit belongs to the step above it. */
    public HeatStep step(double value) {
        int above = (int) limits.stream()
                .filter(limit -> value >= limit - NOISE * Math.abs(limit))
                .count();
        return HeatStep.values()[numbers == SceneOptions.Numbers.MARGIN ? LIMITS - above : above];
    }

    /** What a step holds, lower and upper limit as they are written; empty on the side that is open. */
    public Span span(HeatStep step) {
        int place = numbers == SceneOptions.Numbers.MARGIN ? LIMITS - step.ordinal() : step.ordinal();
        return new Span(place == 0 ? "" : text(limits.get(place - 1)), place == LIMITS ? "" : text(limits.get(place)));
    }

    /**
     * What a step holds.
     *
     * @param from smallest number; empty for all below {@code to}
     * @param to   where the next step begins; empty for all from {@code from} on
     */
    public record Span(String from, String to) {

        /** In words. */
        public String words() {
            return from.isEmpty() ? "below " + to : to.isEmpty() ? from + " and more" : from + " to " + to;
        }
    }

    private String text(double limit) {
        return Readings.text(numbers, limit, ShownUnits.USUAL);
    }

    /** The largest preferred number not above the largest value, and the three before it. */
    private static List<Double> descending(List<Double> series, double most) {
        double decade = most > 0 ? Math.floor(Math.log10(most * (1 + NOISE))) : 0;
        int place = (int) decade * series.size();
        while (preferred(series, place + 1) <= most * (1 + NOISE)) {
            place++;
        }
        int top = place;
        return Stream.of(top - 3, top - 2, top - 1, top)
                .map(each -> preferred(series, each))
                .toList();
    }

    private static double preferred(List<Double> series, int place) {
        int decade = Math.floorDiv(place, series.size());
        double mantissa = series.get(Math.floorMod(place, series.size()));
        return decade < 0 ? mantissa / Math.pow(10, -decade) : mantissa * Math.pow(10, decade);
    }

    /** Equal steps from a multiple of the step, the smallest of 1, 2, 2.5 and 5 of a decade with which five reach. */
    private static List<Double> even(double least, double most) {
        int place = -EVEN_STEPS.size();
        double start = least;
        double step = preferred(EVEN_STEPS, place);
        while (true) {
            start = Math.floor(least / step) * step;
            if (start + (LIMITS + 1) * step >= most) {
                double first = start;
                double width = step;
                return Stream.of(1, 2, 3, 4).map(each -> first + each * width).toList();
            }
            step = preferred(EVEN_STEPS, ++place);
        }
    }
}
