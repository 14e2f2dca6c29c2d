package org.ohmloom.heat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.ConcurrentHashMap;
import org.ohmloom.graph.Routes;
import org.ohmloom.heat.balance.HeatBalance;
import org.ohmloom.heat.balance.OpenAir;
import org.ohmloom.model.Harness;
import org.ohmloom.model.SizingRules;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;
import org.ohmloom.tables.Citation;
import org.ohmloom.tables.CitedValue;
import org.ohmloom.tables.ConductorRow;
import org.ohmloom.tables.DesignBasis;
import org.ohmloom.tables.InsulationType;
import org.ohmloom.tables.Status;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Gauge;
import org.ohmloom.words.Text;

/**
 * What wires may carry where they lie.
 *
 * <p>Two methods, both worked out and shown: the tables of the design basis ({@link TableAmps}) and the heat balance at the
 * insulation's limit, with as many equal wires together fully loaded. Which one counts:
 *
 * <ul>
 *   <li>a basis with an ampacity table of its own: the table;
 *   <li>a basis without one (road vehicle): the heat balance of the wire alone less a margin, times the basis's bundle
 *       curve, and never more than its free-air table allows with the same factors;
 *   <li>where the sizing rules ask for it: the heat balance less the margin, also where it allows more than a table.
 * </ul>
 *
 * <p>AC 43.13-1B Table 11-9 already holds 70 C air, a bundle of 33 wires at 20 % load and 60,000 ft, so the basis's own
 * factors only bite beyond that. Safe for any number of threads.
 */
public final class Ampacities {

    /** Share kept in reserve where neither basis nor sizing rules say one: common practice. */
    static final double USUAL_MARGIN = 0.10;

    private final Harness harness;
    private final WireTables tables;
    private final DesignBasis basis;
    private final Routes routes;
    private final ConductorResistance resistance;
    private final TableAmps table;
    private final WireShapes shapes;
    private final BalanceAmps balance = new BalanceAmps();
    private final Map<Case, Optional<Ampacity>> known = new ConcurrentHashMap<>();
    private final Map<WireId, WirePlaces> placesOf = new ConcurrentHashMap<>();

    /** All that decides what a wire may carry. */
    private record Case(
            ConductorRow row, InsulationType insulation, double ambientCelsius, boolean engineSpace, int loadedCount) {}

    /** Ampacities of the wires of a harness. */
    public Ampacities(Harness harness, WireTables tables, DesignBasis basis, Routes routes) {
        this.harness = harness;
        this.tables = tables;
        this.basis = basis;
        this.routes = routes;
        this.resistance = new ConductorResistance(tables, basis);
        this.table = new TableAmps(tables, basis, harness.rules().nominalVolts());
        this.shapes = new WireShapes(tables);
    }

    /** The hottest air along the wire, deg C: zones of its segments and ends, the default where one has no zone. */
    public double ambientCelsius(Wire wire) {
        return places(wire).hottestCelsius(harness.rules().ambientCelsius());
    }

    private WirePlaces places(Wire wire) {
        return placesOf.computeIfAbsent(wire.id(), id -> WirePlaces.of(harness, routes, wire));
    }

    /** The air at a temperature, at the altitude of the sizing rules. */
    OpenAir air(double ambientCelsius) {
        return OpenAir.at(ambientCelsius, altitudeMetres());
    }

    private double altitudeMetres() {
        return harness.rules().sizingRules().altitudeMetres().orElse(0);
    }

    /** The wire's insulation, the design rules' own when it names none; empty when the tables do not have it. */
    public Optional<InsulationType> insulation(Wire wire) {
        return tables.findInsulation(wire.insulation().orElse(harness.rules().insulation()));
    }

    /** The wire with a size as the heat balance sees it. */
    public WireShape shape(Wire wire, Gauge gauge) {
        return shapes.of(resistance.row(wire, gauge), insulation(wire));
    }

    /** What the wire may carry alone in the hottest free air along it by the heat balance, A; 0 for unknown insulation. */
    public double aloneAmps(Wire wire, Gauge gauge) {
        return insulation(wire)
                .map(type -> balance.alone(shape(wire, gauge).wire(), air(ambientCelsius(wire)), type.maximumCelsius()))
                .orElse(0.0);
    }

    /**
     * What the wire may carry with a size; empty when its insulation is not known, or when the table has no row for it and
     * the table decides.
     *
     * @param wire        the wire
     * @param gauge       a size, its own or one to be tried
     * @param loadedCount loaded conductors lying together, the wire among them, 1 or more
     */
    public Optional<Ampacity> of(Wire wire, Gauge gauge, int loadedCount) {
        return insulation(wire).flatMap(insulation -> {
            WirePlaces places = places(wire);
            return known.computeIfAbsent(
                    new Case(
                            resistance.row(wire, gauge),
                            insulation,
                            places.hottestCelsius(harness.rules().ambientCelsius()),
                            places.engineSpace(),
                            loadedCount),
                    this::of);
        });
    }

