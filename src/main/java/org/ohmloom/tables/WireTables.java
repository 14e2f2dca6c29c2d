package org.ohmloom.tables;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.ohmloom.units.Gauge;

/**
 * All published reference data, read once and immutable.
 *
 * <p>Methods that take an id throw {@link IllegalArgumentException}, naming the ids there are, when it is not one of
 * them; those that begin with "find" return an empty Optional instead.
 */
public final class WireTables {
    private static final String COPPER = "copper";

    /** Holds those that come with the program from when they are first asked for. */
    private static final class Bundled {
        static final WireTables TABLES = of(sheets(TableFiles.bundled(), "wire-tables/").stream());
    }

    private final TableLibrary library;
    private final Map<String, FuseSeries> fuses;
    private final Map<String, BatteryType> batteries;

    private WireTables(TableLibrary library) {
        library.checkBases();
        this.library = library;
        this.fuses = library.fuses.series();
        this.batteries = library.batteries.types();
        library.copper.get(COPPER);
    }

    /** The tables that come with the program; they are read the first time. */
    public static WireTables bundled() {
        return Bundled.TABLES;
    }

    /**
     * These tables, or where a folder {@code wire-tables} stands beside a harness file, those that come with the program
     * and the builder's own files in it.
     *
     * @param harnessFile the harness file
     * @throws TableFormatException when one in the folder is malformed
     */
    public WireTables beside(Path harnessFile) {
        Path own = harnessFile.toAbsolutePath().resolveSibling("wire-tables");
        return Files.isDirectory(own) ? load(own) : this;
    }

    /**
     * Reads the tables that come with the program and a builder's own files beside them.
     *
     * @param directory a folder of {@code *.csv} files in the same format; their ids must be new
     * @throws TableFormatException when the folder cannot be read or a file in it is malformed
     */
    public static WireTables load(Path directory) {
        // A malformed file is refused before anything else is read.
        List<TableSheet> own = sheets(TableFiles.in(directory), "");
        return of(Stream.concat(bundled().sheets().stream(), own.stream()));
    }

    private static WireTables of(Stream<TableSheet> sheets) {
        TableLibrary library = new TableLibrary();
        sheets.forEach(library::add);
        return new WireTables(library);
    }

    private static List<TableSheet> sheets(Map<String, String> texts, String folder) {
        return texts.entrySet().stream()
                .map(text -> TableSheetReader.read(folder + text.getKey(), text.getValue()))
                .toList();
    }

    /** Every table file as it stands. */
    public List<TableSheet> sheets() {
        return library.sheets.all();
    }

    /** The table file of that name, as in "ac-43-13-1b-table-11-9", when there is one. */
    public Optional<TableSheet> findSheet(String name) {
        return library.sheets.find(name);
    }

    /** The conductor families. */
    public List<ConductorFamily> families() {
        return library.families.all();
    }

    /** The conductor family of that id. */
    public ConductorFamily family(String id) {
        return library.families.get(id);
    }

    /** The conductor family of that id, when there is one. */
    public Optional<ConductorFamily> findFamily(String id) {
        return library.families.find(id);
    }

    /** The ampacity tables. */
    public List<AmpacityTable> ampacities() {
        return library.ampacities.all();
    }

    /** The ampacity table of that id. */
    public AmpacityTable ampacity(String id) {
        return library.ampacities.get(id);
    }

    /** The bundle factors of that id. */
    public BundleFactors bundleFactors(String id) {
        return library.bundles.get(id);
    }

    /** The published ambient factors of that id. */
    public AmbientFactors ambientFactors(String id) {
        return library.ambients.get(id);
    }

    /** The insulation types. */
    public List<InsulationType> insulations() {
        return library.insulations.all();
    }

    /** The insulation type of that id. */
    public InsulationType insulation(String id) {
        return library.insulations.get(id);
    }

    /** The insulation type of that id, when there is one. */
    public Optional<InsulationType> findInsulation(String id) {
        return library.insulations.find(id);
    }

    /** The design bases. */
    public List<DesignBasis> bases() {
        return library.bases.all();
    }

    /** The design basis of that id. */
    public DesignBasis basis(String id) {
        return library.bases.get(id);
    }

    /** The design basis of that id, when there is one. */
    public Optional<DesignBasis> findBasis(String id) {
        return library.bases.find(id);
    }

    /** The constants of conductor copper. */
    public CopperConstants copper() {
        return library.copper.get(COPPER);
    }

    /** The allowed voltage drops of that id. */
    public AllowableDrops allowableDrops(String id) {
        return library.drops.get(id);
    }

    /** The chart of largest protective devices of that id. */
    public ProtectorChart protectorChart(String id) {
        return library.protectors.get(id);
    }

    /** The series of fuses and breakers. */
    public List<FuseSeries> fuseSeries() {
        return List.copyOf(fuses.values());
    }

    /** The series of fuses or breakers of that type, as in "ISO 8820-3 type C", when there is one. */
    public Optional<FuseSeries> fuseSeries(String type) {
        return Optional.ofNullable(fuses.get(type));
    }

