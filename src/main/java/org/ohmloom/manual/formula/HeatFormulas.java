package org.ohmloom.manual.formula;

import java.util.List;
import org.ohmloom.heat.AmbientRatio;
import org.ohmloom.heat.ConductorTemperature;
import org.ohmloom.heat.balance.Convection;
import org.ohmloom.heat.balance.OpenAir;
import org.ohmloom.heat.balance.RoundWire;
import org.ohmloom.heat.balance.SkinEffect;
import org.ohmloom.heat.balance.Surface;
import org.ohmloom.tables.WireTables;

/** Temperature and ampacity. */
final class HeatFormulas {

    static final List<Formula> ALL = List.of(
            new Formula(
                    "ambient-factor",
                    "Factor for the air temperature",
                    "f = sqrt((Tc - Ta) / (Tc - Tb))",
                    Symbol.of(
                            """
                    f | factor on the ampacity |
                    Tc | conductor temperature the insulation stands | °C
                    Ta | air temperature along the wire, the hottest | °C
                    Tb | air temperature the ampacity table holds for | °C
                    """),
                    "The heat a conductor makes goes with the square of its current, the heat it sheds with its rise over the air. A basis with ambient factors of its own has them used in engine spaces, unless hotter air asks for less. At and above the insulation's limit the factor is 0.",
                    "IEC 60364-5-52, ambient correction (computed)",
                    "sqrt((Tc - Ta)/(Tc - Tbase))",
                    List.of("views/inspector", "rules/conductor-over-ampacity"),
                    new Worked(
                            "Insulation for 105 °C, air of 60 °C, a table for 30 °C.",
                            "(105 - 60) / (105 - 30) = 0.6; sqrt(0.6) = 0.7746",
                            0.7746,
                            "",
                            () -> AmbientRatio.of(105, 60, 30))),
            new Formula(
                    "part-load-temperature",
                    "Conductor temperature below the ampacity",
                    "T = Ta + (Tc - Ta) x (I / Iz)^2",
                    Symbol.of(
                            """
                    T | conductor temperature | °C
                    Ta | air temperature | °C
                    Tc | conductor temperature at the ampacity | °C
                    I | RMS current | A
                    Iz | ampacity where the wire lies | A
                    """),
                    "A check beside the heat balance of the bundle, which the results use. It takes the heat shed as proportional to the rise.",
                    "Textbook; the same law as the ambient factor",
                    "ambient + (limit - ambient) x (I/ampacity)^2",
                    List.of("views/inspector"),
                    new Worked(
                            "Air 40 °C, insulation 100 °C, 20 A of 30 A.",
                            "(20/30)^2 = 0.4444; 40 + 60 x 0.4444 = 66.67 °C",
                            66.67,
                            "°C",
                            () -> ConductorTemperature.celsius(40, 100, 20, 30))),
            new Formula(
                    "conservative-temperature",
                    "Conductor temperature, conservative estimate",
                    "T2 = T1 + (TR - T1) x sqrt(I2 / Imax)",
                    Symbol.of(
                            """
                    T2 | estimated conductor temperature | °C
                    T1 | air temperature | °C
                    TR | temperature rating of the conductor | °C
                    I2 | current | A
                    Imax | most current in that air and bundle | A
                    """),
                    "Hotter than the other estimate at every partial current, on purpose. Shown for the aircraft basis only.",
                    "FAA AC 43.13-1B CHG 1, paragraph 11-66 (from memory)",
                    "AC 43.13-1B paragraph 11-66, T1 + (TR - T1) x sqrt(I/Imax)",
                    List.of("views/inspector"),
                    new Worked(
                            "Air 40 °C, rating 100 °C, 20 A of 30 A.",
                            "sqrt(20/30) = 0.8165; 40 + 60 x 0.8165 = 88.99 °C",
                            88.99,
                            "°C",
                            () -> ConductorTemperature.conservativeCelsius(40, 100, 20, 30))),
            new Formula(
                    "heat-of-a-conductor",
                    "Heat a conductor makes",
                    "q = I^2 x R'(T)",
                    Symbol.of(
                            """
                    q | heat of a metre | W/m
                    I | RMS current | A
                    R'(T) | resistance of a metre at the conductor temperature | ohm/m
                    """),
                    "What switches on and off heats by the root mean square of its current.",
                    "Joule's law",
                    "",
                    List.of("views/inspector", "views/duty"),
                    new Worked(
                            "20 A through 7.6 mΩ for a metre at 20 °C.",
                            "400 x 0.0076 = 3.04 W/m",
                            3.04,
                            "W/m",
                            () -> new RoundWire(0.0076, 2.5, 2, 3, 0.17).heatWattsPerMetre(20, 20))),
            new Formula(
                    "rise-in-insulation",
                    "Rise across the insulation",
                    "dT / q = ln(D / d) / (2 x pi x k)",
                    Symbol.of(
                            """
                    dT / q | rise for each watt of a metre | K m/W
                    D | diameter over the insulation | mm
                    d | diameter over the strands | mm
                    k | heat conductivity of the insulation; 0.17 where its type states none | W/(m K)
                    """),
                    "Conduction through a round shell.",
                    "Textbook",
                    "insulation 0.17 W/mK",
                    List.of("views/inspector"),
                    new Worked(
                            "D = 3 mm, d = 2 mm, k = 0.17 W/(m K).",
                            "ln(1.5) = 0.4055; 2 x pi x 0.17 = 1.068; 0.4055 / 1.068 = 0.3797 K m/W",
                            0.3797,
                            "K m/W",
                            () -> new RoundWire(0.0076, 2.5, 2, 3, 0.17).insulationKelvinMetresPerWatt())),
            new Formula(
                    "natural-convection",
                    "Natural convection from a wire",
                    "Nu = (0.60 + 0.387 x Ra^(1/6) / (1 + (0.559 / Pr)^(9/16))^(8/27))^2",
                    Symbol.of(
                            """
                    Nu | Nusselt number: film times diameter over the conductivity of the air |
                    Ra | Rayleigh number of the surface in the air |
                    Pr | Prandtl number of the air, about 0.71 |
                    """),
                    "A horizontal cylinder in still air. For thin wires, where the layer of moving air is thicker than the wire, the correlation of Raithby and Hollands (1975) takes its place; the change from one to the other is ours. How near it comes to published ratings is listed in the project's src/docs/validation.md.",
                    "Churchill and Chu, Int. J. Heat Mass Transfer 18, 1975",
                    "convection (Churchill and Chu 1975",
                    List.of("views/inspector", "dialogs/calculation-log"),
                    new Worked(
                            "Ra = 1000, Pr = 0.71.",
                            "Ra^(1/6) = 3.162; (0.559/0.71)^(9/16) = 0.8741; 1.8741^(8/27) = 1.2045; 0.60 + 0.387 x 3.162 / 1.2045 = 1.616; squared 2.611",
                            2.611,
                            "",
                            () -> Convection.churchillChu(1000, 0.71))),
            new Formula(
                    "air-pressure",
                    "Air pressure by altitude",
                    "p = 101325 x (1 - 2.25577e-5 x h)^5.25588",
                    Symbol.of(
                            """
                    p | air pressure, with which thinner air takes less heat away | Pa
                    h | altitude, up to 11 000 m | m
                    """),
                    "The standard atmosphere. Above 11 000 m the pressure falls exponentially.",
                    "ISO 2533, standard atmosphere (from memory)",
                    "",
                    List.of("views/inspector"),
                    new Worked(
                            "h = 2000 m.",
                            "1 - 0.045115 = 0.954885; ^5.25588 = 0.78457; x 101325 = 79 497 Pa",
                            79497,
                            "Pa",
                            () -> OpenAir.pressurePascals(2000))),
            new Formula(
                    "skin-depth",
                    "Depth of alternating current",
                    "s = sqrt(rho / (pi x f x mu0))",
                    Symbol.of(
                            """
                    s | depth at which the current density has fallen to 37 % | mm
                    rho | resistivity of copper at its temperature; 1/58 ohm mm²/m at 20 °C | ohm m
                    f | frequency | Hz
                    mu0 | 4 pi x 10^-7 | H/m
                    """),
                    "Tells whether a fast duty heats a thick conductor more than its resistance says.",
                    "Textbook; resistivity by IEC 60028",
                    "",
                    List.of("views/duty"),
                    new Worked(
                            "20 kHz at 20 °C.",
                            "1.724e-8 / (pi x 20000 x 1.2566e-6) = 2.184e-7; root 4.673e-4 m = 0.4673 mm",
                            0.4673,
                            "mm",
                            () -> SkinEffect.depthMm(20_000, 20))),
            new Formula(
                    "radiation",
                    "Heat a surface radiates",
                    "q = e x s x (Ts^4 - Ta^4) x pi x D",
                    Symbol.of(
                            """
                    q | heat of a metre | W/m
                    e | emissivity, 0.9 for insulation and coverings |
                    s | Stefan-Boltzmann constant, 5.6704e-8 | W/(m² K⁴)
                    Ts, Ta | surface and surroundings, from absolute zero | K
                    D | outside diameter | m
                    """),
                    "Added to what natural convection takes away. The walls around are taken to be as warm as the air; a hot part in sight is entered as a zone.",
                    "Stefan and Boltzmann, textbook; the constant by CODATA 2018; the emissivity is common practice",
                    "",
                    List.of("views/conductors"),
                    new Worked(
                            "A wire of 3 mm outside with its surface at 60 °C in air of 20 °C.",
                            "333.15^4 - 293.15^4 = 4.9334e9; x 5.6704e-8 x 0.9 = 251.77 W/m²; x 3.1416 x 0.003 = 2.373 W/m",
                            2.373,
                            "W/m",
                            () -> {
                                Surface surface = new Surface(3, Surface.USUAL_EMISSIVITY);
                                OpenAir air = OpenAir.seaLevel(20);
                                return surface.wattsPerMetre(60, air)
                                        - Math.PI * 0.003 * surface.film(60, air) * (60 - 20);
                            })),
            new Formula(
                    "larger-bundle",
                    "Factor of a bundle beyond its table",
                    "f(n) = f(m) x sqrt(m / n)",
                    Symbol.of(
                            """
                    f(n) | factor on the ampacity in a bundle of n loaded conductors |
                    f(m) | factor of the last row of the table |
                    n | loaded conductors |
                    m | loaded conductors of the last row |
                    """),
                    "All of them together then make the same heat as in the last row. A bundle grows as it gets more, so this is on the safe side.",
                    "Algebra: n x (f(n) x I)^2 is the same; the last row by its own table",
                    "beyond the table at the same total heat",
                    List.of("views/inspector", "views/conductors"),
                    new Worked(
                            "25 loaded conductors by MIL-W-5088L, whose last row has 0.35 for 18.",
                            "18 / 25 = 0.72; root 0.8485; x 0.35 = 0.297",
                            0.297,
                            "",
                            () -> WireTables.bundled()
                                    .bundleFactors("mil-w-5088l")
                                    .factor(25)
                                    .value())));

    private HeatFormulas() {}
}
