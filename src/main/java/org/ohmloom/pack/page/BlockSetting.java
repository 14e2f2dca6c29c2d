package org.ohmloom.pack.page;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ohmloom.draw.Anchor;
import org.ohmloom.draw.Box;
import org.ohmloom.draw.Disc;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Fill;
import org.ohmloom.draw.Ink;
import org.ohmloom.draw.Mark;
import org.ohmloom.draw.Placement;
import org.ohmloom.draw.Point;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.Weight;

/** Puts blocks on pages. */
final class BlockSetting {
    private static final double TITLE_MM = 3.5;
    private static final double HEADING_MM = 2.5;
    private static final double BODY_MM = 2.0;
    private static final double PITCH_MM = BODY_MM * Typesetter.PITCH;
    private static final double HEADING_GAP_MM = 6;
    private static final double INDENT_MM = 3.5;
    private static final double NOTICE_PADDING_MM = 2.5;
    private static final double BESIDE_GAP_MM = 6;
    private static final double BESIDE_LEAST_MM = 50;
    private static final double BETWEEN_TABLES_MM = 2;
    private static final double PICTURE_GAP_MM = 4;
    private static final double PICTURE_BEFORE_MM = 3;

    /** Room for a heading above a picture that fills its page, mm. */
    private static final double PICTURE_ABOVE_MM = 12;

    /** Height of a page that takes everything, mm. */
    private static final double LONGEST_MM = 1e7;

    /** Room a heading needs below itself when nothing tells more, mm. */
    private static final double FOLLOWING_MM = 30;

    /** A table that takes no more of a page than that is not torn apart. */
    private static final double KEPT_SHARE = 0.45;

    /** So many rows of a table stand together below its first head, and above its end. */
    private static final int TOGETHER_ROWS = 3;

    /** Lines kept free for what a new page says before its rows: what they belong to, and their group. */
    private static final int ABOVE_LINES = 7;

    /** Wider lines than this are hard to follow, mm. */
    private static final double WIDEST_LINE_MM = 200;

    private final Typesetter typesetter;
    private final Flow flow;
    private final Map<String, List<Block.Table>> tables;
    private final Map<String, TableSetting> settings;
    private String lastHeading = "";

    /** Puts the blocks of a report; it must know all of them, for tables of one file line up with each other. */
    BlockSetting(Typesetter typesetter, Flow flow, List<Block> blocks) {
        this.typesetter = typesetter;
        this.flow = flow;
        this.tables = new HashMap<>();
        this.settings = new HashMap<>();
        for (Block block : Block.flat(blocks)) {
            if (block instanceof Block.Table table) {
                tables.computeIfAbsent(table.file(), name -> new ArrayList<>()).add(table);
            }
        }
    }

    /** Puts the same blocks elsewhere, to see how much room they take. */
    private BlockSetting(BlockSetting other, Flow trial) {
        this.typesetter = other.typesetter;
        this.flow = trial;
        this.tables = other.tables;
        this.settings = other.settings;
    }

    /** The title of the report, at the top of its first page. */
    void title(String title, String subtitle) {
        List<Mark> marks = new ArrayList<>();
        List<String> lines = typesetter.lines(title, Weight.BOLD, TITLE_MM, flow.widthMm());
        double y = 0;
        for (String line : lines) {
            y += y == 0 ? TITLE_MM : TITLE_MM * Typesetter.PITCH;
            marks.add(typesetter.text(line, 0, y, TITLE_MM, Anchor.START, Weight.BOLD, Ink.TEXT));
        }
        for (String line : typesetter.lines(subtitle, Weight.REGULAR, BODY_MM, flow.widthMm())) {
            y += PITCH_MM + 0.6;
            marks.add(typesetter.text(line, 0, y, BODY_MM, Anchor.START, Weight.REGULAR, Ink.SOFT_TEXT));
        }
        flow.put(new Piece(y + 1.2, marks));
    }

