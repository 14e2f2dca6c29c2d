package org.ohmloom.solve.envelope;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * Currents and voltages that are the same sum of what takes current in every model, put together: the branches of one chain
 * carry one current and are searched once.
 *
 * @param <T> what a current or voltage belongs to
 */
final class Targets<T> {
    /** Numbers that differ by less are the same. */
    private static final double SAME = 1e-9;

    private final Map<List<Long>, Target<T>> bySums = new LinkedHashMap<>();

    /**
     * Some currents or voltages that are one sum.
     *
     * @param members whose they are
     * @param sums    the sum in each model that has one
     */
    record Target<T>(List<T> members, List<Optional<Functional>> sums) {
        /** The most one ampere of a taker adds in any model, either way. */
        double perAmp(int taker) {
            return sums.stream()
                    .flatMap(Optional::stream)
                    .mapToDouble(sum -> Math.abs(sum.perAmp(taker)))
                    .max()
                    .orElse(0);
        }

        /** Whether it depends on a source with a sense point by more than some A or V at its most current. */
        double perSensedAmp() {
            return sums.stream()
                    .flatMap(Optional::stream)
                    .mapToDouble(sum -> Math.abs(sum.perSensedAmp()))
                    .max()
                    .orElse(0);
        }
    }

    /** Adds one; {@code eitherWay} takes a sum and its negative for the same. */
    void add(T member, List<LinearModel> models, Function<LinearModel, Optional<Functional>> sum, boolean eitherWay) {
        List<Optional<Functional>> sums = models.stream().map(sum).toList();
        List<Long> key = key(sums, 1);
        List<Long> negative = key(sums, -1);
        if (eitherWay && bySums.containsKey(negative)) {
            bySums.get(negative).members().add(member);
            return;
        }
        bySums.computeIfAbsent(key, unused -> new Target<>(new ArrayList<>(), sums))
                .members()
                .add(member);
    }

    private static List<Long> key(List<Optional<Functional>> sums, int sign) {
        List<Long> key = new ArrayList<>();
        for (Optional<Functional> sum : sums) {
            sum.ifPresentOrElse(
                    each -> {
                        key.add(Math.round(sign * each.constant() / SAME));
                        for (int taker = 0; taker < each.takers(); taker++) {
                            key.add(Math.round(sign * each.perAmp(taker) / SAME));
                        }
                    },
                    () -> key.add(Long.MIN_VALUE));
        }
        return key;
    }

    /** Each different sum once. */
    List<Target<T>> all() {
        return List.copyOf(bySums.values());
    }
}
