package org.ohmloom.workbench.fabrication;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.ohmloom.edit.ChangeElements;
import org.ohmloom.edit.Edit;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.Covering;
import org.ohmloom.model.Harness;
import org.ohmloom.model.ZoneId;
import org.ohmloom.units.Unit;
import org.ohmloom.workbench.words.TradeWords;
import org.ohmloom.workbench.words.TypedNumbers;
import org.ohmloom.workbench.words.Words;

/** What is typed about bundle segments and their coverings, as edits. */
final class SegmentEdits {
    private static final Words WORDS = Words.of("fabrication");

    private SegmentEdits() {}

    static String word(Enum<?> constant) {
        return TradeWords.named(constant);
    }

    static Edit length(List<BundleSegment> segments, String typed) {
        double metres = TypedNumbers.needed(typed, Unit.METRE, WORDS.get("segment.the-length-of-a"));
        return all(segments, WORDS.get("segment.length-2"), was -> was.withLengthMetres(metres));
    }

    static Edit zone(Harness harness, List<BundleSegment> segments, String typed) {
        Optional<ZoneId> zone = typed.isBlank()
                ? Optional.empty()
                : Optional.of(harness.zones().ids().stream()
                        .filter(id -> id.value().equalsIgnoreCase(typed.strip()))
                        .findFirst()
                        .orElseThrow(() -> new IllegalArgumentException(WORDS.get(
                                "segment.there-is-no-zone",
                                typed.strip(),
                                harness.zones().ids().stream()
                                        .map(ZoneId::value)
                                        .collect(Collectors.joining(", "))))));
        return all(
                segments,
                WORDS.get("segment.zone-2"),
                was -> new BundleSegment(
                        was.id(),
                        was.from(),
                        was.to(),
                        was.lengthMetres(),
                        zone,
                        was.covering(),
                        was.assembly(),
                        was.layLengthMm()));
    }

    static Edit lay(List<BundleSegment> segments, String typed) {
        OptionalDouble metres = TypedNumbers.optional(typed, Unit.MILLIMETRE);
        OptionalDouble millimetres =
                metres.isPresent() ? OptionalDouble.of(Unit.MILLIMETRE.fromCanonical(metres.getAsDouble())) : metres;
        return all(
                segments,
                WORDS.get("segment.lay-length"),
                was -> new BundleSegment(
                        was.id(),
                        was.from(),
                        was.to(),
                        was.lengthMetres(),
                        was.zone(),
                        was.covering(),
                        was.assembly(),
                        millimetres));
    }

    /** Another sort of covering; nothing takes it off. What does not belong to the new sort goes. */
    static Edit kind(List<BundleSegment> segments, String typed) {
        if (typed.isBlank()) {
            return all(segments, WORDS.get("segment.covering-2"), was -> covered(was, Optional.empty()));
        }
        Covering.Kind kind = constant(Covering.Kind.values(), typed, "covering");
        return all(segments, WORDS.get("segment.covering-2"), was -> {
            Optional<Covering> now = was.covering();
            return now.filter(covering -> covering.kind() == kind).isPresent()
                    ? was
                    : covered(
                            was,
                            Optional.of(new Covering(
                                    kind,
                                    word(kind),
                                    Optional.empty(),
                                    Optional.empty(),
                                    OptionalDouble.empty(),
                                    now.flatMap(Covering::endFinish))));
        });
    }

    /** The size as the table of coverings names it. */
    static Edit size(List<BundleSegment> segments, String typed) {
        Optional<String> size = Optional.of(typed.strip()).filter(text -> !text.isEmpty());
        return coverings(
                segments,
                WORDS.get("segment.covering-size"),
                was -> new Covering(was.kind(), was.text(), was.part(), size, was.overlapFraction(), was.endFinish()));
    }

    static Edit words(List<BundleSegment> segments, String typed) {
        return coverings(
                segments,
                WORDS.get("segment.covering-in-words"),
                was -> new Covering(
                        was.kind(), typed.strip(), was.part(), was.size(), was.overlapFraction(), was.endFinish()));
    }

    static Edit overlap(List<BundleSegment> segments, String typed) {
        OptionalDouble share = TypedNumbers.optional(typed, Unit.PERCENT);
        return coverings(
                segments,
                WORDS.get("segment.overlap-2"),
                was -> new Covering(was.kind(), was.text(), was.part(), was.size(), share, was.endFinish()));
    }

    static Edit ends(List<BundleSegment> segments, String typed) {
        Optional<Covering.EndFinish> finish = typed.isBlank()
                ? Optional.empty()
                : Optional.of(constant(Covering.EndFinish.values(), typed, WORDS.get("segment.finish-of-an-end")));
        return coverings(
                segments,
                WORDS.get("segment.end-finish"),
                was -> new Covering(was.kind(), was.text(), was.part(), was.size(), was.overlapFraction(), finish));
    }

    private static <E extends Enum<E>> E constant(E[] constants, String typed, String what) {
        String word = typed.strip().toLowerCase(Locale.ROOT).replace('-', ' ');
        return Arrays.stream(constants)
                .filter(each ->
                        TradeWords.lower(each).equals(word) || word(each).equalsIgnoreCase(typed.strip()))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(WORDS.get(
                        "segment.is-no-there-are",
                        typed.strip(),
                        what,
                        Arrays.stream(constants).map(SegmentEdits::word).collect(Collectors.joining(", ")))));
    }

    private static Edit coverings(List<BundleSegment> segments, String what, UnaryOperator<Covering> change) {
        return all(segments, what, was -> covered(was, was.covering().map(change)));
    }

    private static BundleSegment covered(BundleSegment was, Optional<Covering> covering) {
        return new BundleSegment(
                was.id(),
                was.from(),
                was.to(),
                was.lengthMetres(),
                was.zone(),
                covering,
                was.assembly(),
                was.layLengthMm());
    }

    private static Edit all(List<BundleSegment> segments, String what, UnaryOperator<BundleSegment> change) {
        List<Edit> edits = segments.stream()
                .map(each -> (Edit) ChangeElements.tried(WORDS.text("segment.set-of", what, each.id()), each, change))
                .toList();
        return TypedNumbers.together(WORDS.text("segment.set-of-segments", what, segments.size()), edits);
    }
}
