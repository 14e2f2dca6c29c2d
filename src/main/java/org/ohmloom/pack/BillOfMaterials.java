package org.ohmloom.pack;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.model.Assembly;
import org.ohmloom.model.AssemblyId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Part;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.WireId;
import org.ohmloom.pack.label.LabelText;
import org.ohmloom.pack.label.LabelTexts;
import org.ohmloom.pack.page.Block;
import org.ohmloom.pack.page.Cell;
import org.ohmloom.pack.page.Column;
import org.ohmloom.pack.page.Report;
import org.ohmloom.pack.page.Row;
import org.ohmloom.tables.CitedValue;
import org.ohmloom.tables.DesignBasis;
import org.ohmloom.units.Formats;
import org.ohmloom.units.Gauge;
import org.ohmloom.units.GaugeSystem;

/** What to buy for the harness, by assembly. Parts already in the vehicle are left out. */
final class BillOfMaterials {
    private static final List<Column> COLUMNS = List.of(
            Column.count("Item", 0),
            Column.fileOnly("Assembly"),
            Column.fileOnly("Group"),
            Column.count("Quantity", 0),
            Column.count("To buy", 0),
            Column.code("Unit"),
            Column.code("Part number").home(),
            Column.words("Maker"),
            Column.words("Description"),
            Column.colour("Colour"),
            Column.words("Used for"),
            Column.words("Alternates"),
            Column.words("Customer supplies"));

    private static final String NO_CURRENCY = "no currency entered";

    private static final String REMARK =
            "To buy: pieces as counted; lengths times 1 + waste, rounded up to 0.1 m. Parts already in the vehicle are"
                    + " left out. \"Not chosen\": no part number has been entered. Prices of supplied parts are not"
                    + " summed.";

    private final Analysis analysis;
    private final Harness harness;
    private final Wording wording;
    private final Supplier<List<LabelText>> labels;

    BillOfMaterials(Analysis analysis) {
        this(analysis, () -> LabelTexts.of(analysis));
    }

    /** The bill with the texts of labels that may be known already. */
    BillOfMaterials(Analysis analysis, Supplier<List<LabelText>> labels) {
        this.labels = labels;
        this.analysis = analysis;
        this.harness = analysis.harness();
        this.wording = new Wording(harness);
    }

    /** The parts of the harness, counted. */
    Map<Material, MaterialCount> materials() {
        return parts().all();
    }

    private Materials parts() {
        Map<String, List<Wire>> wiresByEnd = new TreeMap<>();
        for (Wire wire : harness.wires().all()) {
            for (WireEnd end : wire.ends()) {
                wiresByEnd
                        .computeIfAbsent(end.text(), text -> new ArrayList<>())
                        .add(wire);
            }
        }
        Materials materials = new Materials();
        new ConnectorMaterials(harness, wiresByEnd, materials).collect();
        new DeviceMaterials(harness, materials).collect();
        new WireMaterials(analysis, materials).collect();
        return materials;
    }

    /** The parts of the harness, and the labels, supports, ties and tools it takes to make it. */
    Map<Material, MaterialCount> everything(SceneFonts fonts) {
        Materials materials = parts();
        new ShopMaterials(analysis, fonts, labels, materials).collect();
        return materials.all();
    }

    Report report(SceneFonts fonts) {
        Map<Material, MaterialCount> materials = everything(fonts);
        List<Block> blocks = new ArrayList<>(FirstPage.blocks(harness));
        List<Line> lines = lines(materials);
        blocks.add(totals(lines));
        blocks.add(new Block.Points(rests(lines)));
        for (Optional<AssemblyId> assembly : assemblies(materials)) {
            if (!harness.assemblies().isEmpty()) {
                blocks.add(new Block.Heading(heading(assembly)));
            }
            List<Row> rows = new ArrayList<>();
            MaterialKind kind = null;
            for (Line line : lines) {
                if (line.material().assembly().equals(assembly)) {
                    if (line.material().kind() != kind) {
                        kind = line.material().kind();
                        rows.add(Row.group(kind.words()));
                    }
                    rows.add(row(line));
                }
            }
            blocks.add(new Block.Table("", COLUMNS, rows, ""));
        }
        if (!materials.isEmpty()) {
            blocks.add(new Block.Heading("Purchasing, all assemblies together"));
            blocks.add(new Block.Table("purchasing", purchasing(), bought(lines), ""));
        }
        if (materials.isEmpty()) {
            blocks.add(new Block.Table("", COLUMNS, List.of(), "Nothing is to be bought."));
        }
        return new Report(blocks, REMARK);
    }

