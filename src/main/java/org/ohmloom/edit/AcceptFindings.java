package org.ohmloom.edit;

import java.util.ArrayList;
import java.util.List;
import org.ohmloom.model.Element;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Waiver;
import org.ohmloom.model.WaiverId;
import org.ohmloom.words.Text;
import org.ohmloom.words.UnfitException;

/**
 * Accepts findings as they are, with the reason; the pack prints it. One accepted before is accepted for the new reason.
 *
 * @param findings what is accepted
 * @param reason   why; not blank
 * @param by       who accepts it; may be empty
 * @param date     when, as ISO 8601 date text
 */
public record AcceptFindings(List<Accepted> findings, String reason, String by, String date) implements Edit {

    /**
     * A finding by what tells it from others.
     *
     * @param rule     id of the review rule
     * @param subjects ids of the elements it is about
     */
    public record Accepted(String rule, List<String> subjects) {
        public Accepted {
            subjects = List.copyOf(subjects);
        }
    }

    public AcceptFindings {
        findings = List.copyOf(findings);
        if (reason.isBlank()) {
            throw new UnfitException("why it is accepted must be said");
        }
    }

    @Override
    public Text label() {
        return findings.size() == 1
                ? Labels.text(
                        "accept",
                        findings.get(0).rule(),
                        String.join(", ", findings.get(0).subjects()))
                : Labels.text("accept-several", findings.size());
    }

    @Override
    public Harness apply(Harness before) {
        List<Element> waivers = new ArrayList<>();
        FreshIds ids = new FreshIds(before);
        for (Accepted each : findings) {
            WaiverId id = before.waivers().all().stream()
                    .filter(waiver -> waiver.rule().equals(each.rule())
                            && waiver.subjects().equals(each.subjects()))
                    .map(Waiver::id)
                    .findFirst()
                    .orElseGet(() -> new WaiverId(ids.next("A-")));
            waivers.add(new Waiver(id, each.rule(), each.subjects(), reason.strip(), by.strip(), date));
        }
        return before.withAll(waivers);
    }
}
