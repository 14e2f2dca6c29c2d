package org.ohmloom.workbench.inspect;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.WireId;
import org.ohmloom.review.StudyPart;
import org.ohmloom.size.protection.Check;
import org.ohmloom.size.protection.ConductorProtection;
import org.ohmloom.size.protection.DeviceProtection;
import org.ohmloom.size.protection.ProtectionResults;
import org.ohmloom.words.Constants;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.inspect.Inspection.Fact;
import org.ohmloom.workbench.inspect.Inspection.Facts;
import org.ohmloom.workbench.widget.Tone;
import org.ohmloom.workbench.words.TradeWords;
import org.ohmloom.workbench.words.Words;

/** How a wire is protected and what a protective device is judged by, for the inspector. */
final class ProtectionFacts {
    private static final Words WORDS = Words.of("inspector");

    private ProtectionFacts() {}

    /** The devices a wire relies on; empty where it relies on none. */
    static Optional<Facts> ofWire(Readout readout, WireId wire) {
        ProtectionResults results = results(readout);
        List<Fact> facts = new ArrayList<>();
        Optional<String> melting = Optional.empty();
        for (ComponentId id : results.relying().getOrDefault(wire, List.of())) {
            for (DeviceProtection device : results.of(id).stream().toList()) {
                for (ConductorProtection each : device.conductors()) {
                    if (each.wire().equals(wire)) {
                        facts.add(fact(device, each));
                        melting = Optional.of(Words.said(each.melting()));
                    }
                }
            }
        }
        melting.ifPresent(words -> facts.add(Fact.of(WORDS.get("protection.copper-melts"), words)));
        return facts.isEmpty() ? Optional.empty() : Optional.of(new Facts(title(), facts));
    }

    private static Fact fact(DeviceProtection device, ConductorProtection conductor) {
        String text = Words.said(conductor.text());
        boolean burns = conductor.isProtected().filter(safe -> !safe).isPresent();
        String verdict = conductor.isProtected().isEmpty()
                ? ""
                : burns ? WORDS.get("protection.not-protected") : WORDS.get("protection.protected");
        return new Fact(WORDS.get("protection.by", device.device()), verdict + text, burns ? Tone.ERROR : Tone.PLAIN);
    }

    /** The verdicts on a protective device; empty for anything else. */
    static Optional<Facts> ofDevice(Readout readout, ComponentId component) {
        return results(readout)
                .of(component)
                .map(device -> new Facts(
                        title(),
                        device.checks().stream().map(ProtectionFacts::fact).toList()));
    }

    private static Fact fact(Check check) {
        String verdict = Words.said(Constants.text(check.verdict()).lowerCase());
        Tone tone =
                switch (check.verdict()) {
                    case MET -> Tone.PLAIN;
                    case NOT_MET -> Tone.ERROR;
                    case NOT_JUDGED -> Tone.SOFT;
                };
        return new Fact(
                TradeWords.capital(TradeWords.named(check.aspect())),
                verdict + ". " + TradeWords.capital(Words.said(check.told())),
                tone);
    }

    private static ProtectionResults results(Readout readout) {
        return readout.having(Set.of(StudyPart.PROTECTION))
                .analysis()
                .map(each -> each.evidence().protection())
                .orElse(ProtectionResults.NONE);
    }

    private static String title() {
        return WORDS.get("protection.protection");
    }
}
