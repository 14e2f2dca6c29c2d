package org.ohmloom.analysis.tolerance;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.BranchId;
import org.ohmloom.graph.BranchKind;
import org.ohmloom.graph.MeasuredOhms;
import org.ohmloom.heat.ConductorResistance;
import org.ohmloom.heat.WireRating;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.WireId;
import org.ohmloom.tables.ConductorRow;
import org.ohmloom.tables.LengthTolerance;
import org.ohmloom.tables.WireTables;
import org.ohmloom.words.UnfitException;

/** Finds everything in a harness that varies by itself. What was measured does not. */
final class SpreadInputs {

    private final Analysis analysis;
    private final Spreads spreads;
    private final WireTables tables;
    private final MeasuredOhms measured;
    private final ConductorResistance resistance;
    private final List<SpreadInput> found = new ArrayList<>();
    /** Wires of one type and size. */
    private final SortedMap<String, List<BranchId>> reels = new TreeMap<>();

    private final SortedMap<String, Spread> reelSpreads = new TreeMap<>();

    private SpreadInputs(Analysis analysis, Spreads spreads) {
        this.analysis = analysis;
        this.spreads = spreads;
        tables = analysis.evidence().tables();
        measured = MeasuredOhms.of(analysis.harness());
        resistance = new ConductorResistance(tables, analysis.evidence().basis(), measured);
    }

    /** The inputs of a harness, in a fixed order. */
    static List<SpreadInput> of(Analysis analysis, Spreads spreads) {
        SpreadInputs inputs = new SpreadInputs(analysis, spreads);
        inputs.gather();
        return inputs.found.stream().filter(each -> !each.spread().isNone()).toList();
    }

    private void gather() {
        for (Branch branch : analysis.evidence().drawn().all()) {
            switch (branch.kind()) {
                case WIRE, SHIELD -> wire(branch);
                case CONTACT, JOINT, STRAP -> joint(branch);
                case LOAD -> own(branch, SpreadKind.LOAD);
                case SOURCE -> own(branch, SpreadKind.SOURCE);
                default -> {}
            }
        }
        reels.forEach((name, branches) ->
                found.add(new SpreadInput(SpreadKind.CONDUCTOR, name, reelSpreads.get(name), branches)));
        spreads.of(SpreadKind.AMBIENT)
                .ifPresent(spread -> found.add(new SpreadInput(SpreadKind.AMBIENT, "", spread, List.of())));
    }

    private void wire(Branch branch) {
        WireRating rating = analysis.ratings().get((WireId) branch.element().orElseThrow());
        String id = rating.wire().id().value();
        if (rating.wire().measuredOhms().isPresent()
                || resistance.taken(rating.wire(), rating.gauge()).isPresent()
                || rating.lengthMetres().isEmpty()) {
            return;
        }
        ConductorRow row = resistance.row(rating.wire(), rating.gauge());
        String reel = spreads.names(SpreadKind.CONDUCTOR, id)
                ? id
                : resistance.family(rating.wire(), rating.gauge().system()).id() + " "
                        + rating.gauge().text();
        reels.computeIfAbsent(reel, name -> new ArrayList<>()).add(branch.id());
        reelSpreads.put(reel, spreads.of(SpreadKind.CONDUCTOR, id).orElseGet(() -> listed(row)));
        found.add(new SpreadInput(
                SpreadKind.LENGTH,
                id,
                spreads.of(SpreadKind.LENGTH, id).orElseGet(() -> cut(rating.lengthMetres())),
                List.of(branch.id())));
    }

    /** From all the copper of the nominal area to the listed maximum. */
    private static Spread listed(ConductorRow row) {
        return new Spread(
                SpreadKind.CONDUCTOR,
                SpreadShape.EVEN,
                (row.leastResistanceRatio() - 1) / SpreadKind.CONDUCTOR.perUnit(),
                0,
                "maximum of " + row.citation().text()
                        + ", down to the full nominal area of annealed copper by IEC 60028:1925");
    }

    /** Never shorter than asked, longer by the tolerance of its length. */
    private Spread cut(OptionalDouble lengthMetres) {
        double metres = lengthMetres.orElseThrow();
        LengthTolerance tolerance = tables.fabrication().tolerance(metres);
        double percent = metres > 0 ? tolerance.metres(metres) / metres / SpreadKind.LENGTH.perUnit() : 0;
        return new Spread(
                SpreadKind.LENGTH,
                SpreadShape.EVEN,
                0,
                Math.min(Spread.MOST_PERCENT, percent),
                tolerance.citation().text());
    }

    private void joint(Branch branch) {
        boolean known = Stream.concat(
                        Stream.of(branch.id().value().split("~")), branch.element().map(ElementId::value).stream())
                .anyMatch(place -> measured.joint(place).isPresent());
        Optional<Spread> spread = spreads.of(
                SpreadKind.JOINT, branch.element().map(ElementId::value).orElse(""));
        if (!known) {
            spread.ifPresent(each ->
                    found.add(new SpreadInput(SpreadKind.JOINT, branch.id().value(), each, List.of(branch.id()))));
        }
    }

    private void own(Branch branch, SpreadKind kind) {
        spreads.of(kind, branch.element().map(ElementId::value).orElse(""))
                .ifPresent(
                        spread -> found.add(new SpreadInput(kind, branch.id().value(), spread, List.of(branch.id()))));
    }

    /**
     * Refuses spreads said of elements that nothing is known to vary of.
     *
     * @throws IllegalArgumentException with the first that is wrong
     */
    static void check(Analysis analysis, Spreads spreads) {
        spreads.said().forEach((key, spread) -> {
            String element = key.contains(":") ? key.substring(key.indexOf(':') + 1) : "";
            boolean has = analysis.evidence().drawn().all().stream()
                    .filter(branch -> varies(branch.kind(), spread.kind()))
                    .anyMatch(branch -> branch.element()
                            .filter(id -> id.value().equals(element))
                            .isPresent());
            if (!element.isEmpty() && !has) {
                throw new UnfitException(
                        "%s: there is no '%s' with a %s; write an id of the harness",
                        key, element, spread.kind().words());
            }
        });
    }

    private static boolean varies(BranchKind branch, SpreadKind kind) {
        return switch (branch) {
            case WIRE, SHIELD -> kind == SpreadKind.CONDUCTOR || kind == SpreadKind.LENGTH;
            case CONTACT, JOINT, STRAP -> kind == SpreadKind.JOINT;
            case LOAD -> kind == SpreadKind.LOAD;
            case SOURCE -> kind == SpreadKind.SOURCE;
            default -> false;
        };
    }
}
