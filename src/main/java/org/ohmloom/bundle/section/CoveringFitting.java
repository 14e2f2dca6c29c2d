package org.ohmloom.bundle.section;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.ohmloom.bundle.section.CoveringFit.Problem;
import org.ohmloom.model.Covering;
import org.ohmloom.tables.CitedValue;
import org.ohmloom.tables.CoveringSize;
import org.ohmloom.tables.FabricationTables;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/**
 * Holds coverings against a bundle. Conduit and tube: the practical diameter passes the bore, and the wires fill no more of it
 * than the building rule for pulling through allows for one, two or more. Braid: the practical diameter lies in its range.
 * Heat-shrink: it passes the tube as supplied and is thicker than the tube recovered; best left when it has done three quarters
 * of its shrinking. Every covering stands the temperature there.
 */
final class CoveringFitting {
    private final FabricationTables tables;

    CoveringFitting(FabricationTables tables) {
        this.tables = tables;
    }

    /**
     * What is to be covered.
     *
     * @param members     count of wires and cables
     * @param areaMm2     their area, mm2
     * @param practicalMm practical diameter, mm
     * @param celsius     temperature the covering must stand, deg C
     */
    record Bundle(int members, double areaMm2, double practicalMm, double celsius) {}

    /** How a covering in a size suits. */
    CoveringFit fit(Bundle bundle, CoveringSize size, OptionalDouble overlapFraction) {
        Set<Problem> problems = EnumSet.noneOf(Problem.class);
        if (bundle.celsius() > size.limitCelsius()) {
            problems.add(Problem.TOO_HOT);
        }
        double insideMm = size.insideMaxMm().orElse(Double.POSITIVE_INFINITY);
        if (bundle.practicalMm() > insideMm) {
            problems.add(Problem.BUNDLE_TOO_THICK);
        }
        if (bundle.practicalMm() < size.insideMinMm().orElse(0)) {
            problems.add(Problem.BUNDLE_TOO_THIN);
        }
        return switch (Covering.Kind.valueOf(size.kind())) {
            case CONDUIT, TUBE -> bored(bundle, size, problems);
            case TAPE -> taped(bundle, size, problems, overlapFraction);
            case BRAIDED_SLEEVE -> closed(
                    bundle,
                    size,
                    problems,
                    1,
                    BundleTexts.text(
                            "covering.sleeve",
                            Formats.millimetres(size.insideMinMm().orElse(0)),
                            Formats.millimetres(size.insideMaxMm().orElse(0)),
                            Formats.millimetres(bundle.practicalMm())));
            case HEAT_SHRINK -> shrunk(bundle, size, problems);
        };
    }

    private CoveringFit bored(Bundle bundle, CoveringSize size, Set<Problem> problems) {
        double boreMm = size.insideMaxMm().orElseThrow();
        double fill = bundle.areaMm2() / (Math.PI / 4 * boreMm * boreMm);
        CitedValue limit =
                tables.value(bundle.members() == 1 ? "fill-one" : bundle.members() == 2 ? "fill-two" : "fill-more");
        if (fill > limit.value()) {
            problems.add(Problem.OVER_FILLED);
        }
        return new CoveringFit(
                size,
                problems,
                fill,
                limit.value(),
                limit.citation(),
                boreMm + 2 * size.wallMm(),
                1,
                BundleTexts.text(
                        "covering.filled",
                        Formats.percent(fill),
                        Formats.percent(limit.value()),
                        Formats.millimetres(boreMm),
                        Formats.millimetres(bundle.practicalMm())));
    }

    private CoveringFit taped(Bundle bundle, CoveringSize size, Set<Problem> problems, OptionalDouble overlapFraction) {
        double overlap = overlapFraction.orElse(tables.value("tape-overlap").value());
        double layers = 1 / (1 - overlap);
        double finishedMm = bundle.practicalMm() + 2 * layers * size.wallMm();
        double pitchMm = size.widthMm().orElse(19) * (1 - overlap);
        double metres = Math.hypot(Math.PI * bundle.practicalMm(), pitchMm) / pitchMm;
        return new CoveringFit(
                size,
                problems,
                0,
                0,
                size.citation(),
                finishedMm,
                metres,
                BundleTexts.text(
                        "covering.tape",
                        Formats.percent(overlap),
                        Formats.millimetres(pitchMm),
                        Formats.metres(metres)));
    }

    private CoveringFit shrunk(Bundle bundle, CoveringSize size, Set<Problem> problems) {
        double along = tables.value("shrink-along").value();
        Text words = BundleTexts.text(
                isTight(bundle, size) ? "covering.shrunk-tight" : "covering.shrunk-short",
                Formats.millimetres(size.insideMaxMm().orElseThrow()),
                Formats.millimetres(size.insideMinMm().orElse(0)),
                Formats.percent(tables.value("shrink-share").value()));
        return closed(bundle, size, problems, 1 / (1 - along), words);
    }

    /** Whether a tube has done its share of shrinking when it lies on the bundle. */
    private boolean isTight(Bundle bundle, CoveringSize size) {
        double supplied = size.insideMaxMm().orElseThrow();
        double share = tables.value("shrink-share").value();
        return bundle.practicalMm()
                <= supplied - share * (supplied - size.insideMinMm().orElse(0));
    }

    private static CoveringFit closed(
            Bundle bundle, CoveringSize size, Set<Problem> problems, double metres, Text words) {
        return new CoveringFit(
                size, problems, 0, 0, size.citation(), bundle.practicalMm() + 2 * size.wallMm(), metres, words);
    }

    /** The smallest covering of a sort that suits; of heat-shrink the smallest one that becomes tight, when there is one. */
    Optional<CoveringFit> choose(Bundle bundle, Covering.Kind kind, OptionalDouble overlapFraction) {
        List<CoveringFit> suiting = tables.coverings().stream()
                .filter(size -> size.kind().equals(kind.name()))
                .sorted(Comparator.comparingDouble(size -> size.insideMaxMm().orElse(0)))
                .map(size -> fit(bundle, size, overlapFraction))
                .filter(CoveringFit::suits)
                .toList();
        return suiting.stream()
                .filter(fit -> kind != Covering.Kind.HEAT_SHRINK || isTight(bundle, fit.size()))
                .findFirst()
                .or(() -> suiting.stream().findFirst());
    }
}
