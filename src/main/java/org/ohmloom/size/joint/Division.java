package org.ohmloom.size.joint;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A problem divided into parts that share no budget: each can be chosen by itself. */
final class Division {

    private Division() {}

    /**
     * A piece of a problem.
     *
     * @param problem the piece
     * @param parts   its parts by their place in the whole
     */
    record Piece(JointProblem problem, int[] parts) {}

    /** The pieces that have budgets. Parts without a budget are in none. */
    static List<Piece> of(JointProblem problem) {
        int[] root = new int[problem.parts().size()];
        Arrays.setAll(root, part -> part);
        for (Budget budget : problem.budgets()) {
            int first = root(root, budget.shares().get(0).part());
            for (Share share : budget.shares()) {
                root[root(root, share.part())] = first;
            }
        }
        List<List<Integer>> members = new ArrayList<>();
        List<List<Budget>> budgets = new ArrayList<>();
        int[] pieceOf = new int[root.length];
        int[] place = new int[root.length];
        Arrays.fill(pieceOf, -1);
        for (int part = 0; part < root.length; part++) {
            if (problem.spentBy(part).isEmpty()) {
                continue;
            }
            int top = root(root, part);
            if (pieceOf[top] < 0) {
                pieceOf[top] = members.size();
                members.add(new ArrayList<>());
                budgets.add(new ArrayList<>());
            }
            place[part] = members.get(pieceOf[top]).size();
            members.get(pieceOf[top]).add(part);
        }
        for (Budget budget : problem.budgets()) {
            List<Share> shares = budget.shares().stream()
                    .map(share -> new Share(place[share.part()], share.curve(), share.amps()))
                    .toList();
            budgets.get(pieceOf[root(root, budget.shares().get(0).part())])
                    .add(new Budget(budget.id(), budget.volts(), shares));
        }
        List<Piece> pieces = new ArrayList<>();
        for (int piece = 0; piece < members.size(); piece++) {
            List<Part> parts =
                    members.get(piece).stream().map(problem.parts()::get).toList();
            pieces.add(new Piece(
                    JointProblem.of(parts, budgets.get(piece)),
                    members.get(piece).stream().mapToInt(Integer::intValue).toArray()));
        }
        return pieces;
    }

    private static int root(int[] root, int part) {
        int at = part;
        while (root[at] != at) {
            root[at] = root[root[at]];
            at = root[at];
        }
        return at;
    }
}
