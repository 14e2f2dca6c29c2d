package org.ohmloom.analysis.assembly;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.CaseGround;
import org.ohmloom.model.Component;
import org.ohmloom.model.Connector;
import org.ohmloom.model.Element;
import org.ohmloom.model.GroundPoint;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Place;
import org.ohmloom.model.Splice;
import org.ohmloom.model.Strap;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;

/** What an element of an assembly cannot do without: the ends of a wire, what a connector plugs into, where things lie. */
final class Touched {

    private final Harness harness;

    Touched(Harness harness) {
        this.harness = harness;
    }

    List<Element> by(Element element) {
        List<Element> touched = new ArrayList<>();
        if (element instanceof Wire wire) {
            wire.ends().forEach(end -> end(end).ifPresent(touched::add));
            wire.cable().map(harness.cables()::get).ifPresent(touched::add);
        } else if (element instanceof Connector connector) {
            connector.component().map(harness.components()::get).ifPresent(touched::add);
            connector.at().map(harness.breakouts()::get).ifPresent(touched::add);
        } else if (element instanceof Component component) {
            component
                    .caseGround()
                    .map(CaseGround::ground)
                    .map(harness.grounds()::get)
                    .ifPresent(touched::add);
        } else if (element instanceof Splice splice) {
            splice.place().map(this::place).ifPresent(touched::add);
        } else if (element instanceof BundleSegment segment) {
            touched.add(harness.breakouts().get(segment.from()));
            touched.add(harness.breakouts().get(segment.to()));
        } else if (element instanceof GroundPoint ground) {
            touched.add(harness.bodies().get(ground.body()));
        } else if (element instanceof Strap strap) {
            touched.add(harness.grounds().get(strap.from()));
            touched.add(harness.grounds().get(strap.to()));
        }
        return touched;
    }

    private Optional<Element> end(WireEnd end) {
        if (end instanceof WireEnd.AtCavity at) {
            return Optional.of(harness.connectors().get(at.connector()));
        }
        if (end instanceof WireEnd.AtTerminal at) {
            return Optional.of(harness.components().get(at.component()));
        }
        if (end instanceof WireEnd.AtSplice at) {
            return Optional.of(harness.splices().get(at.splice()));
        }
        if (end instanceof WireEnd.AtGround at) {
            return Optional.of(harness.grounds().get(at.ground()));
        }
        return Optional.empty();
    }

    private Element place(Place place) {
        if (place instanceof Place.OnSegment along) {
            return harness.segments().get(along.segment());
        }
        return harness.breakouts().get(((Place.AtBreakout) place).breakout());
    }
}