    /**
     * A line of the bill.
     *
     * @param item     its number, from 1
     * @param purchase what buying it takes
     */
    private record Line(int item, Material material, MaterialCount count, Purchase purchase) {}

    private static List<Optional<AssemblyId>> assemblies(Map<Material, MaterialCount> materials) {
        return materials.keySet().stream()
                .map(Material::assembly)
                .distinct()
                .sorted(Comparator.comparing((Optional<AssemblyId> assembly) -> assembly.isEmpty()))
                .toList();
    }

    /** The lines numbered through, assembly after assembly. */
    private List<Line> lines(Map<Material, MaterialCount> materials) {
        List<Line> lines = new ArrayList<>();
        for (Optional<AssemblyId> assembly : assemblies(materials)) {
            materials.forEach((material, count) -> {
                if (material.assembly().equals(assembly)) {
                    lines.add(new Line(lines.size() + 1, material, count, purchase(material, count)));
                }
            });
        }
        return lines;
    }

    /** What is bought together: the lines of the same thing, whatever assembly they belong to. */
    private static List<List<Line>> orders(List<Line> lines) {
        Map<Material, List<Line>> orders = new TreeMap<>(Materials.ORDER);
        for (Line line : lines) {
            orders.computeIfAbsent(line.material().inNoAssembly(), key -> new ArrayList<>())
                    .add(line);
        }
        return List.copyOf(orders.values());
    }

    private List<Row> bought(List<Line> lines) {
        List<Row> rows = new ArrayList<>();
        BigDecimal price = BigDecimal.ZERO;
        MaterialKind kind = null;
        for (List<Line> order : orders(lines)) {
            MaterialKind own = order.get(0).material().kind();
            if (own != kind) {
                kind = own;
                rows.add(Row.group(own.words()));
            }
            rows.add(order(order));
            price = price.add(price(order).orElse(BigDecimal.ZERO));
        }
        if (price.signum() > 0) {
            rows.add(sum(price));
        }
        return rows;
    }

    /** Price of lines together; empty when none has one. */
    private static Optional<BigDecimal> price(List<Line> order) {
        return order.stream().flatMap(line -> line.purchase().total().stream()).reduce(BigDecimal::add);
    }

    /** Of each thing where it is bought and what it costs, with room for what the shop is told. */
    private List<Column> purchasing() {
        String money = harness.rules().fabricationRules().currency().orElse("");
        List<Column> columns = new ArrayList<>(List.of(
                Column.code("Items"),
                Column.code("Part number").mentioning(),
                Column.words("Description"),
                Column.colour("Colour"),
                Column.count("To buy", 0),
                Column.code("Unit")));
        shares().forEach(share ->
                columns.add(Column.count(share.map(this::number).orElse("For all"), 0)));
        columns.addAll(List.of(
                Column.words("Supplier"),
                Column.code("Order number"),
                new Column("Unit price", money, Column.Kind.NUMBER, 2, true),
                new Column("Price", money, Column.Kind.NUMBER, 2, true),
                Column.words("Remark").inFileOnly(),
                Column.blank("Minimum order"),
                Column.blank("Lead time")));
        return columns;
    }

    /** The assemblies whose shares of what is bought are told, then what is for all of them; none without assemblies. */
    private List<Optional<AssemblyId>> shares() {
        if (harness.assemblies().isEmpty()) {
            return List.of();
        }
        List<Optional<AssemblyId>> shares = new ArrayList<>();
        harness.assemblies().all().forEach(each -> shares.add(Optional.of(each.id())));
        shares.add(Optional.empty());
        return shares;
    }

    private String number(AssemblyId id) {
        return harness.assemblies().get(id).number();
    }

    private Row sum(BigDecimal price) {
        List<Column> columns = purchasing();
        Cell[] cells = new Cell[columns.size()];
        Arrays.fill(cells, Cell.empty());
        cells[2] = Cell.text("Sum of the prices");
        for (int k = 0; k < cells.length; k++) {
            if (columns.get(k).head().equals("Price")) {
                cells[k] = Cell.number(price.doubleValue());
            }
        }
        return Row.total(cells);
    }