    /**
     * Sets a block.
     *
     * @param following what follows it: a heading stays with that
     */
    void put(Block block, List<Block> following) {
        if (block instanceof Block.Heading heading) {
            heading(heading, following);
        } else if (block instanceof Block.Prose prose) {
            flow.gap(1.5);
            lines(prose.text(), 0).forEach(flow::put);
        } else if (block instanceof Block.Points points) {
            flow.gap(2);
            points.sentences().forEach(this::point);
        } else if (block instanceof Block.Notice notice) {
            flow.gap(3);
            flow.put(notice(notice));
        } else if (block instanceof Block.Facts facts) {
            flow.gap(1.5);
            facts(facts);
        } else if (block instanceof Block.Beside beside) {
            flow.gap(1.5);
            beside(beside);
        } else if (block instanceof Block.Kept kept) {
            kept(kept.blocks());
        } else if (block instanceof Block.Pictures pictures) {
            pictures(pictures.scenes());
        } else if (block instanceof Block.Table table) {
            table(table, noteMm(following));
        }
    }

    /** Height of a note behind a table, mm: the last rows stay with it; 0 where something else follows, or a long text. */
    private double noteMm(List<Block> following) {
        boolean noted = !following.isEmpty()
                && (following.get(0) instanceof Block.Prose || following.get(0) instanceof Block.Points);
        double high = noted ? beforeMm(following.subList(0, 1)) : 0;
        return high <= FOLLOWING_MM ? high : 0;
    }

    /** On a new page when this one has no room for them; what is longer than a page at least begins with half of one. */
    private void kept(List<Block> blocks) {
        Flow trial = new Flow(Extent.at(0, 0, flow.widthMm(), LONGEST_MM));
        new BlockSetting(this, trial).putAll(blocks);
        double height = trial.usedMm();
        flow.need(HEADING_GAP_MM + (height <= flow.pageMm() ? height : flow.pageMm() / 2));
        putAll(blocks);
    }

    private void putAll(List<Block> blocks) {
        for (int k = 0; k < blocks.size(); k++) {
            put(blocks.get(k), blocks.subList(k + 1, blocks.size()));
        }
    }

    private void pictures(List<Scene> scenes) {
        List<Scene> line = new ArrayList<>();
        double used = 0;
        for (Scene drawn : scenes) {
            Scene scene = onOnePage(drawn);
            if (!line.isEmpty() && used + scene.widthMm() > flow.widthMm()) {
                line(line);
                line = new ArrayList<>();
                used = 0;
            }
            line.add(scene);
            used += scene.widthMm() + PICTURE_GAP_MM;
        }
        if (!line.isEmpty()) {
            line(line);
        }
    }

    /** Pictures of one line; at the top of a new page below what they belong to. */
    private void line(List<Scene> line) {
        flow.gap(PICTURE_BEFORE_MM);
        if (flow.isFull(highest(line))) {
            flow.turn();
            continued();
            flow.gap(PICTURE_BEFORE_MM);
        }
        flow.put(line, PICTURE_GAP_MM);
    }

    private static double highest(List<Scene> line) {
        return line.stream().mapToDouble(Scene::heightMm).max().orElse(0);
    }

    /** A picture, made smaller when it is higher than a page. */
    private Scene onOnePage(Scene scene) {
        double most = flow.pageMm() - PICTURE_ABOVE_MM;
        if (scene.heightMm() <= most) {
            return scene;
        }
        double scale = most / scene.heightMm();
        Placement smaller = new Placement(scale, 0, 0);
        return new Scene(
                scene.widthMm() * scale,
                most,
                scene.items().stream().map(item -> item.placed(smaller)).toList());
    }

    /** Room that what follows a heading needs on its page, mm: all before its table or pictures, and how these begin. */
    private double followingMm(List<Block> following) {
        List<Block> before = new ArrayList<>();
        double least = FOLLOWING_MM;
        for (Block block : following) {
            if (block instanceof Block.Table table) {
                least = beforeMm(before) + beginningMm(table);
                break;
            } else if (block instanceof Block.Pictures pictures) {
                least = beforeMm(before) + beginningMm(pictures.scenes());
                break;
            } else if (block instanceof Block.Heading || block instanceof Block.Kept) {
                break;
            }
            before.add(block);
        }
        return least < flow.pageMm() * 0.95 - HEADING_MM ? least : FOLLOWING_MM;
    }

