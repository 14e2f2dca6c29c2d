package org.ohmloom.solve;

/** Sets of numbered things that grow together: union-find with path halving, near to constant time. */
final class Joining {

    private final int[] parent;

    /** Things 0 to count - 1, each alone. */
    Joining(int count) {
        parent = new int[count];
        for (int thing = 0; thing < count; thing++) {
            parent[thing] = thing;
        }
    }

    /** Joins two sets; false when they were one already. */
    boolean join(int a, int b) {
        int rootA = root(a);
        int rootB = root(b);
        parent[Math.max(rootA, rootB)] = Math.min(rootA, rootB);
        return rootA != rootB;
    }

    /** The least member of the set a thing is in. */
    int root(int thing) {
        int at = thing;
        while (parent[at] != at) {
            parent[at] = parent[parent[at]];
            at = parent[at];
        }
        return at;
    }
}
