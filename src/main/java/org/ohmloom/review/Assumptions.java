package org.ohmloom.review;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ohmloom.graph.Assumption;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.words.Text;

/**
 * What the network of any state takes for granted, as findings: one for all protective devices whose resistance is a
 * typical one, one for each other element. The calculation log has every assumption in full.
 */
final class Assumptions {

    private Assumptions() {}

    static List<Finding> findings(Evidence evidence, RuleInfo info) {
        List<Assumption> devices = new ArrayList<>();
        Map<String, List<Assumption>> others = new LinkedHashMap<>();
        for (Assumption assumption : evidence.assumptions()) {
            if (isProtective(evidence, assumption)) {
                devices.add(assumption);
            } else {
                others.computeIfAbsent(assumption.element().value(), key -> new ArrayList<>())
                        .add(assumption);
            }
        }
        List<Finding> findings = new ArrayList<>();
        if (!devices.isEmpty()) {
            findings.add(protective(devices, info));
        }
        others.values().forEach(same -> findings.add(other(same, info)));
        return findings;
    }

    private static boolean isProtective(Evidence evidence, Assumption assumption) {
        return assumption.element() instanceof ComponentId id
                && evidence.harness()
                        .components()
                        .find(id)
                        .filter(component -> component.device() instanceof ProtectiveDevice)
                        .isPresent();
    }

    private static Finding protective(List<Assumption> same, RuleInfo info) {
        List<String> devices =
                same.stream().map(each -> each.element().value()).distinct().toList();
        List<String> sources = same.stream().map(Assumption::source).distinct().toList();
        return new FindingDraft(info, "assumed-devices")
                .word("devices", Listing.of(devices, 100))
                .source(
                        sources.size() == 1
                                ? sources.get(0)
                                : info.text("more-rows", sources.get(0), sources.size() - 1))
                .subjects(devices)
                .build();
    }

    private static Finding other(List<Assumption> same, RuleInfo info) {
        Text more = same.size() == 1 ? Text.NONE : info.text("more-about-it", same.size() - 1);
        return new FindingDraft(info, "assumed")
                .word("text", same.get(0).told())
                .word("more", more)
                .source(same.get(0).source())
                .subject(same.get(0).element())
                .build();
    }
}
