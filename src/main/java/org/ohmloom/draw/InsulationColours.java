package org.ohmloom.draw;

import java.awt.Color;

/** Screen colours of insulation by the letter codes of IEC 60757. Common practice, no source: the standard names colours and gives no values. */
final class InsulationColours {

    private InsulationColours() {}

    static Color of(String code) {
        return switch (code) {
            case "BK" -> new Color(0x1A1A1A);
            case "BN" -> new Color(0x7A4A24);
            case "RD" -> new Color(0xC8281E);
            case "OG" -> new Color(0xEE7A1B);
            case "YE" -> new Color(0xF4D01C);
            case "GN" -> new Color(0x2E8B40);
            case "BU" -> new Color(0x2457A6);
            case "VT" -> new Color(0x7B3F98);
            case "GY" -> new Color(0x8C9196);
            case "WH" -> new Color(0xFFFFFF);
            case "PK" -> new Color(0xF09AB4);
            case "GD" -> new Color(0xB8963E);
            case "TQ" -> new Color(0x2FB5B0);
            case "SR" -> new Color(0xC3C7CB);
            default -> throw new IllegalArgumentException("'" + code + "' is not a colour code of IEC 60757");
        };
    }

    static Color grey(Color colour) {
        double light = Math.pow(Contrast.luminance(colour), 1 / 2.2);
        int level = (int) Math.round(255 * light);
        return new Color(level, level, level);
    }
}
