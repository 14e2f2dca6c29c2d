package org.ohmloom.draw.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.draw.chart.Basin;
import org.ohmloom.draw.chart.Gauge;
import org.ohmloom.draw.chart.ReturnColumn;
import org.ohmloom.draw.chart.ReturnPicture;
import org.ohmloom.graph.Network;
import org.ohmloom.ground.Offset;
import org.ohmloom.ground.OffsetLimits;
import org.ohmloom.ground.ReferencePoint;
import org.ohmloom.ground.ReturnStudy;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.GroundPointId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.NaturalOrder;
import org.ohmloom.model.StateId;
import org.ohmloom.words.Text;

/** The picture of the return paths of a harness. */
public final class ReturnPictures {

    private ReturnPictures() {}

    /**
     * The picture in one state, or of the worst of all.
     *
     * @param drawn the network as drawn, whose datum is the reference
     * @param state the state; empty for the worst of all
     */
    public static Optional<ReturnPicture> of(
            Harness harness, ReturnStudy study, Network drawn, Optional<StateId> state) {
        List<Offset> offsets = ReturnReadings.offsets(study, state, offset -> OffsetLimits.isOver(harness, offset));
        List<ReturnColumn> columns = new ArrayList<>(basins(harness, study, offsets, state));
        offsets.stream()
                .filter(offset -> offset.point().kind() != ReferencePoint.Kind.GROUND_POINT)
                .sorted(Comparator.comparing(
                                (Offset offset) -> kind(offset.point().kind()))
                        .thenComparing(offset -> offset.point().owner()))
                .forEach(offset -> columns.add(gauge(harness, offset, state)));
        if (columns.isEmpty()) {
            return Optional.empty();
        }
        Text reference = reference(drawn);
        return Optional.of(new ReturnPicture(
                state.map(id -> StudyTexts.text("returns.in", Named.state(harness, id)))
                        .orElse(StudyTexts.text("returns.worst")),
                StudyTexts.text("returns.about", reference),
                reference,
                columns));
    }

    /** Name of the reference: "BAT1 negative". */
    public static Text reference(Network drawn) {
        return drawn.datum()
                .map(point -> point.value().endsWith(".-")
                        ? StudyTexts.text(
                                "returns.negative",
                                point.value().substring(0, point.value().length() - 2))
                        : Text.of(point))
                .orElse(StudyTexts.text("returns.reference"));
    }

    private static List<Basin> basins(
            Harness harness, ReturnStudy study, List<Offset> offsets, Optional<StateId> state) {
        Map<ElementId, Offset> swings = new HashMap<>();
        offsets.stream()
                .filter(offset -> offset.point().kind() == ReferencePoint.Kind.GROUND_POINT)
                .forEach(offset -> swings.put(offset.point().owner(), offset));
        List<Basin> basins = new ArrayList<>();
        for (ReturnReadings.AtGround at : ReturnReadings.grounds(
                study, id -> state.or(() -> Optional.ofNullable(swings.get(id)).map(Offset::state)))) {
            GroundPointId id = at.ground().ground();
            Optional<Offset> offset = Optional.ofNullable(swings.get(id))
                    .filter(each -> each.state().equals(at.state()));
            basins.add(new Basin(
                    id.value(),
                    id.value(),
                    Named.name(harness, id),
                    Text.of(body(harness, id)),
                    state.isPresent() ? "" : Named.state(harness, at.state()),
                    at.ground().stacked().size(),
                    at.ground().mostStacked(),
                    at.joint().amps(),
                    at.joint().offsetVolts(),
                    at.joint().jointVolts(),
                    offset.map(Offset::rippleVolts).orElse(0.0),
                    offset.map(each -> OffsetLimits.judged(harness, each)).orElse(OptionalDouble.empty())));
        }
        basins.sort(Comparator.comparing((Basin basin) -> basin.group().english(), NaturalOrder.INSTANCE)
                .thenComparing(Basin::element, NaturalOrder.INSTANCE));
        return basins;
    }

    private static String body(Harness harness, GroundPointId id) {
        return harness.grounds()
                .find(id)
                .map(ground -> harness.bodies()
                        .find(ground.body())
                        .map(body -> body.name())
                        .orElse(ground.body().value()))
                .orElse("");
    }

    private static Gauge gauge(Harness harness, Offset offset, Optional<StateId> state) {
        ElementId owner = offset.point().owner();
        return new Gauge(
                owner.value(),
                owner.value(),
                Named.name(harness, owner),
                kind(offset.point().kind()),
                offset.point().against().value(),
                state.isPresent() ? "" : Named.state(harness, offset.state()),
                offset.volts(),
                offset.rippleVolts(),
                OffsetLimits.judged(harness, offset));
    }

    private static Gauge.Kind kind(ReferencePoint.Kind kind) {
        return switch (kind) {
            case UNIT_GROUND, GROUND_POINT -> Gauge.Kind.UNIT_GROUND;
            case BUS_NODE_GROUND -> Gauge.Kind.BUS_NODE;
            case SENSOR_RETURN -> Gauge.Kind.SENSOR_RETURN;
        };
    }
}
