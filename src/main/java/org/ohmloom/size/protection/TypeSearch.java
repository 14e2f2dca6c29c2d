package org.ohmloom.size.protection;

import static org.ohmloom.size.protection.TypeCandidate.TEXTS;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.CancellationException;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.model.ProtectiveDevice.Kind;
import org.ohmloom.size.protection.TypeCandidate.Outcome;
import org.ohmloom.tables.BreakerType;
import org.ohmloom.tables.FuseRating;
import org.ohmloom.tables.FuseSeries;
import org.ohmloom.units.Formats;
import org.ohmloom.words.Text;

/**
 * Looks through all fuse and breaker types of the tables for one that meets every check in the place of a device.
 *
 * <p>Of each type the version with the smallest sufficient rated voltage is judged, at every rating until one meets all; what
 * is judged is what {@link DeviceStudy} judges of the device in place, and the rating rule of the basis. What is there stays
 * when it meets all. Otherwise the present type comes first, then the type that fails at least and leaves least open, then a
 * device of the same kind. Fault currents are those of the network with the difference in the devices' own resistance;
 * conductors are those that rely on the device as it is.
 */
final class TypeSearch {

    private static final String MANUAL_RESET = "manual";

    /** Weight of failing where the other does not. */
    private static final int NEVER_WORSE = 100;

    private final ProtectionInput input;
    private final DeviceStudy study;
    private final RelyingConductors conductors;
    private final SortedMap<ComponentId, DeviceProtection> devices;

    TypeSearch(
            ProtectionInput input,
            DeviceStudy study,
            RelyingConductors conductors,
            SortedMap<ComponentId, DeviceProtection> devices) {
        this.input = input;
        this.study = study;
        this.conductors = conductors;
        this.devices = devices;
    }

    /** What is proposed for every device. */
    SortedMap<ComponentId, DeviceProposal> proposals() {
        SortedMap<ComponentId, DeviceProposal> proposals = new TreeMap<>();
        for (Component component : input.harness().components().all()) {
            if (component.device() instanceof ProtectiveDevice device) {
                if (input.cancelled().getAsBoolean()) {
                    throw new CancellationException("asked to stop");
                }
                proposals.put(component.id(), proposal(component, device));
            }
        }
        return proposals;
    }

    private DeviceProposal proposal(Component component, ProtectiveDevice present) {
        TypeCandidate now = judged(component, present);
        List<TypeCandidate> best = new ArrayList<>(List.of(bestOfPresentType(component, present, now)));
        List<TypeCandidate> refused = new ArrayList<>();
        for (FuseSeries series : series()) {
            Optional<BreakerType> breaker = breaker(series.type());
            if (series.type().equals(present.series())) {
                continue;
            }
            if (breaker.filter(each -> !each.reset().equals(MANUAL_RESET)).isPresent()) {
                refused.add(closesAgain(series, breaker.get()));
            } else {
                Kind kind = breaker.isPresent() ? Kind.BREAKER : Kind.FUSE;
                best.add(bestOf(component, versions(series, kind, component.id()), now));
            }
        }
        TypeCandidate ofType = best.get(0);
        TypeCandidate chosen = best.stream()
                .min(Comparator.comparingInt((TypeCandidate each) -> lacks(each, ofType))
                        .thenComparing(each -> !each.device().series().equals(present.series()))
                        .thenComparing(each -> each.device().kind() != present.kind()))
                .orElseThrow();
        List<TypeCandidate> types = new ArrayList<>();
        best.forEach(each -> types.add(each == chosen ? chosen(each, present, ofType) : other(each, ofType)));
        types.addAll(refused);
        TypeCandidate told = types.stream()
                .filter(each -> each.outcome() == Outcome.CHOSEN)
                .findFirst()
                .orElseThrow();
        return new DeviceProposal(component.id(), present, now.checks(), told, types);
    }

