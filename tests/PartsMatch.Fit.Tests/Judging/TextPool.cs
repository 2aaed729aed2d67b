using FsCheck;
using FsCheck.Fluent;
using PartsMatch.Fit.Coils;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Quantities;
using PartsMatch.Fit.Switches.Contactors;
using PartsMatch.Fit.Switches.Contacts;
using PartsMatch.Fit.Switches.DefrostTimers;
using PartsMatch.Fit.Switches.PressureControls;
using PartsMatch.Fit.Switches.Thermostats;
using UnitsNet;

namespace PartsMatch.Fit.Tests.Judging;

/// <summary>Texts that a field of any family may hold: few and typical, so that random needs and parts often meet and often just miss.</summary>
internal static class TextPool
{
    private static readonly Dictionary<Type, string[]> ByType = new()
    {
        [typeof(Figures<Power>)] = ["1/6 hp", "1/4 hp", "1/3 hp", "1/2 hp", "0.37 kW", "3/4-1/3 hp", "16 W"],
        [typeof(Power)] = ["1/4 hp", "250 W"],
        [typeof(Figures<RotationalSpeed>)] = ["825 rpm", "1075 rpm", "1100 rpm", "1140 rpm", "1550 rpm", "1725 rpm", "1725/1140 rpm", "1075/900 rpm"],
        [typeof(RotationalSpeed)] = ["1050 rpm", "1100 rpm"],
        [typeof(Figures<Spread<ElectricPotential>>)] = ["115 V", "230 V", "208-230 V", "115/208-230 V", "460 V", "230/400 V", "208-230/460 V"],
        [typeof(Figures<ElectricPotential>)] = ["115 V", "120 V", "187.2 V", "202 V", "207 V", "230 V", "253 V", "400 V", "460 V", "460/467/450 V", "206/208/207 V"],
        [typeof(Figures<Spread<ElectricCurrent>>)] = ["2.1 A", "4.2 A", "4.2/2.1 A", "5.4/2.8 A"],
        [typeof(Figures<ElectricCurrent>)] = ["10 A", "25 A", "40 A", "40/32 A", "240 A"],
        [typeof(ElectricPotential)] = ["20 V", "24 V", "120 V", "230 V", "264 V", "277 V", "480 V"],
        [typeof(ElectricApparentPower)] = ["6 VA", "10 VA", "40 VA", "400 VA"],
        [typeof(MotorLoads)] = ["5/25 A", "14/73 + 2 x 1.4/7 A", "25 A", "40/240 A", "60/300 A"],
        [typeof(Pressure)] = ["10 psi", "30 psi", "300 psi", "400 psi", "405 psi", "475 psi"],
        [typeof(PressureSpan)] = ["10 to 100 psi", "100 to 450 psi", "20 psi", "10 to 40 psi", "50 to 120 psi"],
        [typeof(TemperatureSpan)] = ["-30 to 90 °F", "20 to 80 °F", "-10 to 35 °C"],
        [typeof(TemperatureDifferenceSpan)] = ["3 °F", "3.5 to 36 °F", "1 to 15 K"],
        [typeof(StartsADay)] = ["1 to 6 a day", "1 to 4 a day", "2 to 12 a day", "4 a day"],
        [typeof(MinutesSpan)] = ["4 to 110 min", "2 to 40 min", "10 to 60 min", "30 min"],
        [typeof(DefrostMinutes)] = ["3 min", "30 min", "41.5 min", "60 min"],
        [typeof(TerminalMap)] = ["common 2, clock 1, heater 3, fans 4", "common 1, clock 3, heater 4, fans 2, release X"],
        [typeof(AuxiliaryContacts)] = ["none", "1 NO", "1 NO + 1 NC", "2 NC"],
        [typeof(ElectricCurrent)] = ["2 A", "5 A", "15 A"],
        [typeof(Figures<Frequency>)] = ["60 Hz", "50 Hz", "50/60 Hz"],
        [typeof(Frequency)] = ["50 Hz", "57 Hz", "60 Hz"],
        [typeof(Length)] = ["8 mm", "5/16 in", "3/8 in", "1/2 in", "12.7 mm", "5/8 in", "2 in", "4 in", "5 in", "5.6 in", "6.5 in"],
        [typeof(Temperature)] = ["-10 °F", "25 °F", "35 °F", "55 °F", "40 °C", "60 °C", "70 °C", "85 °C"],
        [typeof(CapacitorRating)] = ["none", "5 µF 370 V", "5 µF 440 V", "5.2 µF 440 V", "7.5 µF 370 V", "45+5 µF 440 V", "45 µF 440 V", "10 µF"],
        [typeof(FrameSize)] = ["42", "48", "48Y", "56", "56C", "143T", "IEC 63", "IEC 71"],
        [typeof(Turn)] = ["CW shaft end", "CCW shaft end", "CW lead end", "CW"],
        [typeof(IpCode)] = ["IP22", "IP44", "IP54"],
        [typeof(Pressure)] = ["50 psi", "250 psi", "450 psi", "500 psi"],
        [typeof(PressureDifference)] = ["0 psi", "1 psi", "2 psi", "200 psi", "300 psi"],
        [typeof(FlowCoefficient)] = ["0.2 Kv", "0.8 Kv", "1 Cv", "5 Kv"],
        [typeof(CoolingLoad)] = ["0.5 tons", "1 ton", "3 tons", "20 kW"],
        [typeof(ElectricPotential)] = ["24 V", "120 V", "208 V", "230 V"],
        [typeof(ElectricApparentPower)] = ["10 VA", "15 VA", "40 VA"],
        [typeof(RefrigerantList)] = ["R-404A", "R-404A, R-507A", "R-22, R-134a, R-717", "R-290"],
        [typeof(CoilOffers)] = ["24 V 50/60 Hz = QC-24", "24 V DC = QC-24D; 120 V 60 Hz = QC-120", "230 V 50 Hz = QC-230"],
        [typeof(int)] = ["1", "2", "3", "4", "6"],
        [typeof(double)] = ["0.8", "1", "1.15"],
        [typeof(Ratio)] = ["5 %", "6 %", "10 %", "65 %", "180 %"],
    };

    /// <summary>A text for a field.</summary>
    public static Gen<string> TextOf(Field field) => Gen.Elements(Candidates(field).AsEnumerable());

    /// <summary>Named texts for a random part of the fields of a shape.</summary>
    /// <param name="shape">The shape.</param>
    /// <param name="known">How many in ten of the fields are known.</param>
    public static Gen<NamedText[]> TextsOf(Shape shape, int known) =>
        Gen.CollectToArray(shape.Fields, field => Gen.Choose(1, 10).Zip(TextOf(field)).Select(pair => (Known: pair.Item1 <= known, Text: new NamedText(field.Name, pair.Item2))))
            .Select(all => all.Where(one => one.Known).Select(one => one.Text).ToArray());

    private static IReadOnlyList<string> Candidates(Field field) =>
        field.Form.Choices.Count > 0 ? field.Form.Choices
        : ByType.TryGetValue(field.Form.ValueType, out var texts) ? texts : [field.Form.Example];
}
