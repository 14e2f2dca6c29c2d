package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.ohmloom.model.Breakout;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Place;
import org.ohmloom.model.Splice;
import org.ohmloom.model.WireId;
import org.ohmloom.units.Formats;

/** What is written along the ties and at the breakouts, and how much room that needs. For one thread. */
final class RunTexts {

    static final double LENGTH_MM = 2.0;
    static final double SMALL_MM = 1.8;
    static final double INSET_MM = 2;
    static final double BETWEEN_MM = 1.5;

    /** Height that a run takes on a sheet with what is written along it, at least, mm. */
    static final double LEAST_HEIGHT_MM = 9;

    /** Distance of two lines of small text, mm. */
    static final double LINE_MM = 2.9;

    private static final double LEAST_RUN_MM = 16;
    private static final double MOST_NAME_MM = 26;
    private static final double MOST_SHEET_NAME_MM = 36;
    private static final double MOST_SOFT_MM = 45;
    private static final double MOST_SHEET_SOFT_MM = 55;
    private static final double MOST_MORE_MM = 60;
    private static final String WIDEST_NUMBER = "88.8 mV";

    private final Harness harness;
    private final Figures figures;
    private final Lettering lettering;
    private final Map<String, List<WireId>> wiresOf;
    private final Optional<SheetDetail> detail;
    private final Map<Asked, RunText> known = new HashMap<>();
    private final Map<String, List<Splice>> along = new HashMap<>();
    private final Map<String, Double> splices = new HashMap<>();

    RunTexts(
            Harness harness,
            Figures figures,
            Lettering lettering,
            Map<String, List<WireId>> wiresOf,
            Optional<SheetDetail> detail) {
        this.harness = harness;
        this.figures = figures;
        this.lettering = lettering;
        this.wiresOf = wiresOf;
        this.detail = detail;
        for (Splice splice : harness.splices().all()) {
            if (splice.place().orElse(null) instanceof Place.OnSegment on) {
                along.computeIfAbsent(on.segment().value(), id -> new ArrayList<>())
                        .add(splice);
            }
        }
        along.values().forEach(each -> each.sort(Comparator.comparingDouble(RunTexts::metresAlong)));
    }

    /** Whether they stand on a printed sheet. */
    boolean onSheet() {
        return detail.isPresent();
    }

    /**
     * The texts of a tie.
     *
     * @param towards   the breakout it leads to
     * @param branching whether the harness branches there
     * @param first     whether the breakout it comes from is named by no other tie
     */
    RunText of(Tie tie, BreakoutId towards, boolean branching, boolean first) {
        return known.computeIfAbsent(
                new Asked(tie.id(), towards, branching, first), asked -> make(tie, towards, branching, first));
    }

    private record Asked(String tie, BreakoutId towards, boolean branching, boolean first) {}

    private RunText make(Tie tie, BreakoutId towards, boolean branching, boolean first) {
        String near = first ? joint(tie.other(towards), true) : "";
        String far = joint(towards, branching);
        if (tie.segment().isEmpty()) {
            return detail.isPresent()
                    ? pair(near, far)
                    : new RunText("", "", "", Optional.empty(), "", "", "", Optional.empty(), "", 0);
        }
        String length = figures.units().millimetres(tie.lengthMetres() * 1000);
        boolean stacked = detail.filter(SheetDetail::stacked).isPresent();
        String all = soft(tie, tie.segment().get());
        String soft = stacked ? tie.id() : all;
        String more = stacked && all.length() > soft.length()
                ? lettering.cut(all.substring(soft.length() + 1).strip(), Weight.REGULAR, SMALL_MM, MOST_MORE_MM)
                : "";
        String flag = detail.map(sheet -> sheet.flags().of(tie.id())).orElse("");
        Optional<Datums.Measured> running = detail.flatMap(sheet -> sheet.running(tie));
        String fromDatum = running.map(each -> Words.millimetres(each.metres()) + " from " + each.datum())
                .orElse("");
        Optional<String> number = figures.ofBundle(tie.id(), wiresOf.getOrDefault(tie.id(), List.of()));
        double above = lettering.widthMm(length, Weight.BOLD, LENGTH_MM)
                + BETWEEN_MM
                + lettering.widthMm(soft, Weight.REGULAR, SMALL_MM)
                + FlagDrawing.widthMm(lettering, flag);
        above = Math.max(above, lettering.widthMm(more, Weight.REGULAR, SMALL_MM));
        double below = numberMm(tie, number)
                + (first ? lettering.widthMm(near, Weight.REGULAR, SMALL_MM) + BETWEEN_MM : 0)
                + lettering.widthMm(far, Weight.REGULAR, SMALL_MM);
        double width = Math.max(LEAST_RUN_MM, Math.max(above, below) + 2 * INSET_MM);
        return new RunText(
                length, soft, more, number, near, far, fromDatum, running.map(Datums.Measured::breakout), flag, width);
    }

