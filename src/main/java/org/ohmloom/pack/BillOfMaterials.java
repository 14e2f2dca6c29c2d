package org.ohmloom.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.model.Assembly;
import org.ohmloom.model.AssemblyId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Part;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.pack.page.Block;
import org.ohmloom.pack.page.Cell;
import org.ohmloom.pack.page.Column;
import org.ohmloom.pack.page.Report;
import org.ohmloom.pack.page.Row;
import org.ohmloom.tables.DesignBasis;
import org.ohmloom.units.Formats;
import org.ohmloom.units.GaugeSystem;

/** What to buy for the harness, by assembly. Parts already in the vehicle are left out. */
final class BillOfMaterials {
    private static final List<Column> COLUMNS = List.of(
            Column.count("Item", 0),
            Column.fileOnly("Assembly"),
            Column.fileOnly("Group"),
            Column.count("Quantity", 0),
            Column.code("Unit"),
            Column.code("Part number").home(),
            Column.words("Maker"),
            Column.words("Description"),
            Column.colour("Colour"),
            Column.words("Used for"));

    private static final String REMARK =
            "Net quantities: no scrap, spares or cut allowance is added. Parts already in the"
                    + " vehicle are left out. \"Not chosen\": no part number has been entered.";

    private final Analysis analysis;
    private final Harness harness;
    private final Wording wording;

    BillOfMaterials(Analysis analysis) {
        this.analysis = analysis;
        this.harness = analysis.harness();
        this.wording = new Wording(harness);
    }

    /** Everything counted. */
    Map<Material, MaterialCount> materials() {
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
        return materials.all();
    }

    Report report() {
        Map<Material, MaterialCount> materials = materials();
        List<Block> blocks = new ArrayList<>(FirstPage.blocks(harness));
        blocks.add(totals(materials));
        List<Optional<AssemblyId>> assemblies =
                materials.keySet().stream().map(Material::assembly).distinct().toList();
        int item = 1;
        for (Optional<AssemblyId> assembly : assemblies) {
            if (!harness.assemblies().isEmpty()) {
                blocks.add(new Block.Heading(heading(assembly)));
            }
            List<Row> rows = new ArrayList<>();
            MaterialKind kind = null;
            for (Map.Entry<Material, MaterialCount> entry : materials.entrySet()) {
                if (entry.getKey().assembly().equals(assembly)) {
                    if (entry.getKey().kind() != kind) {
                        kind = entry.getKey().kind();
                        rows.add(Row.group(kind.words()));
                    }
                    rows.add(row(item++, entry.getKey(), entry.getValue()));
                }
            }
            blocks.add(new Block.Table("", COLUMNS, rows, ""));
        }
        if (materials.isEmpty()) {
            blocks.add(new Block.Table("", COLUMNS, List.of(), "Nothing is to be bought."));
        }
        return new Report(blocks, REMARK);
    }

    private String heading(Optional<AssemblyId> assembly) {
        return assembly.map(harness.assemblies()::get)
                .map((Assembly each) ->
                        "Assembly " + each.number() + "  " + each.name() + ", revision " + each.revision())
                .orElse("In no assembly");
    }

    private Block totals(Map<Material, MaterialCount> materials) {
        double pieces = 0;
        double metres = 0;
        double massKg = 0;
        int withoutMass = 0;
        int missing = 0;
        for (Map.Entry<Material, MaterialCount> entry : materials.entrySet()) {
            Material material = entry.getKey();
            double quantity = entry.getValue().quantity();
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
        facts.add(new Block.Fact("Lines", String.valueOf(materials.size())));
        facts.add(new Block.Fact("Pieces", String.valueOf(Math.round(pieces))));
        facts.add(new Block.Fact("Single wire", Formats.metres(metres)));
        facts.add(new Block.Fact(
                "Copper in the wires", Formats.kilograms(analysis.totals().copperKg())));
        facts.add(new Block.Fact(
                "Mass of the pieces",
                Formats.kilograms(massKg) + (withoutMass > 0 ? ", " + withoutMass + " lines without a mass" : "")));
        facts.add(new Block.Fact("Lines without a part number, wire apart", String.valueOf(missing)));
        facts.add(new Block.Fact("Conductor unless a wire names its own", conductor()));
        return new Block.Facts(facts);
    }

    private String conductor() {
        DesignBasis basis = analysis.evidence().basis();
        boolean awg = harness.rules().gaugeSystem() == GaugeSystem.AWG;
        return analysis.evidence()
                .tables()
                .family(awg ? basis.defaultAwgFamily() : basis.defaultMetricFamily())
                .title();
    }

    private Row row(int item, Material material, MaterialCount count) {
        Optional<Part> part = material.part().map(harness.parts()::get);
        boolean wire = material.kind() == MaterialKind.WIRE;
        return Row.of(
                Cell.number(item),
                Cell.text(wording.assembly(material.assembly())),
                Cell.text(material.kind().words()),
                quantity(material, count),
                Cell.text(material.unit()),
                wire ? Cell.text("by description").toned(Cell.Tone.SOFT) : Wording.part(material.part()),
                Cell.text(part.map(Part::maker)),
                Cell.text(description(material, part, count)),
                material.colour().map(Cell::colour).orElse(wire ? Cell.missing(Wording.NOT_CHOSEN) : Cell.empty()),
                Cell.text(String.join(", ", grouped(count.designators()))));
    }

    private static Cell quantity(Material material, MaterialCount count) {
        double quantity = count.quantity();
        if (quantity == 0 && !count.withoutLength().isEmpty()) {
            return Cell.missing("unknown");
        }
        return material.unit().equals(Material.PIECE)
                ? Cell.number(quantity)
                : Cell.number(quantity, String.format(Locale.ROOT, "%.2f", quantity));
    }

    private static String description(Material material, Optional<Part> part, MaterialCount count) {
        String own = material.description();
        String text = part.map(each -> own.isEmpty() ? each.description() : each.description() + "; " + own)
                .orElse(own);
        List<String> unknown = count.withoutLength();
        return unknown.isEmpty() ? text : text + "; without a length: " + String.join(", ", unknown);
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