    private Row order(List<Line> order) {
        Line line = order.get(0);
        Material material = line.material();
        MaterialCount count = line.count();
        Optional<Part> part = material.part().map(harness.parts()::get);
        boolean wire = material.kind() == MaterialKind.WIRE;
        Purchase purchase = line.purchase();
        double quantity =
                order.stream().mapToDouble(each -> each.purchase().quantity()).sum();
        List<Cell> cells = new ArrayList<>(List.of(
                Cell.text(
                        order.stream().map(each -> String.valueOf(each.item())).collect(Collectors.joining(", "))),
                wire ? Cell.text("by description").toned(Cell.Tone.SOFT) : Wording.part(material.part()),
                Cell.text(description(material, part, count)),
                material.colour().map(Cell::colour).orElse(wire ? Cell.missing(Wording.NOT_CHOSEN) : Cell.empty()),
                quantity(material, count, quantity, 1),
                Cell.text(material.unit())));
        shares().forEach(share -> cells.add(share(order, share)));
        cells.addAll(List.of(
                purchase.customerSupplied() ? Cell.text("customer") : Cell.text(part.flatMap(Part::supplier)),
                Cell.text(part.flatMap(Part::orderNumber)),
                Cell.number(purchase.unitPrice()),
                price(order).map(total -> Cell.number(total.doubleValue())).orElseGet(Cell::empty),
                purchase.customerSupplied()
                        ? Cell.text("customer supplies")
                        : purchase.unitPrice().isEmpty() ? Cell.text("no price").toned(Cell.Tone.SOFT) : Cell.empty(),
                Cell.empty(),
                Cell.empty()));
        return Row.of(cells.toArray(Cell[]::new));
    }

    /** How much of what is bought goes into one assembly. */
    private static Cell share(List<Line> order, Optional<AssemblyId> assembly) {
        return order.stream()
                .filter(line -> line.material().assembly().equals(assembly))
                .findFirst()
                .map(line ->
                        quantity(line.material(), line.count(), line.purchase().quantity(), 1))
                .orElseGet(Cell::empty);
    }

    private CitedValue waste() {
        return analysis.evidence().tables().fabrication().value("waste");
    }

    private double wasteFraction() {
        return harness.rules().fabricationRules().wasteFraction().orElse(waste().value());
    }

    private Purchase purchase(Material material, MaterialCount count) {
        Optional<Gauge> gauge = material.kind() == MaterialKind.WIRE
                ? harness.wires().find(new WireId(count.designators().get(0))).flatMap(Wire::gauge)
                : Optional.empty();
        return Purchase.of(material, gauge, count.quantity(), wasteFraction(), harness);
    }

    private List<String> rests(List<Line> lines) {
        List<String> points = new ArrayList<>();
        points.add("Waste of wire, cable, covering and sleeve " + Formats.percent(wasteFraction()) + ": "
                + (harness.rules().fabricationRules().wasteFraction().isPresent()
                        ? "design rules of the harness"
                        : waste().citation().text())
                + example(lines));
        points.add("Coverings hold what winding and shrinking take; supports and ties are those of the segments'"
                + " plans; labels those of the document of labels.");
        return points;
    }

    /** The formula with the numbers of the first line bought by length. */
    private String example(List<Line> lines) {
        return lines.stream()
                .filter(line -> line.material().unit().equals(Material.METRE)
                        && line.count().quantity() > 0)
                .findFirst()
                .map(line -> String.format(
                        Locale.ROOT,
                        ". To buy = used x (1 + waste), as %.2f m x %s = %.3f m, so %.1f m",
                        line.count().quantity(),
                        Formats.number(1 + wasteFraction()),
                        line.count().quantity() * (1 + wasteFraction()),
                        line.purchase().quantity()))
                .orElse("");
    }

    private String heading(Optional<AssemblyId> assembly) {
        return assembly.map(harness.assemblies()::get)
                .map((Assembly each) ->
                        "Assembly " + each.number() + "  " + each.name() + ", revision " + each.revision())
                .orElse("In no assembly: for the whole harness");
    }

    private Block totals(List<Line> lines) {
        double pieces = 0;
        double metres = 0;
        double massKg = 0;
        int withoutMass = 0;
        int missing = 0;
        for (Line line : lines) {
            Material material = line.material();
            double quantity = line.count().quantity();
            if (material.kind() == MaterialKind.WIRE) {
                metres += quantity;
                continue;
            }
            missing += material.part().isEmpty() ? 1 : 0;
            if (material.unit().equals(Material.PIECE)) {
                pieces += quantity;
                Optional<Part> part = material.part().map(harness.parts()::get);
                massKg += part.map(each -> each.massKg().orElse(0)).orElse(0.0) * quantity;
                withoutMass += part.filter(each -> each.massKg().isPresent()).isPresent() ? 0 : 1;
            }
        }
        List<Block.Fact> facts = new ArrayList<>();
        facts.add(new Block.Fact("Lines", String.valueOf(lines.size())));
        facts.add(new Block.Fact("Pieces", String.valueOf(Math.round(pieces))));
        facts.add(new Block.Fact("Single wire", Formats.metres(metres)));
        facts.add(new Block.Fact(
                "Copper in the wires", Formats.kilograms(analysis.totals().copperKg())));
        facts.add(new Block.Fact(
                "Mass of the pieces",
                Formats.kilograms(massKg) + (withoutMass > 0 ? ", " + withoutMass + " lines without a mass" : "")));
        facts.add(new Block.Fact("Lines without a part number, wire apart", String.valueOf(missing)));
        money(orders(lines), facts);
        facts.add(new Block.Fact("Conductor unless a wire names its own", conductor()));
        return new Block.Facts(facts);
    }

