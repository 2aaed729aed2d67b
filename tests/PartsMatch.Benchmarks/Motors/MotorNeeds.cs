using PartsMatch.Benchmarks.Parts;
using PartsMatch.Fit.Judging;
using PartsMatch.Fit.Motors;
using UnitsNet;

namespace PartsMatch.Benchmarks.Motors;

/// <summary>Failed motors in their places: everything that decides is known, and of every second one some of what is only checked is not.</summary>
internal static class MotorNeeds
{
    /// <summary>Fields of the plate that decide nothing.</summary>
    private static readonly Func<MotorSpec, MotorSpec>[] Unread =
    [
        plate => plate with { BodyLength = null },
        plate => plate with { FullLoadAmps = null },
        plate => plate with { LockedRotorAmps = null, CodeLetter = null },
        plate => plate with { Insulation = null, AmbientMost = null },
        plate => plate with { RunCapacitor = null },
        plate => plate with { Bearings = null, ShaftPositions = null },
        plate => plate with { ServiceFactor = null, BreakdownTorque = null },
    ];

    /// <summary>Different needs, whose old motors are of the catalogue's designs and none of its parts.</summary>
    public static IReadOnlyList<Need> Of(ManyMotors others, int count, int seed)
    {
        var random = new Random(seed);
        var needs = new List<Need>();
        while (needs.Count < count)
        {
            var motor = others.MotorBy(random);
            var need = Read(needs.Count % 2 == 0 ? motor : Unread[random.Next(Unread.Length)](motor), SiteOf(motor, random));
            if (ManyParts.IsKnown(MotorFamily.Motor, need, motor) && !needs.Contains(need)) needs.Add(need);
        }

        return needs;
    }

    /// <summary>A place that a motor with nothing left out suits.</summary>
    public static MotorSite SiteOf(MotorSpec motor, Random random)
    {
        var tap = motor.Voltage![random.Next(motor.Voltage.Count)];
        var volts = Math.Round((random.Next(2) == 0 ? tap.First : tap.Last).Volts * (0.97 + (0.06 * random.NextDouble())));
        return new()
        {
            Volts = new(ElectricPotential.FromVolts(volts)),
            SupplyPhase = motor.Phase,
            SupplyFrequency = motor.Frequency![random.Next(motor.Frequency.Count)],
            TurnNeeded = motor.Rotation,
            HubBore = motor.ShaftDiameter,
            HubHoldsOn = motor.ShaftForm,
            ShaftRoom = motor.ShaftLength + Length.FromInches(0.75),
            BodyDiameterRoom = motor.BodyDiameter + Length.FromInches(0.5),
            BodyRoom = motor.BodyLength + Length.FromInches(0.75),
            MountThere = motor.Mounts,
            FanKind = motor.Mounts!.Contains(MountKind.RigidBase) ? FanKind.BlowerWheel : FanKind.Propeller,
            Drive = motor.Mounts!.Contains(MountKind.RigidBase) ? Drive.Belt : Drive.Direct,
            ShaftPosition = motor.ShaftPositions?[0],
            Surroundings = motor.Enclosure is Enclosure.OpenDripProof or Enclosure.OpenAirOver ? Surroundings.Dry : Surroundings.Rain,
            Hazard = Hazard.None,
            SpeedControl = motor.SpeedControls?[0],
            SpeedsUsed = motor.Speeds,
            AirMost = Temperature.FromDegreesCelsius(random.Next(30, 41)),
            OverloadInCircuit = random.Next(3) == 0,
        };
    }

    /// <summary>Through the texts, as every edge does it, so that what can be deduced is.</summary>
    private static Need Read(MotorSpec plate, MotorSite site) =>
        MotorFamily.Motor.ReadNeed(new(null, MotorFamily.Motor.SpecShape.Write(plate), MotorFamily.Motor.SiteShape.Write(site))).Need;
}
