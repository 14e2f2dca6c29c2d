package org.ohmloom.solve;

import java.util.Collection;
import java.util.Locale;
import org.ohmloom.graph.Law;

/**
 * Where the power of an operating state goes, as means over time: what sources give = what batteries take up + what loads take +
 * what is lost in conductors and devices.
 *
 * <p>Power follows from means and mean squares: I2 R of conductors, E I - I2 R of batteries, and of all others the mean of
 * voltage times current. It is added up from the published branches, not taken from the solver.
 *
 * @param givenWatts      given by sources at their terminals, outputs of converters among them, W
 * @param chargingWatts   taken by sources that are charged, W
 * @param loadsWatts      taken by loads, control units, coils and inputs of converters, W
 * @param conductorsWatts lost in wires, chassis, straps, contacts and joints, W
 * @param devicesWatts    lost in fuses, breakers, switches, relays, outputs, diodes and clamps, W
 */
public record EnergyBalance(
        double givenWatts, double chargingWatts, double loadsWatts, double conductorsWatts, double devicesWatts) {

    /** The balance of a solved state. */
    public static EnergyBalance of(Solution solution) {
        return of(solution.flows().values());
    }

    static EnergyBalance of(Collection<BranchFlow> flows) {
        double given = 0;
        double charging = 0;
        double loads = 0;
        double conductors = 0;
        double devices = 0;
        for (BranchFlow flow : flows) {
            double watts = watts(flow);
            switch (flow.branch().kind().part()) {
                case SOURCE -> {
                    given += Math.max(0, -watts);
                    charging += Math.max(0, watts);
                }
                case LOAD -> loads += watts;
                case CONDUCTOR, CONTACT -> conductors += watts;
                case DEVICE, BYPASS -> devices += watts;
            }
        }
        return new EnergyBalance(given, charging, loads, conductors, devices);
    }

    /** Given less taken, W: 0 but for rounding and for what a sample of moments leaves open. */
    public double missWatts() {
        return givenWatts - chargingWatts - loadsWatts - conductorsWatts - devicesWatts;
    }

    /** That over what is given; 0 when nothing is given. */
    public double missRatio() {
        return givenWatts > 0 ? Math.abs(missWatts()) / givenWatts : 0;
    }

    /** The difference as it is shown: "1.2e-13 W". */
    public String missWords() {
        return missWatts() == 0 ? "0 W" : String.format(Locale.ROOT, "%.1e W", missWatts());
    }

    private static double watts(BranchFlow flow) {
        return flow.branch().law() instanceof Law.VoltageSource source
                        && Double.isInfinite(source.maximumAmps())
                        && Double.isInfinite(source.minimumAmps())
                        && source.chargeOhms() == source.ohms()
                ? source.ohms() * flow.rmsAmps() * flow.rmsAmps() - source.emfVolts() * flow.amps()
                : flow.watts();
    }
}
