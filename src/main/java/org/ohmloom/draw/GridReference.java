package org.ohmloom.draw;

/** Names the field of a sheet's frame in which a point lies, as the frame's grid reference does. */
final class GridReference {

    private static final double FIELD_MM = 50;
    private static final String LETTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ";

    private GridReference() {}

    /** The field of a point, "C4"; empty where the frame has none. */
    static String of(Paper paper, Point at) {
        if (paper.zonesAcross() == 0 || paper.zonesDown() == 0) {
            return "";
        }
        Extent space = paper.drawingSpace();
        boolean asme = paper.isAsme();
        int down = asme
                ? share(at.yMm(), space.topMm(), space.bottomMm(), paper.zonesDown())
                : field(at.yMm(), paper.heightMm() / 2, paper.zonesDown());
        int across = asme
                ? share(at.xMm(), space.leftMm(), space.rightMm(), paper.zonesAcross())
                : field(at.xMm(), paper.widthMm() / 2, paper.zonesAcross());
        return asme
                ? LETTERS.charAt(paper.zonesDown() - 1 - down) + String.valueOf(paper.zonesAcross() - across)
                : LETTERS.charAt(down) + String.valueOf(across + 1);
    }

    /** Fields of one length to both sides of the middle; the rest belongs to the outer ones. */
    private static int field(double at, double middle, int count) {
        return kept(count / 2 + (int) Math.floor((at - middle) / FIELD_MM), count);
    }

    /** Fields that divide a length evenly. */
    private static int share(double at, double from, double to, int count) {
        return kept((int) Math.floor((at - from) / (to - from) * count), count);
    }

    private static int kept(int number, int count) {
        return Math.max(0, Math.min(count - 1, number));
    }
}
