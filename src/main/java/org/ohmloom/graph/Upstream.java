package org.ohmloom.graph;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Converter;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireId;

/**
 * What stands between each source and the conductors it feeds.
 *
 * <p>Feeds are followed from the positive terminals of sources and converter outputs along conductors, contacts and
 * devices, and end at loads and at the return network. Every switch, relay contact and output is taken as able to close
 * and every protective device as in place, so the answer is the same in every operating state; but a change-over switch
 * never has two of its contacts closed, and current passes outputs and diodes one way only. Reference supplies and
 * pull-ups limit themselves and count as no source.
 *
 * <p>Cost: for each source one search for every protective device and one for every region between devices.
 */
public final class Upstream {
    private final Network network;
    private final List<FeedSource> sources;
    private final ReturnNetwork returns;
    private final Adjacency passages;
    private final FeedRegions regions;
    private final Function<Branch, OptionalDouble> lengths;
    private final Map<FeedSource, RegionGuards> guards = new HashMap<>();
    private final Map<FeedSource, FeedSearch> searches = new HashMap<>();

    private Upstream(Network network, Harness harness, Function<Wire, OptionalDouble> lengths) {
        this.network = network;
        sources = sources(network, harness);
        returns = ReturnNetwork.of(network);
        passages = Adjacency.of(
                network,
                branch -> branch.kind().isPassage()
                        && !returns.points().contains(branch.from())
                        && !returns.points().contains(branch.to()));
        regions = new FeedRegions(network, returns);
        this.lengths = branch -> branch.element()
                .filter(WireId.class::isInstance)
                .map(id -> lengths.apply(harness.wires().get((WireId) id)))
                .orElse(OptionalDouble.of(0));
        for (FeedSource source : sources) {
            regions.region(source.positive())
                    .ifPresent(region -> guards.put(source, new RegionGuards(regions, source, region)));
            searches.put(source, new FeedSearch(passages, this.lengths, branch -> true, source.positive()));
        }
    }

    /**
     * Follows all feeds.
     *
     * @param network the network in any operating state
     * @param harness the harness it was made from
     * @param lengths length of each wire, m, for example {@link Routes#lengthMetres}; empty when it is not known
     */
    public static Upstream of(Network network, Harness harness, Function<Wire, OptionalDouble> lengths) {
        return new Upstream(network, harness, lengths);
    }

    private static List<FeedSource> sources(Network network, Harness harness) {
        List<FeedSource> sources = new ArrayList<>();
        for (Branch branch : network.branches().values()) {
            Optional<ComponentId> component = FeedRules.component(branch);
            boolean converter = branch.kind() == BranchKind.REGULATED_OUTPUT
                    && component
                            .flatMap(harness.components()::find)
                            .filter(each -> each.device() instanceof Converter)
                            .isPresent();
            if (component.isPresent() && (converter || branch.kind() == BranchKind.SOURCE)) {
                sources.add(new FeedSource(branch.id(), component.get(), branch.to(), converter));
            }
        }
        return Collections.unmodifiableList(sources);
    }

    /** The network whose feeds these are. */
    public Network network() {
        return network;
    }

    /** The sources in the order of their branches. */
    public List<FeedSource> sources() {
        return sources;
    }

    /** Whether the wire belongs to the return network. */
    public boolean isReturn(WireId wire) {
        return returns.branches().containsKey(new BranchId(wire.value()));
    }

    /** How devices protect a wire, for each source that can feed it; empty for a return and for a wire nothing feeds. */
    public List<Guard> guards(WireId wire) {
        return network.branch(wire).map(branch -> guards(branch.from())).orElse(List.of());
    }

    /** How devices protect a point, for each source that can feed it. */
    public List<Guard> guards(PointId point) {
        List<Guard> found = new ArrayList<>();
        regions.region(point)
                .ifPresent(region -> sources.forEach(source -> Optional.ofNullable(guards.get(source))
                        .flatMap(each -> each.at(region))
                        .ifPresent(found::add)));
        return found;
    }

    /** The shortest way along conductors and devices from a source to a point, if there is one. */
    public Optional<FeedWay> way(FeedSource source, PointId point) {
        FeedSearch search = searches.get(source);
        return search != null && search.reaches(point) ? Optional.of(search.way(point)) : Optional.empty();
    }

    /** The branches of a network that feeds reach over one device alone: with it open no source reaches them. */
    public SortedSet<BranchId> onlyBehind(BranchId device) {
        SortedSet<BranchId> behind = new TreeSet<>();
        List<FeedSearch> without = sources.stream()
                .filter(searches::containsKey)
                .map(source ->
                        new FeedSearch(passages, lengths, branch -> !branch.id().equals(device), source.positive()))
                .toList();
        for (Branch branch : network.branches().values()) {
            boolean fed = searches.values().stream().anyMatch(search -> touches(search, branch));
            if (fed && !branch.id().equals(device) && without.stream().noneMatch(search -> touches(search, branch))) {
                behind.add(branch.id());
            }
        }
        return behind;
    }

    private static boolean touches(FeedSearch search, Branch branch) {
        return branch.kind().isPassage()
                ? search.reaches(branch.from()) && search.reaches(branch.to())
                : search.reaches(branch.from());
    }

    /** What each source feeds past no protective device, in the order of the sources. */
    public List<BareFeed> bareFeeds() {
        return sources.stream().map(this::bareFeed).toList();
    }

    private BareFeed bareFeed(FeedSource source) {
        FeedSearch search =
                new FeedSearch(passages, lengths, branch -> !FeedRules.isProtective(branch), source.positive());
        SortedMap<WireId, FeedWay> wires = new TreeMap<>();
        SortedSet<ComponentId> loads = new TreeSet<>();
        SortedMap<ComponentId, FirstDevice> devices = new TreeMap<>();
        for (Branch branch : network.branches().values()) {
            boolean passed = search.reaches(branch.from()) && search.reaches(branch.to());
            if (passed && (branch.kind() == BranchKind.WIRE || branch.kind() == BranchKind.SHIELD)) {
                wires.put(new WireId(branch.id().value()), search.wayOver(branch));
            } else if (FeedRules.isProtective(branch)) {
                search.nearerEnd(branch).ifPresent(end -> FeedRules.component(branch)
                        .ifPresent(device -> devices.put(device, new FirstDevice(device, search.way(end)))));
            } else if (branch.kind().part() == BranchKind.Part.LOAD && draws(branch, search)) {
                FeedRules.component(branch).ifPresent(loads::add);
            }
        }
        return new BareFeed(source, wires, loads, List.copyOf(devices.values()));
    }

    private static boolean draws(Branch load, FeedSearch search) {
        return search.reaches(load.from()) || (load.kind() == BranchKind.RELAY_COIL && search.reaches(load.to()));
    }
}
