namespace PartsMatch.Fit.Quantities;

/// <summary>Which way something turns, as seen from a named end.</summary>
public enum Direction
{
    /// <summary>With the hands of a clock.</summary>
    [Words("CW", "clockwise")]
    Clockwise,

    /// <summary>Against them.</summary>
    [Words("CCW", "counterclockwise", "anticlockwise", "ACW")]
    Counterclockwise,
}

/// <summary>The end of a motor from which its turn is seen.</summary>
public enum MotorEnd
{
    /// <summary>Looking at the shaft (drive, pulley, output end).</summary>
    [Words("shaft end", "SE", "drive end", "DE", "pulley end", "PE", "output end", "OE", "opposite lead end", "opp lead end", "OPP LE", "OLE")]
    Shaft,

    /// <summary>Looking at the end opposite the shaft, where the leads mostly come out.</summary>
    [Words("lead end", "LE", "opposite shaft end", "opp shaft end", "OPP SE", "OSE", "opposite drive end", "opp drive end", "OPP DE", "ODE", "opposite pulley end", "opp pulley end", "OPP PE", "OPE", "non-drive end", "NDE")]
    Lead,
}

/// <summary>A turn as a plate gives it. Plates often name no end: then the turn is unknown, and nothing is assumed.</summary>
/// <param name="Direction">The direction named.</param>
/// <param name="SeenFrom">The end named, or null.</param>
/// <remarks>The same turn has opposite names from the two ends (geometry); abbreviations of the ends: public pages on motor plates; OPE, opposite the pulley end, is practice.</remarks>
public sealed record Turn(Direction Direction, MotorEnd? SeenFrom) : IHaveTextForm<Turn>
{
    /// <inheritdoc/>
    public static TextForm<Turn> Form { get; } = new TurnForm();

    /// <summary>The direction as seen facing the shaft; null when no end is named.</summary>
    public Direction? FacingShaft => SeenFrom switch
    {
        MotorEnd.Shaft => Direction,
        MotorEnd.Lead => Opposite(Direction),
        _ => null,
    };

    /// <summary>The same turn, named from the other end; itself when no end is named.</summary>
    public Turn FromOtherEnd() => SeenFrom is { } end
        ? new(Opposite(Direction), end == MotorEnd.Shaft ? MotorEnd.Lead : MotorEnd.Shaft)
        : this;

    /// <summary>The other direction.</summary>
    public static Direction Opposite(Direction direction) => direction == Direction.Clockwise ? Direction.Counterclockwise : Direction.Clockwise;

    private sealed class TurnForm : TextForm<Turn>
    {
        private static readonly EnumForm<Direction> Directions = new();
        private static readonly EnumForm<MotorEnd> Ends = new();

        /// <summary>Longest first, so that CCW is not read as a C before a CW, nor CW of a "CWSE" as all there is.</summary>
        private static readonly string[] DirectionWords = [.. Directions.Words.OrderByDescending(word => word.Length)];

        private static readonly string[] Linkings = ["as seen facing", "seen from", "viewed from", "facing", "from", "the"];

        public override IReadOnlyList<string> Words { get; } = [.. DirectionWords.SelectMany(direction => Ends.Words
            .SelectMany(end => Linkings.Select(linking => $"{direction} {linking} {end}").Append($"{direction} {end}"))
            .Append(direction))];

        public override string Expected => "a turn with the end it is seen from, such as CW shaft end or CCW lead end";

        public override string Example => "CW shaft end";

        public override TextReading<Turn> Read(string text)
        {
            var given = text.Trim();
            foreach (var word in DirectionWords)
            {
                if (!given.StartsWith(word, StringComparison.OrdinalIgnoreCase)) continue;
                var direction = Directions.Read(word).Value;
                var rest = given[word.Length..].Trim(' ', ',', '(', ')', '-', '/');
                foreach (var linking in Linkings)
                {
                    if (rest.StartsWith(linking + " ", StringComparison.OrdinalIgnoreCase)) rest = rest[linking.Length..].Trim();
                }

                if (rest.Length == 0) return TextReading<Turn>.Of(new(direction, null));
                var end = Ends.Read(rest);
                if (!end.IsRead && rest.Equals("shaft", StringComparison.OrdinalIgnoreCase)) end = TextReading<MotorEnd>.Of(MotorEnd.Shaft);
                if (end.IsRead) return TextReading<Turn>.Of(new(direction, end.Value));
            }

            return TextReading<Turn>.Refused(given.Length == 0 ? "nothing is written" : $"“{given}” is not {Expected}");
        }

        public override string Write(Turn value, Units units = Units.AsGiven) =>
            value.SeenFrom is { } end ? $"{Directions.Write(value.Direction)} {Ends.Write(end)}" : Directions.Write(value.Direction);
    }
}