    /** Id, zone and covering of a segment; on a sheet with the ambient, the size and the ends, as far as there is room. */
    private String soft(Tie tie, BundleSegment segment) {
        if (detail.isEmpty()) {
            String covering = segment.covering()
                    .map(each -> " " + CoveringWords.kind(each))
                    .orElse("");
            String zone = segment.zone().map(each -> " " + each).orElse("");
            return lettering.cut(tie.id() + zone + covering, Weight.REGULAR, SMALL_MM, MOST_SOFT_MM);
        }
        String zone = segment.zone()
                .map(harness.zones()::get)
                .map(each -> " " + each.id() + " " + Formats.celsius(each.ambientCelsius()))
                .orElse("");
        String name = lettering.cut(tie.id() + zone, Weight.REGULAR, SMALL_MM, MOST_SOFT_MM);
        return segment.covering().stream()
                .flatMap(each ->
                        Stream.of(CoveringWords.whole(each), CoveringWords.sized(each), CoveringWords.kind(each)))
                .map(words -> name + ", " + words)
                .filter(words -> lettering.widthMm(words, Weight.REGULAR, SMALL_MM)
                        <= MOST_SHEET_SOFT_MM + lettering.widthMm(tie.id(), Weight.REGULAR, SMALL_MM))
                .findFirst()
                .orElse(name);
    }

    /** The names below an in-line pair. */
    private RunText pair(String near, String far) {
        double width = lettering.widthMm(near, Weight.REGULAR, SMALL_MM)
                + lettering.widthMm(far, Weight.REGULAR, SMALL_MM)
                + (near.isEmpty() ? 0 : BETWEEN_MM);
        return new RunText("", "", "", Optional.empty(), near, far, "", Optional.empty(), "", width + 2 * INSET_MM);
    }

    /** Room for the number; where the layout must not change with it, for the widest number there may be. */
    private double numberMm(Tie tie, Optional<String> number) {
        double actual = number.map(text -> lettering.widthMm(text, Weight.REGULAR, SMALL_MM) + BETWEEN_MM)
                .orElse(0.0);
        if (detail.isPresent()) {
            return actual;
        }
        List<WireId> wires = wiresOf.getOrDefault(tie.id(), List.of());
        double widest = figures.sizes(wires).stream()
                .mapToDouble(text -> lettering.widthMm(text, Weight.REGULAR, SMALL_MM))
                .max()
                .orElse(0);
        for (WireId wire : wires) {
            widest = Math.max(
                    widest, lettering.widthMm(lettering.say("most", WIDEST_NUMBER, wire), Weight.REGULAR, SMALL_MM));
        }
        return Math.max(actual, widest + BETWEEN_MM);
    }

    /** What is written at a breakout: its id, and its name where the harness branches. */
    String joint(BreakoutId id, boolean branching) {
        Breakout breakout = harness.breakouts().get(id);
        String name = branching ? Spot.name(breakout) : id.value();
        String cut =
                lettering.cut(name, Weight.REGULAR, SMALL_MM, detail.isPresent() ? MOST_SHEET_NAME_MM : MOST_NAME_MM);
        String datum = detail.map(sheet -> sheet.datums().at(id)).orElse("");
        return datum.isEmpty() ? cut : datum + " = " + cut;
    }

    /** Extra run for the splices along a segment, mm: each needs its own label. */
    double splicesMm(Tie tie) {
        return splices.computeIfAbsent(tie.id(), id -> splices(tie).stream()
                .mapToDouble(splice -> Math.max(8, lettering.widthMm(splice(tie, splice), Weight.BOLD, SMALL_MM) + 3))
                .sum());
    }

    /** What is written at a splice along a tie: its id, on a sheet with its distance from the breakout its segment begins at. */
    String splice(Tie tie, Splice splice) {
        String id = splice.id().value();
        if (detail.isEmpty() || !(splice.place().orElse(null) instanceof Place.OnSegment on)) {
            return id;
        }
        String flag = detail.get().flags().of(id);
        return id + (flag.isEmpty() ? "" : " (" + flag + ")") + " " + Words.millimetres(on.distanceMetres()) + " from "
                + tie.from();
    }

    /** Splices along a tie, nearest to its {@code from} end first. */
    List<Splice> splices(Tie tie) {
        return along.getOrDefault(tie.id(), List.of());
    }

    private static double metresAlong(Splice splice) {
        return ((Place.OnSegment) splice.place().orElseThrow()).distanceMetres();
    }
}
