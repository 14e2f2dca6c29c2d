package org.ohmloom.tables;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.ohmloom.words.Refusals;

/** Takes sheets one by one, reads each for its kinds, and in the end checks what refers to what. */
final class TableLibrary {
    final Shelf<TableSheet> sheets = new Shelf<>("table file");
    final Shelf<ConductorFamily> families = new Shelf<>("conductor family");
    final Shelf<AmpacityTable> ampacities = new Shelf<>("ampacity table");
    final Shelf<BundleFactors> bundles = new Shelf<>("bundle table");
    final Shelf<AmbientFactors> ambients = new Shelf<>("ambient table");
    final Shelf<InsulationType> insulations = new Shelf<>("insulation type");
    final Shelf<DesignBasis> bases = new Shelf<>("design basis");
    final Shelf<AllowableDrops> drops = new Shelf<>("voltage drop table");
    final Shelf<ProtectorChart> protectors = new Shelf<>("protector chart");
    final Shelf<CopperConstants> copper = new Shelf<>("set of copper constants");
    final Shelf<BreakerType> breakers = new Shelf<>("breaker type");
    final Shelf<WireColourRow> colours = new Shelf<>("colour");
    final Shelf<TerminalNumber> terminals = new Shelf<>("terminal number");
    final Shelf<DeratingRule> deratings = new Shelf<>("derating rule");
    final Shelf<MechanicalMinimum> minimums = new Shelf<>("mechanical minimum");
    final Shelf<PlacementRule> placements = new Shelf<>("placement rule");
    final List<DeviceRatingRule> deviceRatings = new ArrayList<>();
    final List<SwitchDerating> switches = new ArrayList<>();
    final List<OutsideDiameter> diameters = new ArrayList<>();
    final List<InrushMultiple> inrushes = new ArrayList<>();
    final Shelf<SupplyCode> supplyCodes = new Shelf<>("supply code");
    final Shelf<StartingProfile> startingProfiles = new Shelf<>("starting profile");
    final Shelf<CoveringType> coverings = new Shelf<>("sort of covering");
    final Shelf<AltitudeFactors> altitudes = new Shelf<>("altitude table");
    final FuseShelf fuses = new FuseShelf();
    final BatteryShelf batteries = new BatteryShelf();
    final List<AdiabaticFactor> adiabatics = new ArrayList<>();
    final Shelf<ShortTimeLimit> shortTimes = new Shelf<>("short-time limit");
    final Shelf<FaultCondition> faultConditions = new Shelf<>("fault condition");
    final Shelf<GroundLimit> groundLimits = new Shelf<>("limit of a ground");

    final List<PullForce> pullForces = new ArrayList<>();
    final Shelf<BuildTime> buildTimes = new Shelf<>("operation at the bench");
    final Shelf<BenchLimit> benchLimits = new Shelf<>("limit of a bench test");
    final FabricationShelf fabrication = new FabricationShelf();
    final Shelf<SpreadFigure> spreads = new Shelf<>("spread");
    final SignalShelf signals = new SignalShelf();

    private final List<RowReader> basisRows = new ArrayList<>();