    private double beforeMm(List<Block> blocks) {
        Flow trial = new Flow(Extent.at(0, 0, flow.widthMm(), LONGEST_MM));
        new BlockSetting(this, trial).putAll(blocks);
        return trial.usedMm() + PICTURE_BEFORE_MM;
    }

    /** Of pictures as many as show what they are: a bar to measure by does not stay alone. */
    private static double beginningMm(List<Scene> scenes) {
        double high = 0;
        for (Scene scene : scenes) {
            high += scene.heightMm() + PICTURE_BEFORE_MM;
            if (high > FOLLOWING_MM / 2) {
                break;
            }
        }
        return high;
    }

    /** A table that is kept together whole, any other its head and first rows, mm. */
    private double beginningMm(Block.Table table) {
        if (table.rows().isEmpty()) {
            return lines(table.none(), 0).size() * PITCH_MM;
        }
        TableSetting setting = setting(table);
        List<List<Piece>> rows = pieces(table, setting);
        double whole = setting.head().heightMm() + heightMm(rows) / setting.across();
        return whole <= keptMm()
                ? whole
                : setting.head().heightMm() + heightMm(rows.subList(0, Math.min(TOGETHER_ROWS, rows.size())));
    }

    private double keptMm() {
        return KEPT_SHARE * flow.pageMm();
    }

    private static double heightMm(List<List<Piece>> rows) {
        return rows.stream().flatMap(List::stream).mapToDouble(Piece::heightMm).sum();
    }

    private void heading(Block.Heading heading, List<Block> following) {
        flow.gap(HEADING_GAP_MM);
        List<Mark> marks = new ArrayList<>();
        double y = 0;
        for (String line : typesetter.lines(heading.text(), Weight.BOLD, HEADING_MM, flow.widthMm())) {
            y += y == 0 ? HEADING_MM : HEADING_MM * Typesetter.PITCH;
            marks.add(typesetter.text(line, 0, y, HEADING_MM, Anchor.START, Weight.BOLD, Ink.TEXT));
        }
        Extent extent = Extent.at(0, 0, flow.widthMm(), y + 1);
        List<Mention> mentions = heading.element()
                .map(id -> List.of(new Mention(0, extent, id, true)))
                .orElse(List.of());
        Piece piece = new Piece(y + 1, marks, mentions);
        flow.need(piece.heightMm() + followingMm(following));
        lastHeading = heading.text();
        flow.bookmark(lastHeading);
        flow.put(piece);
    }

    private List<Piece> lines(String text, double indentMm) {
        double room = Math.min(WIDEST_LINE_MM, flow.widthMm()) - indentMm;
        return typesetter.lines(text, Weight.REGULAR, BODY_MM, room).stream()
                .map(line -> new Piece(
                        PITCH_MM,
                        List.of(typesetter.text(
                                line, indentMm, BODY_MM, BODY_MM, Anchor.START, Weight.REGULAR, Ink.TEXT))))
                .toList();
    }

    private void point(String sentence) {
        List<Piece> pieces = lines(sentence, INDENT_MM);
        Piece first = pieces.get(0);
        List<Mark> marks = new ArrayList<>(first.marks());
        marks.add(new Disc(new Point(1.2, BODY_MM / 2), 0.45, Fill.of(Ink.TEXT)));
        flow.put(new Piece(first.heightMm(), marks));
        pieces.stream().skip(1).forEach(flow::put);
    }

