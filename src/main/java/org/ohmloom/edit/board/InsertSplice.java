package org.ohmloom.edit.board;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.FreshIds;
import org.ohmloom.edit.Labels;
import org.ohmloom.edit.Renaming;
import org.ohmloom.model.FabricationRules;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Place;
import org.ohmloom.model.RoutingRule;
import org.ohmloom.model.Splice;
import org.ohmloom.model.SpliceId;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.WireId;
import org.ohmloom.words.Text;
import org.ohmloom.words.UnfitException;

/**
 * Cuts a wire and joins its halves in a splice. Both keep size, colour, class and circuit; a typed length is shared by where the
 * cut is; a measured resistance was that of the whole wire and goes. Routing rules that name the wire name its second half too.
 *
 * @param wire     the wire; its first half keeps the identity
 * @param second   identity of the half at the wire's {@code to} end
 * @param splice   identity of the splice
 * @param name     name of the splice
 * @param place    where it lies; empty leaves that open
 * @param fraction share of the wire's length before the cut, more than 0 and less than 1
 */
public record InsertSplice(
        WireId wire, WireId second, SpliceId splice, String name, Optional<Place> place, double fraction)
        implements Edit {

    /** Joint of a new splice, ohm: a round figure to be overwritten. */
    static final double SPLICE_OHMS = 0.0002;

    /** Shares are kept off the ends, so that each half has a length. */
    private static final double LEAST_FRACTION = 0.01;

    public InsertSplice {
        if (!(fraction > 0 && fraction < 1)) {
            throw new UnfitException("the cut of wire %s must lie within it, was at %s", wire, fraction);
        }
    }

    /**
     * The same with fresh identities.
     *
     * @param fraction share of the wire's length before the cut; brought within 0.01 to 0.99
     */
    public static Drawn on(Harness harness, WireId wire, Optional<Place> place, double fraction) {
        FreshIds fresh = new FreshIds(harness);
        WireId second = new WireId(fresh.next(harness.wires().ids(), "W"));
        SpliceId splice = new SpliceId(fresh.next(harness.splices().ids(), "SP"));
        double share = Math.max(LEAST_FRACTION, Math.min(1 - LEAST_FRACTION, fraction));
        InsertSplice edit = new InsertSplice(
                wire, second, splice, new FreshNames(harness).like(Splice.class, "Splice"), place, share);
        return new Drawn(edit, List.of(splice.value(), wire.value(), second.value()));
    }

    @Override
    public Text label() {
        return Labels.text("insert-splice", splice, wire);
    }

    @Override
    public Harness apply(Harness before) {
        Wire whole = before.wires().get(wire).unmeasured();
        Splice joint = new Splice(splice, name, SPLICE_OHMS, place, Optional.empty(), false, whole.assembly());
        WireEnd cut = new WireEnd.AtSplice(splice);
        Wire first = whole.withEnds(whole.from(), cut).withLengthMetres(share(whole, fraction));
        Wire other = (Wire) new Renaming(Map.of(wire.value(), second.value()), Map.of())
                .of(whole.withEnds(cut, whole.to()).withLengthMetres(share(whole, 1 - fraction)));
        Harness after = before.withAll(List.of(joint, first, other));
        FabricationRules rules = after.rules().fabricationRules();
        List<RoutingRule> routing = rules.routing().stream().map(this::named).toList();
        return routing.equals(rules.routing())
                ? after
                : after.withRules(after.rules().withFabrication(rules.withRouting(routing)));
    }

    private static OptionalDouble share(Wire whole, double fraction) {
        return whole.lengthMetres().isPresent()
                ? OptionalDouble.of(whole.lengthMetres().getAsDouble() * fraction)
                : OptionalDouble.empty();
    }

    private RoutingRule named(RoutingRule rule) {
        if (!rule.wires().contains(wire)) {
            return rule;
        }
        List<WireId> wires = new ArrayList<>(rule.wires());
        wires.add(second);
        return rule.with(wires);
    }
}