    /** How each kind of table is read. */
    private final Map<String, Use> uses = Map.ofEntries(
            Map.entry("reference", sheet -> {}),
            Map.entry("conductors", whole(families, ConductorFamily::read)),
            Map.entry("ampacity", whole(ampacities, AmpacityTable::read)),
            Map.entry("bundle", whole(bundles, BundleFactors::read)),
            Map.entry("ambient", whole(ambients, AmbientFactors::read)),
            Map.entry("drop", whole(drops, AllowableDrops::read)),
            Map.entry("protector", whole(protectors, ProtectorChart::read)),
            Map.entry("copper", whole(copper, CopperConstants::read)),
            Map.entry("insulation", byRow(insulations, InsulationType::read, InsulationType::id)),
            Map.entry("breakers", byRow(breakers, BreakerType::read, BreakerType::id)),
            Map.entry("colours", byRow(colours, WireColourRow::read, WireColourRow::code)),
            Map.entry("terminals", byRow(terminals, TerminalNumber::read, TerminalNumber::number)),
            Map.entry("fuse-derating", byRow(deratings, DeratingRule::read, DeratingRule::id)),
            Map.entry("mechanical", byRow(minimums, MechanicalMinimum::read, MechanicalMinimum::basis)),
            Map.entry("placement", byRow(placements, PlacementRule::read, PlacementRule::id)),
            Map.entry("device-rating", sheet -> deviceRatings.addAll(sheet.rows(DeviceRatingRule::read))),
            Map.entry("switch", sheet -> switches.addAll(sheet.rows(SwitchDerating::read))),
            Map.entry("outside-diameters", sheet -> diameters.addAll(sheet.rows(OutsideDiameter::read))),
            Map.entry("inrush", sheet -> inrushes.addAll(sheet.rows(InrushMultiple::read))),
            Map.entry("supply-codes", byRow(supplyCodes, SupplyCode::read, SupplyCode::code)),
            Map.entry("starting-profiles", byRow(startingProfiles, StartingProfile::read, StartingProfile::level)),
            Map.entry("coverings", byRow(coverings, CoveringType::read, CoveringType::kind)),
            Map.entry("altitude", whole(altitudes, AltitudeFactors::read)),
            Map.entry("fuse-ratings", fuses::addRatings),
            Map.entry("fuse-times", fuses::addTimes),
            Map.entry("fuse-resistances", fuses::addResistances),
            Map.entry("battery-types", batteries::addTypes),
            Map.entry("battery-open-circuit", batteries::addOpenCircuit),
            Map.entry("battery-resistance", batteries::addResistances),
            Map.entry("battery-acceptance", batteries::addAcceptances),
            Map.entry("fuse-breaking", fuses::addBreaking),
            Map.entry("fuse-ambient", fuses::addAmbient),
            Map.entry("adiabatic-k", sheet -> adiabatics.addAll(sheet.rows(AdiabaticFactor::read))),
            Map.entry("short-time", byRow(shortTimes, ShortTimeLimit::read, ShortTimeLimit::insulation)),
            Map.entry("fault-conditions", byRow(faultConditions, FaultCondition::read, FaultCondition::condition)),
            Map.entry("ground-limits", byRow(groundLimits, GroundLimit::read, GroundLimit::item)),
            Map.entry("pull-force", sheet -> pullForces.addAll(sheet.rows(PullForce::read))),
            Map.entry("build-times", byRow(buildTimes, BuildTime::read, BuildTime::operation)),
            Map.entry("bench-test", byRow(benchLimits, BenchLimit::read, BenchLimit::item)),
            Map.entry("practice", byRow(fabrication.practice, PracticeFigure::read, PracticeFigure::item)),
            Map.entry("tolerance-spreads", byRow(spreads, SpreadFigure::read, SpreadFigure::item)),
            Map.entry("length-tolerances", sheet -> fabrication.tolerances.addAll(sheet.rows(LengthTolerance::read))),
            Map.entry("tie-spacing", sheet -> fabrication.ties.addAll(sheet.rows(TieSpacing::read))),
            Map.entry("covering-sizes", byRow(fabrication.coverings, CoveringSize::read, CoveringSize::id)),
            Map.entry(
                    "workmanship",
                    byRow(fabrication.classes, WorkmanshipClass::read, each -> String.valueOf(each.number()))),
            Map.entry("label-sizes", byRow(fabrication.labels, LabelSize::read, LabelSize::id)),
            Map.entry("bus-limits", sheet -> signals.limits.addAll(sheet.rows(BusLimit::read))),
            Map.entry("bus-figures", byRow(signals.figures, BusFigure::read, BusFigure::item)),
            Map.entry("change-times", byRow(signals.changeTimes, ChangeTime::read, ChangeTime::sensing)),
            Map.entry("design-bases", this::addBases));

    /** One way to read a sheet. */
    private interface Use {
        void read(SheetReader sheet);
    }

    void add(TableSheet sheet) {
        sheets.put(sheet.name(), sheet, sheet.fileName(), 1);
        for (String kind : sheet.kinds()) {
            Use use = uses.get(kind);
            if (use == null) {
                throw new TableFormatException(
                        sheet.fileName(),
                        1,
                        "",
                        Refusals.text(
                                "the kind '%s' is not known; write one of %s",
                                kind,
                                String.join(
                                        ", ", uses.keySet().stream().sorted().toList())));
            }
            use.read(new SheetReader(sheet));
        }
    }

    private void addBases(SheetReader sheet) {
        byRow(bases, DesignBasis::read, DesignBasis::id).read(sheet);
        basisRows.addAll(sheet.rows(row -> row));
    }

    /** Refuses a design basis that names a table that is not there. */
    void checkBases() {
        for (RowReader row : basisRows) {
            check(row, "defaultAwgFamily", families);
            check(row, "defaultMetricFamily", families);
            check(row, "ampacityTable", ampacities);
            check(row, "bundleTable", bundles);
            check(row, "ambientTable", ambients);
            check(row, "dropTable", drops);
            check(row, "protectorTable", protectors);
            row.optionalText("curveTable").ifPresent(name -> check(row, "curveTable", bundles));
            row.optionalText("altitudeTable").ifPresent(name -> check(row, "altitudeTable", altitudes));
        }
    }

    private static void check(RowReader row, String column, Shelf<?> shelf) {
        Optional<String> id = row.textOrNone(column);
        if (id.isPresent() && shelf.find(id.get()).isEmpty()) {
            throw row.unfit(
                    column,
                    Refusals.text("there is no table '%s'; write one of %s", id.get(), String.join(", ", shelf.ids())));
        }
    }

    private static <T> Use whole(Shelf<T> shelf, Function<SheetReader, T> reader) {
        return sheet ->
                shelf.put(sheet.sheet().id(), reader.apply(sheet), sheet.sheet().fileName(), 1);
    }

    private static <T> Use byRow(Shelf<T> shelf, Function<RowReader, T> reader, Function<T, String> id) {
        return sheet -> sheet.rows(row -> {
            T value = reader.apply(row);
            shelf.put(id.apply(value), value, sheet.sheet().fileName(), row.line());
            return value;
        });
    }
}