    private Piece notice(Block.Notice notice) {
        List<Mark> marks = new ArrayList<>();
        double y = NOTICE_PADDING_MM + BODY_MM;
        double left = NOTICE_PADDING_MM + 1;
        marks.add(typesetter.text(notice.title(), left, y, BODY_MM, Anchor.START, Weight.BOLD, Ink.CAUTION));
        double room = flow.widthMm() - 2 * left;
        for (String sentence : notice.sentences()) {
            for (String line : typesetter.lines(sentence, Weight.REGULAR, BODY_MM, room)) {
                y += PITCH_MM;
                marks.add(typesetter.text(line, left, y, BODY_MM, Anchor.START, Weight.REGULAR, Ink.TEXT));
            }
        }
        double height = y + NOTICE_PADDING_MM;
        Extent frame = Extent.at(0.2, 0, flow.widthMm() - 0.4, height);
        marks.add(0, new Box(frame, 0, Fill.edge(Ink.CAUTION, 0.35)));
        return new Piece(height, marks);
    }

    private void facts(Block.Facts facts) {
        new FactSetting(typesetter, flow.widthMm()).pieces(facts.facts()).forEach(flow::put);
    }

    private void beside(Block.Beside beside) {
        Scene picture = onOnePage(beside.picture());
        double left = Math.max(BESIDE_LEAST_MM, picture.widthMm()) + BESIDE_GAP_MM;
        Piece whole = pieceBeside(beside, beside.tables(), left, picture.heightMm());
        if (!beside.tables().isEmpty()) {
            Piece other = pieceFactsBelow(beside, left, picture.heightMm());
            whole = other.heightMm() < whole.heightMm() ? other : whole;
        }
        if (whole.heightMm() <= flow.pageMm()) {
            flow.put(picture, whole);
        } else {
            flow.put(picture, pieceBeside(beside, List.of(), left, picture.heightMm()));
            beside.tables().forEach(table -> table(table, 0));
        }
    }

    private static void add(Piece piece, double xMm, double yMm, List<Mark> marks, List<Mention> mentions) {
        Placement place = Placement.moved(xMm, yMm);
        piece.marks().forEach(mark -> marks.add(mark.placed(place)));
        for (Mention mention : piece.mentions()) {
            mentions.add(new Mention(0, mention.extent().moved(xMm, yMm), mention.name(), mention.home()));
        }
    }

    /** What stands beside a picture, at least as high as that. */
    private Piece pieceBeside(Block.Beside beside, List<Block.Table> shown, double leftMm, double pictureMm) {
        List<Mark> marks = new ArrayList<>();
        List<Mention> mentions = new ArrayList<>();
        double room = flow.widthMm() - leftMm;
        double y = facts(beside, leftMm, 0, room, marks, mentions);
        double below = tablesBeside(shown, leftMm, y, marks, mentions);
        return new Piece(Math.max(pictureMm, below), marks, mentions);
    }

    /** The values below the picture, so that long tables beside it begin at its top. */
    private Piece pieceFactsBelow(Block.Beside beside, double leftMm, double pictureMm) {
        List<Mark> marks = new ArrayList<>();
        List<Mention> mentions = new ArrayList<>();
        double top = pictureMm + BETWEEN_TABLES_MM;
        double facts = facts(beside, 0, top, leftMm - BESIDE_GAP_MM, marks, mentions);
        return new Piece(Math.max(facts, tablesBeside(beside.tables(), leftMm, 0, marks, mentions)), marks, mentions);
    }

    /** Sets values from a place; gives where they end, mm. */
    private double facts(
            Block.Beside beside, double leftMm, double topMm, double roomMm, List<Mark> marks, List<Mention> mentions) {
        double y = topMm;
        for (Piece piece : new FactSetting(typesetter, roomMm).pieces(beside.facts())) {
            add(piece, leftMm, y, marks, mentions);
            y += piece.heightMm();
        }
        return y;
    }

    /** Sets tables side by side where they fit; gives where they end, mm. */
    private double tablesBeside(
            List<Block.Table> shown, double leftMm, double topMm, List<Mark> marks, List<Mention> mentions) {
        double room = flow.widthMm() - leftMm;
        double x = 0;
        double y = topMm;
        double bottom = topMm;
        for (Block.Table table : shown) {
            if (table.rows().isEmpty()) {
                continue;
            }
            TableSetting setting = settings.computeIfAbsent(
                    table.file() + " beside", name -> new TableSetting(typesetter, tables.get(table.file()), room));
            List<List<Piece>> rows = pieces(table, setting);
            BesideTable parted = new BesideTable(setting, flow, this::continued);
            Piece piece = parted.whole(table, rows);
            double wide = parted.widthMm(rows);
            if (x > 0 && x + wide > room) {
                x = 0;
                y = bottom + BETWEEN_TABLES_MM;
            }
            add(piece, leftMm + x, y, marks, mentions);
            x += wide + BESIDE_GAP_MM;
            bottom = Math.max(bottom, y + piece.heightMm());
        }
        return bottom;
    }

