// Names for what a plate's parallel figures are: they would be long otherwise.
global using Amps = PartsMatch.Fit.Quantities.Figures<PartsMatch.Fit.Quantities.Spread<UnitsNet.ElectricCurrent>>;
global using Taps = PartsMatch.Fit.Quantities.Figures<PartsMatch.Fit.Quantities.Spread<UnitsNet.ElectricPotential>>;
