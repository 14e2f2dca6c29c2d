package org.ohmloom.pack.page;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A document of texts and tables.
 *
 * @param blocks its content from top to bottom
 * @param remark what must be known on every sheet, at most three short lines beside the title block
 */
public record Report(List<Block> blocks, String remark) {
    public Report {
        blocks = List.copyOf(blocks);
    }

    /**
     * Its tables by the last part of the name of their file, in order, those that are in files only too; those of one file
     * belong under one head.
     */
    Map<String, List<Block.Table>> tablesByFile() {
        return Block.flat(blocks).stream()
                .flatMap(block -> block instanceof Block.Table printed
                        ? Stream.of(printed)
                        : block instanceof Block.FileOnly filed ? Stream.of(filed.table()) : Stream.empty())
                .collect(Collectors.groupingBy(Block.Table::file, LinkedHashMap::new, Collectors.toList()));
    }
}
