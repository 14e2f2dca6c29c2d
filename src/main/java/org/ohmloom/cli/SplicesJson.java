package org.ohmloom.cli;

import org.ohmloom.analysis.Analysis;
import org.ohmloom.bundle.splice.SpliceAdvice;
import org.ohmloom.graph.RefusedWay;
import org.ohmloom.model.Place;
import org.ohmloom.model.SegmentId;
import org.ohmloom.store.JsonObjectWriter;

/** Where splices lie best, as the array {@code splices}, and wires without a permitted way, as the array {@code refusedWays}. */
final class SplicesJson {

    private SplicesJson() {}

    static void write(Analysis analysis, JsonObjectWriter root) {
        root.objects("splices", analysis.evidence().splices().values(), SplicesJson::splice);
        root.objects("refusedWays", analysis.routes().refused().values(), SplicesJson::refused);
    }

    private static void splice(SpliceAdvice advice, JsonObjectWriter item) {
        item.put("id", advice.splice().value());
        item.put("presentKg", advice.presentKg());
        item.put("bestKg", advice.bestKg());
        item.put("best", advice.best().map(SplicesJson::text));
        item.texts("tooNear", advice.tooNear());
        item.put("stays", advice.stays());
    }

    private static void refused(RefusedWay way, JsonObjectWriter item) {
        item.put("wire", way.wire().value());
        item.put("rules", way.rules().size());
        item.texts(
                "taken",
                way.taken().stream()
                        .flatMap(route -> route.segments().stream())
                        .map(SegmentId::value)
                        .toList());
    }

    private static String text(Place place) {
        return place instanceof Place.OnSegment on
                ? on.segment() + " at " + on.distanceMetres() + " m"
                : ((Place.AtBreakout) place).breakout().value();
    }
}
