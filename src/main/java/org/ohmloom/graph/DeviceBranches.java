package org.ohmloom.graph;

import org.ohmloom.model.Alternator;
import org.ohmloom.model.Battery;
import org.ohmloom.model.BatteryIsolator;
import org.ohmloom.model.BusBar;
import org.ohmloom.model.Component;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.Converter;
import org.ohmloom.model.Device;
import org.ohmloom.model.Diode;
import org.ohmloom.model.Load;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.model.RegulatedSupply;
import org.ohmloom.model.Relay;
import org.ohmloom.model.Sensor;
import org.ohmloom.model.SolidStateOutput;
import org.ohmloom.model.Switch;

/** Gives each component's device to those who know its branches. */
final class DeviceBranches {

    private DeviceBranches() {}

    static void add(NetworkDraft network, Component component, FuseOhms fuseOhms, SourceConditions conditions) {
        DeviceDraft draft = new DeviceDraft(network, component);
        component.terminals().forEach(terminal -> network.place(draft.terminal(terminal)));
        Device device = component.device();
        if (device instanceof Battery battery) {
            SourceBranches.battery(draft, battery, conditions);
        } else if (device instanceof Alternator alternator) {
            SourceBranches.alternator(draft, alternator, conditions);
        } else if (device instanceof RegulatedSupply supply) {
            SourceBranches.supply(draft, supply);
        } else if (device instanceof Converter converter) {
            SourceBranches.converter(draft, converter);
        } else if (device instanceof Diode diode) {
            SwitchingBranches.diode(draft, diode);
        } else if (device instanceof BatteryIsolator isolator) {
            SwitchingBranches.isolator(draft, isolator);
        } else if (device instanceof ProtectiveDevice protective) {
            ProtectiveBranches.device(draft, protective, fuseOhms);
        } else if (device instanceof Switch handSwitch) {
            SwitchingBranches.handSwitch(draft, handSwitch);
        } else if (device instanceof Relay relay) {
            SwitchingBranches.relay(draft, relay);
        } else if (device instanceof SolidStateOutput output) {
            SwitchingBranches.solidState(draft, output);
        } else if (device instanceof Load load) {
            LoadBranches.load(draft, load);
        } else if (device instanceof Sensor sensor) {
            LoadBranches.sensor(draft, sensor);
        } else if (device instanceof ControlUnit unit) {
            ControlUnitBranches.unit(draft, unit);
        } else if (device instanceof BusBar busBar) {
            BusBarBranches.busBar(draft, busBar);
        }
    }
}
