package org.ohmloom.size;

import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Function;
import org.ohmloom.heat.ConductorResistance;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;
import org.ohmloom.tables.ConductorFamily;
import org.ohmloom.tables.ConductorRow;
import org.ohmloom.tables.DesignBasis;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.Gauge;

/**
 * The sizes that wires without one are solved with while they are being chosen. Immutable.
 *
 * <p>How to use it: solve once with {@link #largest} sizes, which gives every load nearly the currents it will have;
 * {@link #grow} the {@link #minimum} sizes to what the choice asks for; solve and grow again until nothing changes.
 * Sizes only grow and every family ends, so this ends too, in practice after two or three rounds.
 */
public final class ProvisionalSizes {
    private final SortedMap<WireId, ConductorRow> rows;
    private final Map<WireId, ConductorFamily> families;
    private final Map<WireId, Gauge> instead;

    private ProvisionalSizes(SortedMap<WireId, ConductorRow> rows, Map<WireId, ConductorFamily> families) {
        this(rows, families, Map.of());
    }

    private ProvisionalSizes(
            SortedMap<WireId, ConductorRow> rows, Map<WireId, ConductorFamily> families, Map<WireId, Gauge> instead) {
        this.rows = Collections.unmodifiableSortedMap(rows);
        this.families = families;
        this.instead = Collections.unmodifiableMap(instead);
    }

    /** Every wire without a size at the mechanical minimum of the design rules or the basis. */
    public static ProvisionalSizes minimum(Harness harness, WireTables tables, DesignBasis basis) {
        return of(harness, tables, basis, family -> MechanicalDemand.of(harness, tables, basis, family)
                .requirement()
                .smallest()
                .flatMap(family::row)
                .orElse(Demand.largest(family)));
    }

    /** Every wire without a size at the largest of its family. */
    public static ProvisionalSizes largest(Harness harness, WireTables tables, DesignBasis basis) {
        return of(harness, tables, basis, Demand::largest);
    }

    private static ProvisionalSizes of(
            Harness harness, WireTables tables, DesignBasis basis, Function<ConductorFamily, ConductorRow> start) {
        ConductorResistance resistance = new ConductorResistance(tables, basis);
        SortedMap<WireId, ConductorRow> rows = new TreeMap<>();
        SortedMap<WireId, ConductorFamily> families = new TreeMap<>();
        for (Wire wire : harness.wires().all()) {
            if (wire.gauge().isEmpty()) {
                ConductorFamily family = AllowedSizes.of(
                        harness, resistance.family(wire, harness.rules().gaugeSystem()));
                families.put(wire.id(), family);
                rows.put(wire.id(), start.apply(family));
            }
        }
        return new ProvisionalSizes(rows, families);
    }

    /** The wire's own size, otherwise its provisional one; what {@link #with} says comes before both. */
    public Gauge gauge(Wire wire) {
        Gauge said = instead.get(wire.id());
        return said != null ? said : wire.gauge().orElseGet(() -> row(wire.id()).gauge());
    }

    /** These sizes with others for some wires, whether they have a size of their own or not: for a trial. */
    public ProvisionalSizes with(Map<WireId, Gauge> sizes) {
        SortedMap<WireId, Gauge> changed = new TreeMap<>(instead);
        changed.putAll(sizes);
        return new ProvisionalSizes(rows, families, changed);
    }

    /** Whether a wire has no size of its own. */
    public boolean isProvisional(WireId wire) {
        return rows.containsKey(wire);
    }

    /**
     * These sizes grown to what the choices ask for, never shrunk; this instance when nothing changes. Where some
     * requirement is met by no size, the others decide.
     */
    public ProvisionalSizes grow(Map<WireId, ConductorChoice> choices) {
        SortedMap<WireId, ConductorRow> grown = new TreeMap<>(rows);
        choices.values().stream()
                .filter(choice -> rows.containsKey(choice.wire()))
                .forEach(choice ->
                        wanted(choice).ifPresent(row -> grown.merge(choice.wire(), row, ProvisionalSizes::thicker)));
        return grown.equals(rows) ? this : new ProvisionalSizes(grown, families, instead);
    }

    /** These sizes with some wires one size larger, for a part of the network that did not solve; this instance when all
     * of them are the largest already. */
    public ProvisionalSizes oneLarger(Collection<WireId> wires) {
        SortedMap<WireId, ConductorRow> grown = new TreeMap<>(rows);
        wires.stream().filter(rows::containsKey).forEach(id -> {
            List<ConductorRow> all = family(id).rows();
            grown.put(id, all.get(Math.min(all.indexOf(row(id)) + 1, all.size() - 1)));
        });
        return grown.equals(rows) ? this : new ProvisionalSizes(grown, families, instead);
    }

    private Optional<ConductorRow> wanted(ConductorChoice choice) {
        ConductorFamily family = family(choice.wire());
        return choice.gauge().flatMap(family::row).or(() -> choice.requirements().stream()
                .flatMap(requirement -> requirement.smallest().stream())
                .flatMap(gauge -> family.row(gauge).stream())
                .reduce(ProvisionalSizes::thicker));
    }

    private static ConductorRow thicker(ConductorRow one, ConductorRow other) {
        return other.copperAreaMm2() > one.copperAreaMm2() ? other : one;
    }

    private ConductorRow row(WireId wire) {
        ConductorRow row = rows.get(wire);
        if (row == null) {
            throw new IllegalArgumentException("wire " + wire + " was not there when the sizes were begun");
        }
        return row;
    }

    private ConductorFamily family(WireId wire) {
        ConductorFamily family = families.get(wire);
        if (family == null) {
            throw new IllegalArgumentException("wire " + wire + " was not there when the sizes were begun");
        }
        return family;
    }
}
