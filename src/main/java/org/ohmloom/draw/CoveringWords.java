package org.ohmloom.draw;

import java.util.Locale;
import org.ohmloom.model.Covering;
import org.ohmloom.units.Formats;

/** Coverings in words. */
public final class CoveringWords {

    private CoveringWords() {}

    /** The kind: "conduit". */
    static String kind(Covering covering) {
        return switch (covering.kind()) {
            case TAPE -> "tape";
            case BRAIDED_SLEEVE -> "braid";
            case CONDUIT -> "conduit";
            case HEAT_SHRINK -> "heat shrink";
            case TUBE -> "tube";
        };
    }

    /** Kind and size: "conduit 10 mm nominal", "19 mm cloth tape". */
    public static String sized(Covering covering) {
        String kind = kind(covering);
        boolean named = covering.text().toLowerCase(Locale.ROOT).contains(kind);
        return named ? covering.text() : kind + " " + covering.text();
    }

    /** Kind, size, overlap and end finish. */
    static String whole(Covering covering) {
        String overlap = overlap(covering);
        boolean told = covering.text().contains("overlap");
        String ends = covering.kind() == Covering.Kind.TAPE ? "" : ends(covering);
        return sized(covering)
                + (overlap.isEmpty() || told ? "" : ", overlap " + overlap)
                + (ends.isEmpty() ? "" : ", ends " + ends);
    }

    /** The overlap of a tape, "50 %"; empty where none is entered. */
    static String overlap(Covering covering) {
        return covering.overlapFraction().isPresent()
                ? Formats.percent(covering.overlapFraction().getAsDouble())
                : "";
    }

    /** How the ends are held, "taped"; empty where that is not entered. */
    static String ends(Covering covering) {
        return covering.endFinish()
                .map(finish -> finish.name().toLowerCase(Locale.ROOT).replace('_', ' '))
                .orElse("");
    }
}
