package org.ohmloom.tables;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/** What is listed of how harnesses are made: allowances, tolerances, bundles, coverings, supports, markings. */
public final class FabricationTables {
    private final FabricationShelf shelf;

    FabricationTables(FabricationShelf shelf) {
        this.shelf = shelf;
    }

    /**
     * The figure of that name, as in "connector-depth".
     *
     * @throws IllegalArgumentException when no table has it; the message names those there are
     */
    public PracticeFigure figure(String item) {
        return shelf.practice.get(item);
    }

    /** The value of the figure of that name, in the unit its row gives. */
    public CitedValue value(String item) {
        return figure(item).value();
    }

    /** How much longer than asked a wire of that length may be, by the first row it is not too long for. */
    public LengthTolerance tolerance(double lengthMetres) {
        return step(shelf.tolerances, LengthTolerance::upToMetres, lengthMetres);
    }

    /** Distance between ties round a bundle of that diameter, by the first row it is not too thick for. */
    public TieSpacing tieSpacing(double diameterMm) {
        return step(shelf.ties, TieSpacing::upToMm, diameterMm);
    }

    /**
     * The class of workmanship of that number.
     *
     * @throws IllegalArgumentException when no table has it
     */
    public WorkmanshipClass workmanshipClass(int number) {
        return shelf.classes.get(String.valueOf(number));
    }

    /** The sizes of labels, in file order. */
    public List<LabelSize> labels() {
        return shelf.labels.all();
    }

    /** The sizes of coverings, in file order. */
    public List<CoveringSize> coverings() {
        return shelf.coverings.all();
    }

    /** The covering of that name, when it is listed. */
    public Optional<CoveringSize> findCovering(String id) {
        return shelf.coverings.find(id);
    }

    private static <T> T step(List<T> rows, Function<T, OptionalDouble> upTo, double value) {
        return rows.stream()
                .filter(row -> value <= upTo.apply(row).orElse(Double.POSITIVE_INFINITY))
                .min(Comparator.comparingDouble(row -> upTo.apply(row).orElse(Double.POSITIVE_INFINITY)))
                .orElseThrow(() -> new IllegalStateException("no row without an upper end is listed"));
    }
}