    /** Says on a new page what the table on it belongs to. */
    private void continued() {
        if (!lastHeading.isEmpty()) {
            String text = lastHeading + " (continued)";
            for (String line : typesetter.lines(text, Weight.REGULAR, BODY_MM, flow.widthMm())) {
                flow.put(new Piece(
                        PITCH_MM,
                        List.of(typesetter.text(
                                line, 0, BODY_MM, BODY_MM, Anchor.START, Weight.REGULAR, Ink.SOFT_TEXT))));
            }
        }
    }

    private void table(Block.Table table, double noteMm) {
        flow.gap(2);
        if (table.rows().isEmpty()) {
            lines(table.none(), 0).forEach(flow::put);
            return;
        }
        TableSetting setting = setting(table);
        List<List<Piece>> rows = pieces(table, setting);
        double whole = setting.head().heightMm() + heightMm(rows) / setting.across();
        if (whole <= keptMm() && flow.isFull(whole + noteMm)) {
            flow.turn();
            continued();
        }
        if (setting.across() > 1) {
            new BesideTable(setting, flow, this::continued).put(table, rows);
            return;
        }
        Optional<Row> group = Optional.empty();
        for (int k = 0; k < rows.size(); k++) {
            boolean heads = table.rows().get(k).kind() == Row.Kind.GROUP;
            double needed = neededMm(rows, k, heads) + (k == Math.max(0, rows.size() - TOGETHER_ROWS) ? noteMm : 0);
            for (Piece piece : rows.get(k)) {
                double together = Math.max(needed, piece.heightMm());
                needed = 0;
                if (k == 0 && piece == rows.get(0).get(0)) {
                    flow.need(setting.head().heightMm() + together);
                    flow.put(setting.head());
                } else if (flow.isFull(together)) {
                    flow.turn();
                    continued();
                    flow.put(setting.head());
                    if (!heads && group.isPresent()) {
                        continued(group.get(), setting);
                    }
                }
                flow.put(piece);
            }
            if (heads) {
                group = Optional.of(table.rows().get(k));
            }
        }
    }

    /** Says on a new page to which group the rows below belong. */
    private void continued(Row group, TableSetting setting) {
        Row again = Row.group(group.cells().get(0).text() + " (continued)");
        setting.row(again, false, flow.pageMm()).forEach(flow::put);
    }

    /** Room for a row and for those that stay with it, mm: behind a group's name its first, at either end of the table a few. */
    private double neededMm(List<List<Piece>> rows, int k, boolean heads) {
        boolean end = k == 0 || k == rows.size() - TOGETHER_ROWS;
        int count = end ? TOGETHER_ROWS : heads ? 2 : 1;
        double all = heightMm(rows.subList(k, Math.min(rows.size(), k + count)));
        return all < flow.pageMm() / 2 ? all : rows.get(k).get(0).heightMm();
    }

    private TableSetting setting(Block.Table table) {
        return settings.computeIfAbsent(
                table.file(), name -> new TableSetting(typesetter, tables.get(name), flow.widthMm()));
    }

    /** The rows as pieces, every other with a light ground. */
    private List<List<Piece>> pieces(Block.Table table, TableSetting setting) {
        double room = flow.pageMm() - setting.head().heightMm() - ABOVE_LINES * PITCH_MM;
        List<List<Piece>> all = new ArrayList<>();
        boolean banded = false;
        for (Row row : table.rows()) {
            banded = row.kind() != Row.Kind.GROUP && !banded;
            all.add(setting.row(row, !banded, room));
        }
        return all;
    }
}
