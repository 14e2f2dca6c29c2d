package org.ohmloom.bench;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BinaryOperator;
import org.ohmloom.model.Measured;
import org.ohmloom.model.NaturalOrder;
import org.ohmloom.model.Reading;
import org.ohmloom.words.Text;

/**
 * The readings of a harness, each judged. A later reading of the same thing on the same harness takes the place of an earlier one:
 * what was mended and measured again counts as it is now.
 *
 * @param judgements the judged readings in the order of their ids
 */
public record AsBuiltRecord(List<Judgement> judgements) {

    /** What stands where no serial number does. */
    public static final String NO_SERIAL = "no serial number";

    /** Nothing was measured. */
    public static final AsBuiltRecord EMPTY = new AsBuiltRecord(List.of());

    public AsBuiltRecord {
        judgements = List.copyOf(judgements);
    }

    /** Judges the readings of a harness. */
    public static AsBuiltRecord of(BenchInput input, TestPlan plan) {
        return of(input, plan, List.copyOf(input.harness().readings().all()));
    }

    /** The same of other readings than those in the harness. */
    public static AsBuiltRecord of(BenchInput input, TestPlan plan, List<Reading> readings) {
        Map<Reading.Thing, Reading> latest = new HashMap<>();
        readings.forEach(reading -> latest.merge(reading.thing(), reading, BinaryOperator.maxBy(ORDER)));
        List<Judgement> judged = new ArrayList<>();
        for (Reading reading : readings) {
            Optional<Reading> later =
                    Optional.of(latest.get(reading.thing())).filter(each -> ORDER.compare(each, reading) > 0);
            judged.add(judge(input, plan, reading).supersededBy(later));
        }
        return new AsBuiltRecord(judged);
    }

    /** Judges one reading by itself. */
    public static Judgement judge(BenchInput input, TestPlan plan, Reading reading) {
        Measured measured = reading.measured();
        ResistanceJudge resistance = new ResistanceJudge(input, plan);
        TestJudge tests = new TestJudge(input, plan);
        if (measured instanceof Measured.Path path) {
            return resistance.path(reading, path);
        } else if (measured instanceof Measured.OfWire wire) {
            return resistance.wire(reading, wire);
        } else if (measured instanceof Measured.OfJoint joint) {
            return resistance.joint(reading, joint);
        } else if (measured instanceof Measured.Isolation isolation) {
            return tests.isolation(reading, isolation);
        } else if (measured instanceof Measured.CableCheck check) {
            return tests.cable(reading, check);
        } else if (measured instanceof Measured.Pull pull) {
            return tests.pull(reading, pull);
        }
        return tests.powered(reading, (Measured.Powered) measured);
    }

    private static final Comparator<Reading> ORDER = Comparator.comparing(
                    (Reading reading) -> reading.measuredAt().orElse(""))
            .thenComparing(reading -> reading.id().value(), NaturalOrder.INSTANCE);

    /** The serial numbers in natural order; {@link #NO_SERIAL} for readings without one. */
    public List<String> serialNumbers() {
        return judgements.stream()
                .map(each -> each.reading().serialNumber().orElse(NO_SERIAL))
                .distinct()
                .sorted(NaturalOrder.INSTANCE)
                .toList();
    }

    /** The judged readings of one built harness. */
    public List<Judgement> of(String serialNumber) {
        return judgements.stream()
                .filter(each -> each.reading().serialNumber().orElse(NO_SERIAL).equals(serialNumber))
                .toList();
    }

    /** Count of those that stand with a verdict. */
    public long count(Verdict verdict) {
        return judgements.stream()
                .filter(each -> each.stands() && each.verdict() == verdict)
                .count();
    }

    /** What came of it in one sentence: "12 readings: 10 passed, 1 failed, 1 not judged". */
    public Text told() {
        long standing = judgements.stream().filter(Judgement::stands).count();
        return TestTexts.text(
                standing == 1 ? "record.one" : "record.several",
                standing,
                count(Verdict.PASSED),
                count(Verdict.FAILED),
                count(Verdict.NOT_JUDGED));
    }

    /** The same in English. */
    public String summary() {
        return told().english();
    }

    /** The judgement of a reading. */
    public Optional<Judgement> of(Reading reading) {
        return judgements.stream()
                .filter(each -> each.reading().id().equals(reading.id()))
                .findFirst();
    }
}
