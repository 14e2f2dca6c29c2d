package org.ohmloom.tables;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What is listed of sensors and data buses. */
public final class SignalTables {
    private final SignalShelf shelf;

    SignalTables(SignalShelf shelf) {
        this.shelf = shelf;
    }

    /** Names of the sets of bus limits, in file order; the first is taken where a bus names none. */
    public List<String> limitSets() {
        return shelf.limits.stream().map(BusLimit::set).distinct().toList();
    }

    /**
     * The limits of a set at a bit rate: its row of that rate, else of the next higher one, which is the stricter; empty above its
     * highest.
     *
     * @param set           the set
     * @param bitsPerSecond bit rate, bit/s
     */
    public Optional<BusLimit> limit(String set, double bitsPerSecond) {
        return shelf.limits.stream()
                .filter(each -> each.set().equals(set) && each.bitsPerSecond() >= bitsPerSecond)
                .min(Comparator.comparingDouble(BusLimit::bitsPerSecond));
    }

    /** The bit rates a set lists, bit/s, the highest first. */
    public List<Double> rates(String set) {
        return shelf.limits.stream()
                .filter(each -> each.set().equals(set))
                .map(BusLimit::bitsPerSecond)
                .distinct()
                .sorted(Comparator.reverseOrder())
                .toList();
    }

    /** A figure of {@link BusFigure}, in the unit named there. */
    public CitedValue figure(String item) {
        return shelf.figures.get(item).value();
    }

    /** How fast what a sort of sensor measures can change, where it is listed. */
    public Optional<ChangeTime> changeTime(String sensing) {
        return shelf.changeTimes.find(sensing);
    }
}