    /** Points a candidate fails at, those another meets many times, and points it leaves open beyond those the other does. */
    private static int lacks(TypeCandidate candidate, TypeCandidate other) {
        int worse = (int) candidate.failed().stream()
                .filter(check -> !other.fails(check.aspect()))
                .count();
        return candidate.failed().size()
                + NEVER_WORSE * worse
                + Math.max(0, candidate.open().size() - other.open().size());
    }

    private List<FuseSeries> series() {
        return input.tables().fuseSeries().stream()
                .sorted(Comparator.comparing(FuseSeries::type))
                .toList();
    }

    private Optional<BreakerType> breaker(String type) {
        return input.tables().breakerTypes().stream()
                .filter(each -> each.id().equals(type))
                .findFirst();
    }

    private static TypeCandidate closesAgain(FuseSeries series, BreakerType breaker) {
        return new TypeCandidate(
                new ProtectiveDevice(
                        Kind.BREAKER, series.type(), series.ratings().get(0).ratingAmps(), OptionalDouble.empty()),
                List.of(),
                Outcome.REFUSED,
                TEXTS.text("resets", breaker.behaviour()),
                Text.of(breaker.citation().text()));
    }

    /** The present device if it meets all, else the rating of its type that meets most. */
    private TypeCandidate bestOfPresentType(Component component, ProtectiveDevice present, TypeCandidate now) {
        Optional<FuseSeries> series = input.tables().fuseSeries(present.series());
        if (now.failed().isEmpty() || series.isEmpty()) {
            return now;
        }
        List<ProtectiveDevice> tried = new ArrayList<>();
        if (now.fails(Check.Aspect.VOLTAGE)) {
            series.get()
                    .rating(present.ratingAmps())
                    .ifPresent(rating -> tried.add(version(series.get(), rating, present.kind(), component.id())));
            tried.addAll(versions(series.get(), present.kind(), component.id()));
        } else {
            series.get().ratings().forEach(rating -> tried.add(present.withRatingAmps(rating.ratingAmps())));
        }
        TypeCandidate best = bestOf(component, tried, now);
        return lacks(best, now) < lacks(now, now) ? best : now;
    }

    /** Every rating of a type, in the version whose voltage suffices. */
    private List<ProtectiveDevice> versions(FuseSeries series, Kind kind, ComponentId place) {
        return series.ratings().stream()
                .map(rating -> version(series, rating, kind, place))
                .toList();
    }

    /**
     * A rating in the version of the smallest sufficient voltage, the highest where none suffices. The usual version carries no
     * figures of its own: they are those of its rows.
     */
    private ProtectiveDevice version(FuseSeries series, FuseRating rating, Kind kind, ComponentId place) {
        double system = devices.get(place).systemVolts().orElse(0);
        if (rating.ratedVolts() >= system) {
            return new ProtectiveDevice(kind, series.type(), rating.ratingAmps(), OptionalDouble.empty());
        }
        List<Double> voltages = series.voltages();
        double volts =
                voltages.stream().filter(each -> each >= system).findFirst().orElse(voltages.get(voltages.size() - 1));
        return volts == rating.ratedVolts()
                ? new ProtectiveDevice(kind, series.type(), rating.ratingAmps(), OptionalDouble.empty())
                : new ProtectiveDevice(
                        kind,
                        series.type(),
                        rating.ratingAmps(),
                        OptionalDouble.empty(),
                        OptionalDouble.of(volts),
                        series.breakingAmps(volts)
                                .map(value -> OptionalDouble.of(value.value()))
                                .orElse(OptionalDouble.empty()));
    }

    /** The first that meets all; else the one that fails and leaves open least, of equals the one nearest to the present rating. */
    private TypeCandidate bestOf(Component component, List<ProtectiveDevice> tried, TypeCandidate now) {
        Optional<TypeCandidate> best = Optional.empty();
        for (ProtectiveDevice device : tried) {
            TypeCandidate candidate = judged(component, device);
            if (candidate.failed().isEmpty()) {
                return candidate;
            }
            if (best.isEmpty() || isBetter(candidate, best.get(), now)) {
                best = Optional.of(candidate);
            }
        }
        return best.orElseThrow();
    }

