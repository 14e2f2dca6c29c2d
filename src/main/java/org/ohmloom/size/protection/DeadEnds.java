package org.ohmloom.size.protection;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.ohmloom.graph.Branch;
import org.ohmloom.graph.PointId;

/** Takes away, again and again, what ends at a point where nothing else goes on: it can carry no steady current. */
final class DeadEnds {

    private final Map<PointId, Integer> numberOf = new HashMap<>();
    private final int[] from;
    private final int[] to;

    /** First place of each point in {@link #touching}. */
    private final int[] first;

    private final int[] touching;

    DeadEnds(List<Branch> branches) {
        from = new int[branches.size()];
        to = new int[branches.size()];
        for (int branch = 0; branch < from.length; branch++) {
            from[branch] = number(branches.get(branch).from());
            to[branch] = number(branches.get(branch).to());
        }
        first = new int[numberOf.size() + 1];
        for (int branch = 0; branch < from.length; branch++) {
            first[from[branch] + 1]++;
            first[to[branch] + 1]++;
        }
        for (int point = 0; point < numberOf.size(); point++) {
            first[point + 1] += first[point];
        }
        touching = new int[2 * from.length];
        int[] next = first.clone();
        for (int branch = 0; branch < from.length; branch++) {
            touching[next[from[branch]]++] = branch;
            touching[next[to[branch]]++] = branch;
        }
    }

    private int number(PointId point) {
        return numberOf.computeIfAbsent(point, each -> numberOf.size());
    }

    /**
     * Prunes the network with a fault as one more branch.
     *
     * @param carries for each branch whether it conducts; afterwards whether it can carry current
     * @param at      one end of the fault
     * @param against its other end
     * @return whether the fault itself can carry current
     */
    boolean prune(boolean[] carries, PointId at, PointId against) {
        if (!numberOf.containsKey(at) || !numberOf.containsKey(against)) {
            return false;
        }
        int[] fault = {numberOf.get(at), numberOf.get(against)};
        int[] count = new int[numberOf.size()];
        count[fault[0]]++;
        count[fault[1]]++;
        for (int branch = 0; branch < carries.length; branch++) {
            if (carries[branch]) {
                count[from[branch]]++;
                count[to[branch]]++;
            }
        }
        int[] ends = new int[count.length];
        int found = 0;
        for (int point = 0; point < count.length; point++) {
            if (count[point] == 1) {
                ends[found++] = point;
            }
        }
        for (int next = 0; next < found; next++) {
            int end = ends[next];
            if (end == fault[0] && count[end] == 1 || end == fault[1] && count[end] == 1) {
                if (isLast(carries, end)) {
                    return false;
                }
            }
            for (int place = first[end]; place < first[end + 1]; place++) {
                int branch = touching[place];
                if (carries[branch]) {
                    carries[branch] = false;
                    count[end]--;
                    int other = from[branch] == end ? to[branch] : from[branch];
                    if (--count[other] == 1) {
                        ends[found++] = other;
                    }
                }
            }
        }
        return true;
    }

    /** Whether nothing but the fault is left at a point. */
    private boolean isLast(boolean[] carries, int point) {
        for (int place = first[point]; place < first[point + 1]; place++) {
            if (carries[touching[place]]) {
                return false;
            }
        }
        return true;
    }
}
