package org.ohmloom.cli;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.graph.BranchId;
import org.ohmloom.ground.GroundReading;
import org.ohmloom.ground.LoopReading;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.StateId;
import org.ohmloom.store.JsonObjectWriter;

/** Ground points and the loops of the return network as the keys {@code grounds} and {@code loops}. */
final class LoopsJson {

    private LoopsJson() {}

    static void write(Analysis analysis, List<OperatingState> states, JsonObjectWriter root) {
        Set<StateId> asked = states.stream().map(OperatingState::id).collect(Collectors.toSet());
        root.array("grounds", array -> analysis.evidence()
                .returns()
                .grounds()
                .forEach(ground -> array.object(item -> ground(item, analysis, asked, ground))));
        root.array("loops", array -> analysis.evidence()
                .returns()
                .loops()
                .forEach(loop -> array.object(item -> loop(item, analysis, asked, loop))));
    }

    private static void ground(JsonObjectWriter item, Analysis analysis, Set<StateId> asked, GroundReading ground) {
        item.put("id", ground.ground().value());
        item.texts("stacked", ground.stacked().stream().map(ElementId::value).toList());
        item.put("studs", ground.studs());
        item.put("mostStacked", ground.mostStacked());
        item.put("worstState", ground.worst().filter(asked::contains).map(id -> name(analysis, id)));
        item.array("states", array -> ground.states().forEach((state, joint) -> {
            if (asked.contains(state)) {
                array.object(entry -> {
                    entry.put("state", name(analysis, state));
                    entry.put("amps", joint.amps());
                    entry.put("onAmps", joint.onAmps());
                    entry.put("jointVolts", joint.jointVolts());
                    entry.put("offsetVolts", joint.offsetVolts());
                });
            }
        }));
        item.array("shares", array -> ground.returning()
                .forEach(share -> array.object(entry -> {
                    entry.put("cause", share.cause().value());
                    entry.put("amps", share.amps());
                })));
    }

    private static void loop(JsonObjectWriter item, Analysis analysis, Set<StateId> asked, LoopReading loop) {
        item.texts(
                "members", loop.loop().members().stream().map(BranchId::value).toList());
        item.put("ohms", loop.ohms());
        item.object("ampsByState", states -> loop.ampsByState().forEach((state, amps) -> {
            if (asked.contains(state)) {
                states.object(name(analysis, state), members -> amps(members, loop, amps));
            }
        }));
        item.put("strayAmps", value(loop.stray().map(stray -> stray.amps())));
        item.put("strayOnAmps", value(loop.stray().map(stray -> stray.onAmps())));
        item.put("strayMember", loop.stray().map(stray -> stray.member().value()));
        item.put(
                "strayState",
                loop.stray()
                        .filter(stray -> asked.contains(stray.state()))
                        .map(stray -> name(analysis, stray.state())));
        item.put("squareMetres", value(loop.enclosed().map(area -> area.squareMetres())));
        item.put("areaFrom", loop.enclosed().map(area -> area.how().english()));
        item.put("henries", loop.enclosed().map(area -> area.henries()).orElse(OptionalDouble.empty()));
        item.put("inductanceFrom", loop.enclosed().map(area -> area.formula().english()));
        item.put("inducedVolts", value(loop.field().map(field -> field.volts())));
        item.put("inducedAmps", value(loop.field().map(field -> field.amps())));
        item.put("intended", loop.intended());
    }

    private static void amps(JsonObjectWriter members, LoopReading loop, List<Double> amps) {
        for (int k = 0; k < amps.size(); k++) {
            members.put(loop.loop().members().get(k).value(), amps.get(k));
        }
    }

    private static OptionalDouble value(Optional<Double> value) {
        return value.map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }

    private static String name(Analysis analysis, StateId id) {
        return analysis.harness().states().get(id).name();
    }
}
