package org.ohmloom.bundle.length;

import static org.ohmloom.bundle.length.LengthPart.TEXTS;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.model.ConnectorAllowance;
import org.ohmloom.model.ContactPart;
import org.ohmloom.model.FabricationRules;
import org.ohmloom.model.Harness;
import org.ohmloom.model.WireEnd;
import org.ohmloom.tables.CitedValue;
import org.ohmloom.tables.FabricationTables;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/**
 * What a wire gets on top of its way at each end: at a connector the depth to the crimp, the strip, a loop, the slack to
 * terminate anew and a drip loop where one is asked for; at a terminal or ground the strip and that slack; in a splice the
 * overlap. Nothing at a loose end. The connector's own allowance comes before that of the harness, and that before the table.
 */
final class EndAllowances {
    private static final Text RULES = TEXTS.text("rules");

    private final Harness harness;
    private final FabricationRules rules;
    private final FabricationTables tables;

    EndAllowances(Harness harness, FabricationTables tables) {
        this.harness = harness;
        this.rules = harness.rules().fabricationRules();
        this.tables = tables;
    }

    /** An amount and where it is from. */
    private record Amount(double millimetres, Text source) {}

    /** The parts of one end. */
    List<LengthPart> of(WireEnd end) {
        List<LengthPart> parts = new ArrayList<>();
        if (end instanceof WireEnd.AtCavity at) {
            atCavity(at, parts);
        } else if (end instanceof WireEnd.AtSplice) {
            add(parts, LengthPart.Kind.SPLICE_OVERLAP, end, table("splice-overlap"));
        } else if (end instanceof WireEnd.AtTerminal || end instanceof WireEnd.AtGround) {
            Amount strip = table("strip-terminal");
            add(parts, LengthPart.Kind.STRIP, end, strip);
            add(parts, LengthPart.Kind.RETERMINATION, end, anew(strip));
        }
        return parts;
    }

    private void atCavity(WireEnd.AtCavity at, List<LengthPart> parts) {
        Optional<ConnectorAllowance> own = rules.at(at.connector());
        Amount strip = strip(at);
        add(
                parts,
                LengthPart.Kind.CONNECTOR_DEPTH,
                at,
                own(at, own.map(ConnectorAllowance::depthMm), rules.connectorDepthMm(), "connector-depth"));
        add(parts, LengthPart.Kind.STRIP, at, strip);
        add(
                parts,
                LengthPart.Kind.SERVICE_LOOP,
                at,
                own(at, own.map(ConnectorAllowance::serviceLoopMm), rules.serviceLoopMm(), "service-loop"));
        add(parts, LengthPart.Kind.RETERMINATION, at, anew(strip));
        if (own.map(ConnectorAllowance::dripLoop).orElse(false)) {
            add(
                    parts,
                    LengthPart.Kind.DRIP_LOOP,
                    at,
                    own(at, own.map(ConnectorAllowance::dripLoopMm), rules.dripLoopMm(), "drip-loop"));
        }
    }

    private Amount strip(WireEnd.AtCavity at) {
        return harness.contact(at)
                .map((ContactPart contact) -> new Amount(contact.stripLengthMm(), TEXTS.text("contact", contact.id())))
                .orElseGet(() -> table("strip"));
    }

    /** Slack to terminate an end anew: each time by its strip and what is cut off behind the crimp. */
    private Amount anew(Amount strip) {
        CitedValue usual = tables.value("re-terminations");
        double count = rules.reterminationCount().orElse(usual.value());
        Text source = rules.reterminationCount().isPresent()
                ? RULES
                : Text.of(usual.citation().text());
        Amount cut = table("re-termination-cut");
        return new Amount(
                count * (strip.millimetres() + cut.millimetres()),
                TEXTS.text(
                        "anew",
                        Formats.number(count),
                        Formats.millimetres(strip.millimetres()),
                        Formats.millimetres(cut.millimetres()),
                        source,
                        cut.source()));
    }

    private Amount own(WireEnd.AtCavity at, Optional<OptionalDouble> own, OptionalDouble asked, String item) {
        OptionalDouble first = own.orElse(OptionalDouble.empty());
        if (first.isPresent()) {
            return new Amount(first.getAsDouble(), TEXTS.text("connector", at.connector()));
        }
        return asked.isPresent() ? new Amount(asked.getAsDouble(), RULES) : table(item);
    }

    private Amount table(String item) {
        return new Amount(
                tables.value(item).value(),
                Text.of(tables.value(item).citation().text()));
    }

    private static void add(List<LengthPart> parts, LengthPart.Kind kind, WireEnd end, Amount amount) {
        if (amount.millimetres() > 0) {
            parts.add(new LengthPart(kind, Optional.of(Text.of(end.text())), amount.millimetres(), amount.source()));
        }
    }
}
