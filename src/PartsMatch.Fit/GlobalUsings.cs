// Names for what a plate's parallel figures are: they would be long otherwise.
global using Amps = PartsMatch.Fit.Quantities.Figures<PartsMatch.Fit.Quantities.Spread<UnitsNet.ElectricCurrent>>;
global using CapacitorNeed = PartsMatch.Fit.Judging.Need<PartsMatch.Fit.Capacitors.CapacitorSpec, PartsMatch.Fit.Capacitors.CapacitorSite>;
global using ContactorNeed = PartsMatch.Fit.Judging.Need<PartsMatch.Fit.Switches.Contactors.ContactorSpec, PartsMatch.Fit.Switches.Contactors.ContactorSite>;
global using ExpansionNeed = PartsMatch.Fit.Judging.Need<PartsMatch.Fit.Valves.ExpansionValves.ExpansionValveSpec, PartsMatch.Fit.Valves.ExpansionValves.ExpansionValveSite>;
global using HeadNeed = PartsMatch.Fit.Judging.Need<PartsMatch.Fit.Valves.CondensingPressureValves.CondensingPressureValveSpec, PartsMatch.Fit.Valves.CondensingPressureValves.CondensingPressureValveSite>;
global using MotorNeed = PartsMatch.Fit.Judging.Need<PartsMatch.Fit.Motors.MotorSpec, PartsMatch.Fit.Motors.MotorSite>;
global using PressureControlNeed = PartsMatch.Fit.Judging.Need<PartsMatch.Fit.Switches.PressureControls.PressureControlSpec, PartsMatch.Fit.Switches.PressureControls.PressureControlSite>;
global using SolenoidNeed = PartsMatch.Fit.Judging.Need<PartsMatch.Fit.Valves.SolenoidValves.SolenoidValveSpec, PartsMatch.Fit.Valves.SolenoidValves.SolenoidValveSite>;
global using Taps = PartsMatch.Fit.Quantities.Figures<PartsMatch.Fit.Quantities.Spread<UnitsNet.ElectricPotential>>;
