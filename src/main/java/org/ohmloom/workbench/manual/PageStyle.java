package org.ohmloom.workbench.manual;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Color;
import java.awt.Font;
import java.util.Locale;
import javax.swing.UIManager;
import javax.swing.text.html.StyleSheet;

/** How a page looks: fonts and colours of the window as they are now. */
final class PageStyle {

    private PageStyle() {}

    /**
     * The rules on top of those every page begins with.
     *
     * @param base what every page begins with
     */
    static StyleSheet now(StyleSheet base) {
        Font font = UIManager.getFont("Label.font");
        String mono = UIManager.getFont("monospaced.font") == null
                ? Font.MONOSPACED
                : UIManager.getFont("monospaced.font").getFamily();
        StyleSheet style = new StyleSheet();
        style.addStyleSheet(base);
        int size = font.getSize();
        String text = colour("Label.foreground");
        String soft = colour("Ohmloom.soft");
        String line = colour("Ohmloom.line");
        int gap = UIScale.scale(4);
        style.addRule("body { font-family: '" + font.getFamily() + "'; font-size: " + size + "pt; color: " + text
                + "; margin: " + 2 * gap + " " + 5 * gap + " " + 6 * gap + " " + 5 * gap + " }");
        style.addRule("h1 { font-size: " + size * 3 / 2 + "pt; margin-top: " + 2 * gap + "; margin-bottom: " + 2 * gap
                + " }");
        style.addRule(
                "h2 { font-size: " + size * 6 / 5 + "pt; margin-top: " + 4 * gap + "; margin-bottom: " + gap + " }");
        style.addRule("h3 { font-size: " + size + "pt; margin-top: " + 3 * gap + "; margin-bottom: " + gap + " }");
        style.addRule("p { margin-top: " + gap + "; margin-bottom: " + gap + " }");
        style.addRule("li { margin-top: " + gap / 2 + "; margin-bottom: " + gap / 2 + " }");
        style.addRule("ul, ol { margin-left: " + 6 * gap + "; margin-top: " + gap + "; margin-bottom: " + gap + " }");
        style.addRule("a { color: " + colour("Component.linkColor") + " }");
        style.addRule("code { font-family: '" + mono + "'; font-size: " + size + "pt }");
        style.addRule("pre { font-family: '" + mono + "'; font-size: " + size + "pt; margin: " + gap + " 0 " + gap + " "
                + 3 * gap + " }");
        style.addRule("th { text-align: left; color: " + soft + "; " + below(line) + " }");
        style.addRule("td { " + below(line) + " }");
        style.addRule("blockquote { margin-left: " + 4 * gap + "; color: " + soft + " }");
        return style;
    }

    private static String below(String line) {
        return "border-bottom-width: 1; border-bottom-style: solid; border-bottom-color: " + line
                + "; border-top-width: 0; border-left-width: 0; border-right-width: 0; padding: " + UIScale.scale(3)
                + " " + UIScale.scale(10) + " " + UIScale.scale(3) + " 0";
    }

    private static String colour(String key) {
        Color colour = UIManager.getColor(key);
        return String.format(Locale.ROOT, "#%06X", colour.getRGB() & 0xFFFFFF);
    }
}