    private Optional<Ampacity> of(Case asked) {
        ConductorRow row = asked.row();
        InsulationType insulation = asked.insulation();
        double ambient = asked.ambientCelsius();
        int loadedCount = asked.loadedCount();
        WireShape shape = shapes.of(row, Optional.of(insulation));
        Optional<Ampacity> byTable = table.of(row, insulation, ambient, asked.engineSpace(), loadedCount)
                .map(this::inThinAir);
        Ampacity whole = balanced(
                row, shape, insulation, ambient, loadedCount, modelFactor(shape, insulation, ambient, loadedCount), 0);
        Optional<Ampacity> chosen = chosen(row, shape, insulation, ambient, loadedCount, byTable);
        return chosen.map(limit -> limit.compared(new MethodComparison(
                byTable.map(each -> OptionalDouble.of(each.limitAmps())).orElse(OptionalDouble.empty()),
                byTable.map(each -> each.words() + "; " + each.base().citation().text())
                        .orElse("the table has no row for " + row.gauge().text()),
                whole.limitAmps(),
                whole.words() + "; " + shape.words(),
                byTable.isEmpty() || limit.limitAmps() != byTable.get().limitAmps())));
    }

    private Optional<Ampacity> chosen(
            ConductorRow row,
            WireShape shape,
            InsulationType insulation,
            double ambient,
            int loadedCount,
            Optional<Ampacity> byTable) {
        if (byBalanceAlone()) {
            Ampacity.Factor model = modelFactor(shape, insulation, ambient, loadedCount);
            return Optional.of(balanced(row, shape, insulation, ambient, loadedCount, model, margin()));
        }
        if (!basis.byHeatBalance()) {
            return byTable;
        }
        Ampacity.Factor bundle =
                table.bundle(loadedCount, row).orElseGet(() -> modelFactor(shape, insulation, ambient, loadedCount));
        Ampacity byBalance = balanced(row, shape, insulation, ambient, loadedCount, bundle, margin());
        return byTable.filter(each -> each.limitAmps() < byBalance.limitAmps()).or(() -> Optional.of(byBalance));
    }

    private boolean byBalanceAlone() {
        return harness.rules()
                .sizingRules()
                .method()
                .filter(method -> method == SizingRules.Method.HEAT_BALANCE)
                .isPresent();
    }

    private double margin() {
        return harness.rules()
                .sizingRules()
                .marginFraction()
                .orElse(basis.heatBalanceMarginFraction().orElse(USUAL_MARGIN));
    }

    private Ampacity balanced(
            ConductorRow row,
            WireShape shape,
            InsulationType insulation,
            double ambient,
            int loadedCount,
            Ampacity.Factor bundle,
            double margin) {
        double limit = insulation.maximumCelsius();
        Citation free = new Citation(
                "none",
                "none",
                "heat balance in free air",
                row.gauge().text() + ", " + Formats.celsius(limit) + " in " + Formats.celsius(ambient) + thinAir(),
                Status.COMMON_PRACTICE);
        CitedValue base = new CitedValue(balance.alone(shape.wire(), air(ambient), limit), free);
        List<Ampacity.Factor> factors = new ArrayList<>();
        if (margin > 0) {
            factors.add(new Ampacity.Factor(
                    HeatTexts.text("reserve", Formats.percent(margin)),
                    1 - margin,
                    new Citation("none", "none", "margin of the heat balance", "", Status.COMMON_PRACTICE)));
        }
        factors.add(bundle);
        return Ampacity.of(base, factors, ambient, limit, loadedCount);
    }

    private Ampacity.Factor modelFactor(WireShape shape, InsulationType insulation, double ambient, int loadedCount) {
        double factor = balance.together(shape.wire(), air(ambient), insulation.maximumCelsius(), loadedCount);
        Text together = loadedCount == 1 ? HeatTexts.text("one-loaded") : HeatTexts.text("equal-together", loadedCount);
        return new Ampacity.Factor(
                together,
                factor,
                new Citation("none", "none", "heat balance of a bundle", "effective conductivity", Status.COMPUTED));
    }

    private String thinAir() {
        return altitudeMetres() == 0 ? "" : String.format(Locale.ROOT, ", %.0f m up", altitudeMetres());
    }

    /** A table for free air at sea level, in thinner air by the smaller of heat balance and chart; others hold their own. */
    private Ampacity inThinAir(Ampacity ampacity) {
        if (altitudeMetres() <= 0 || !basis.byHeatBalance()) {
            return ampacity;
        }
        CitedValue factor = tables.altitudeFactors("ac-43.13-1b-altitude").factor(altitudeMetres());
        List<Ampacity.Factor> factors = new ArrayList<>(ampacity.factors());
        factors.add(new Ampacity.Factor(
                HeatTexts.text("altitude", String.format(Locale.ROOT, "%.0f", altitudeMetres())),
                factor.value(),
                factor.citation()));
        return Ampacity.of(
                ampacity.base(), factors, ampacity.ambientCelsius(), ampacity.limitCelsius(), ampacity.loadedCount());
    }

    /**
     * The conductor temperature at a steady RMS current with a size that is being tried, deg C: the rise goes with the square
     * of the current, from the heat balance's own current for the limit with as many equal wires fully loaded around it. In
     * air at or above the limit, the heat balance of the wire alone. The ambient when the insulation is not known; never above
     * the melting point of copper.
     */
    public double celsius(Wire wire, Gauge gauge, Optional<Ampacity> ampacity, double amps) {
        Optional<MethodComparison> comparison = ampacity.flatMap(Ampacity::comparison);
        if (comparison.isEmpty()) {
            return ambientCelsius(wire);
        }
        double ambient = ampacity.get().ambientCelsius();
        double balanced = comparison.get().balanceAmps();
        double celsius = balanced > 0
                ? ConductorTemperature.celsius(ambient, ampacity.get().limitCelsius(), amps, balanced)
                : HeatBalance.bare(shape(wire, gauge).wire(), air(ambient))
                        .at(amps)
                        .celsius();
        return Math.min(tables.copper().meltingPoint().value(), celsius);
    }
}