    private static boolean isBetter(TypeCandidate candidate, TypeCandidate best, TypeCandidate now) {
        int less = lacks(best, now) - lacks(candidate, now);
        return less > 0 || less == 0 && apart(candidate, now) < apart(best, now);
    }

    /** How far apart two ratings are, as the logarithm of their ratio. */
    private static double apart(TypeCandidate one, TypeCandidate other) {
        return Math.abs(Math.log(one.device().ratingAmps() / other.device().ratingAmps()));
    }

    private TypeCandidate judged(Component component, ProtectiveDevice device) {
        ComponentId id = component.id();
        List<ConductorProtection> behind = conductors.behind(id, device);
        DeviceProtection found = study.study(component, device, behind);
        List<Check> checks = new ArrayList<>(found.checks());
        conductors.allowed(id, device, behind).ifPresent(checks::add);
        below(id, found).ifPresent(checks::add);
        return new TypeCandidate(device, checks, Outcome.REFUSED, Text.NONE, rows(device, found));
    }

    /** The first device downstream that is selective with what is there and would not be with this. */
    private Optional<Check> below(ComponentId id, DeviceProtection found) {
        return devices.values().stream()
                .filter(each -> each.selectivity().stream()
                        .anyMatch(now -> now.upstream().equals(id) && now.selective()))
                .map(each -> Selectivity.of(
                        id,
                        each.ratingAmps(),
                        found.ratingAmps(),
                        each.band(),
                        found.band(),
                        each.maximumFault()
                                .map(fault -> OptionalDouble.of(fault.deviceAmps()))
                                .orElse(OptionalDouble.empty())))
                .filter(each -> !each.selective())
                .findFirst()
                .map(each -> Check.judged(
                        Check.Aspect.SELECTIVE, false, CheckTexts.text("behind-it", each.told()), Selectivity.SOURCE));
    }

    private Text rows(ProtectiveDevice device, DeviceProtection found) {
        Set<String> rows = new LinkedHashSet<>();
        input.tables()
                .fuseSeries(device.series())
                .flatMap(series -> series.rating(device.ratingAmps()))
                .ifPresent(rating -> rows.add(rating.citation().text()));
        found.band().ifPresent(band -> rows.add(band.firstOpening().citation().text()));
        return rows.isEmpty() ? TEXTS.text("no-table") : Text.of(String.join("; ", rows));
    }

    private static TypeCandidate chosen(TypeCandidate chosen, ProtectiveDevice present, TypeCandidate ofType) {
        return chosen.with(Outcome.CHOSEN, why(chosen, present, ofType));
    }

    private static Text why(TypeCandidate chosen, ProtectiveDevice present, TypeCandidate ofType) {
        boolean all = chosen.failed().isEmpty();
        Text meets = all ? withOpen(TEXTS.text("meets-all"), chosen) : TEXTS.text("meets-most", chosen.failures());
        if (chosen.device().equals(present)) {
            return TEXTS.text("stays", all ? meets : TEXTS.text("nothing-better", chosen.failures()));
        }
        return chosen.device().series().equals(present.series())
                ? TEXTS.text("present-type", meets)
                : TEXTS.text("other-type", failing(ofType), meets);
    }

    private static TypeCandidate other(TypeCandidate other, TypeCandidate ofType) {
        if (!other.failed().isEmpty()) {
            return other.with(Outcome.REFUSED, other.failures());
        }
        return lacks(other, ofType) > 0
                ? other.with(Outcome.REFUSED, withOpen(TEXTS.text("cannot-be-judged"), other))
                : other.with(Outcome.WOULD_SERVE, withOpen(TEXTS.text("would-serve"), other));
    }

    private static Text failing(TypeCandidate ofType) {
        return TEXTS.text(
                "at-its-best",
                ofType.device().series(),
                Formats.amps(ofType.device().ratingAmps()),
                TypeCandidate.aspects(ofType.failed()));
    }

    private static Text withOpen(Text said, TypeCandidate candidate) {
        return candidate.open().isEmpty()
                ? said
                : TEXTS.text("not-judged", said, TypeCandidate.aspects(candidate.open()));
    }
}