    /** The rules on how far a fuse may be loaded. */
    public List<DeratingRule> fuseDeratings() {
        return library.deratings.all();
    }

    /** The rule of that id on how far a fuse may be loaded. */
    public DeratingRule fuseDerating(String id) {
        return library.deratings.get(id);
    }

    /** The published short-circuit factors. */
    public List<AdiabaticFactor> adiabaticFactors() {
        return List.copyOf(library.adiabatics);
    }

    /** How hot the insulation type of that id may get for a short time, when a table says so. */
    public Optional<ShortTimeLimit> findShortTimeLimit(String insulation) {
        return library.shortTimes.find(insulation);
    }

    /** What is taken for granted when the smallest or largest fault current is reckoned, by the condition's name. */
    public FaultCondition faultCondition(String condition) {
        return library.faultConditions.get(condition);
    }

    /** The types of circuit breaker. */
    public List<BreakerType> breakerTypes() {
        return library.breakers.all();
    }

    /** The kinds of battery. */
    public List<BatteryType> batteryTypes() {
        return List.copyOf(batteries.values());
    }

    /** The kind of battery of that id, as in "lead-acid-agm", when there is one. */
    public Optional<BatteryType> findBatteryType(String id) {
        return Optional.ofNullable(batteries.get(id));
    }

    /** The insulation colours. */
    public List<WireColourRow> colours() {
        return library.colours.all();
    }

    /** The insulation colour of that code, when there is one. */
    public Optional<WireColourRow> findColour(String code) {
        return library.colours.find(code);
    }

    /** The terminal numbers. */
    public List<TerminalNumber> terminals() {
        return library.terminals.all();
    }

    /** The rules of a design basis on where a protective device may sit, shortest distance first in the file. */
    public List<PlacementRule> placementRules(String basis) {
        return library.placements.all().stream()
                .filter(rule -> rule.basis().equals(basis))
                .toList();
    }

    /** The rule of a design basis on the size of a protective device at that system voltage, V. */
    public Optional<DeviceRatingRule> deviceRatingRule(String basis, double systemVolts) {
        return library.deviceRatings.stream()
                .filter(rule -> rule.basis().equals(basis) && rule.fromVolts() <= systemVolts)
                .reduce((lower, higher) -> higher.fromVolts() >= lower.fromVolts() ? higher : lower);
    }

    /** The smallest conductor that a design basis holds strong enough. */
    public Optional<MechanicalMinimum> mechanicalMinimum(String basis) {
        return library.minimums.find(basis);
    }

    /** How much larger than the load's current a switch must be rated. */
    public List<SwitchDerating> switchDeratings() {
        return List.copyOf(library.switches);
    }

    /** How much more than their steady current loads take when they are switched on. */
    public List<InrushMultiple> inrushMultiples() {
        return List.copyOf(library.inrushes);
    }

    /** The ranges of supply voltage equipment works in, by code. */
    public List<SupplyCode> supplyCodes() {
        return library.supplyCodes.all();
    }

    /** The supply voltages equipment must stand while the engine is started, by severity. */
    public List<StartingProfile> startingProfiles() {
        return library.startingProfiles.all();
    }

    /** How far a ground may be from its reference, by what it limits, V. */
    public Optional<CitedValue> groundLimitVolts(String item) {
        return library.groundLimits.find(item).map(GroundLimit::volts);
    }

    /** The outside diameters of insulated wires. */
    public List<OutsideDiameter> outsideDiameters() {
        return List.copyOf(library.diameters);
    }

    /** The outside diameter of a size in a series such as "AS22759/32", mm, when it is listed. */
    public Optional<CitedValue> outsideDiameterMm(String series, Gauge gauge) {
        return library.diameters.stream()
                .filter(each -> each.series().equals(series) && each.gauge().equals(gauge))
                .map(OutsideDiameter::diameterMm)
                .findFirst();
    }

    /** What a sort of covering does to heat, by its name in harness files, when there is one. */
    public Optional<CoveringType> findCovering(String kind) {
        return library.coverings.find(kind);
    }

    /** The smallest pull-out forces of crimps, of every set of requirements. */
    public List<PullForce> pullForces() {
        return List.copyOf(library.pullForces);
    }

    /** How long an operation of {@link BuildTime} takes at the bench, min. */
    public CitedValue buildMinutes(String operation) {
        return library.buildTimes.get(operation).minutes();
    }

    /** A limit or count of the tests on the bench, by its item, in the unit that {@link BenchLimit} names. */
    public CitedValue benchLimit(String item) {
        return library.benchLimits.get(item).value();
    }

    /** The altitude factors of that id. */
    public AltitudeFactors altitudeFactors(String id) {
        return library.altitudes.get(id);
    }

    /** How far things spread about the value they are entered with, as the tables say it. */
    public List<SpreadFigure> spreads() {
        return library.spreads.all();
    }

    /** What is listed of how harnesses are made. */
    public FabricationTables fabrication() {
        return new FabricationTables(library.fabrication);
    }

    /** What is listed of sensors and data buses. */
    public SignalTables signals() {
        return new SignalTables(library.signals);
    }
}