    /** The grand total, and what is not in it. */
    private void money(List<List<Line>> orders, List<Block.Fact> facts) {
        BigDecimal total = BigDecimal.ZERO;
        int without = 0;
        int supplied = 0;
        for (List<Line> order : orders) {
            Purchase purchase = order.get(0).purchase();
            total = total.add(price(order).orElse(BigDecimal.ZERO));
            supplied += purchase.customerSupplied() ? 1 : 0;
            without += purchase.unitPrice().isEmpty() && !purchase.customerSupplied() ? 1 : 0;
        }
        String currency = harness.rules().fabricationRules().currency().orElse(NO_CURRENCY);
        if (total.signum() > 0) {
            facts.add(new Block.Fact("Price of all purchases that have one", total.toPlainString() + " " + currency));
        }
        facts.add(new Block.Fact("Purchases without a price", without + " of " + orders.size()));
        facts.add(new Block.Fact("Purchases the customer supplies", String.valueOf(supplied)));
    }

    private String conductor() {
        DesignBasis basis = analysis.evidence().basis();
        boolean awg = harness.rules().gaugeSystem() == GaugeSystem.AWG;
        return analysis.evidence()
                .tables()
                .family(awg ? basis.defaultAwgFamily() : basis.defaultMetricFamily())
                .title();
    }

    private Row row(Line line) {
        Material material = line.material();
        MaterialCount count = line.count();
        Optional<Part> part = material.part().map(harness.parts()::get);
        boolean wire = material.kind() == MaterialKind.WIRE;
        Purchase purchase = line.purchase();
        return Row.of(
                Cell.number(line.item()),
                Cell.text(wording.assembly(material.assembly())),
                Cell.text(material.kind().words()),
                quantity(material, count, count.quantity(), 2),
                quantity(material, count, purchase.quantity(), 1),
                Cell.text(material.unit()),
                wire ? Cell.text("by description").toned(Cell.Tone.SOFT) : Wording.part(material.part()),
                Cell.text(part.map(Part::maker)),
                Cell.text(description(material, part, count)),
                material.colour().map(Cell::colour).orElse(wire ? Cell.missing(Wording.NOT_CHOSEN) : Cell.empty()),
                Cell.text(String.join(", ", grouped(count.designators()))),
                Cell.text(part.map(each -> String.join(", ", each.alternates())).orElse("")),
                Cell.text(purchase.customerSupplied() ? "yes" : ""));
    }

    private static Cell quantity(Material material, MaterialCount count, double quantity, int decimals) {
        if (quantity == 0 && !count.withoutLength().isEmpty()) {
            return Cell.missing("unknown");
        }
        return material.unit().equals(Material.PIECE)
                ? Cell.number(quantity)
                : Cell.number(quantity, String.format(Locale.ROOT, "%." + decimals + "f", quantity));
    }

    private static String description(Material material, Optional<Part> part, MaterialCount count) {
        String own = material.description();
        String text = part.map(each -> own.isEmpty() ? each.description() : each.description() + "; " + own)
                .orElse(own);
        List<String> unknown = count.withoutLength();
        return Wording.printed(unknown.isEmpty() ? text : text + "; without a length: " + String.join(", ", unknown));
    }

    /** Cavities of one connector together: "X1.1, X1.2" becomes "X1: 1 2". */
    private static List<String> grouped(List<String> designators) {
        List<String> texts = new ArrayList<>();
        String open = "";
        for (String designator : designators) {
            int dot = designator.indexOf('.');
            String connector = dot > 0 && !designator.contains(" ") ? designator.substring(0, dot) : "";
            if (!connector.isEmpty() && connector.equals(open)) {
                int last = texts.size() - 1;
                texts.set(last, texts.get(last) + " " + designator.substring(dot + 1));
            } else {
                texts.add(connector.isEmpty() ? designator : connector + ": " + designator.substring(dot + 1));
                open = connector;
            }
        }
        return texts;
    }
}
