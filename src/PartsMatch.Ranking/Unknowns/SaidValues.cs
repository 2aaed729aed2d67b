using System.Runtime.InteropServices;
using PartsMatch.Fit.Quantities;

namespace PartsMatch.Ranking.Unknowns;

/// <summary>The different values that machines give for one field, each with a code from 1 on. Many threads may ask at once: what has a code keeps it, and only the codes are looked up one at a time.</summary>
internal sealed class SaidValues
{
    /// <summary>How far apart two different things are, in hundredths of a step: whole numbers, so that a sum does not hang on its order.</summary>
    public const int Step = 100;

    /// <summary>A machine that does not say lies half a step from whatever is known: it neither agrees nor contradicts.</summary>
    public const int NotSaid = Step / 2;

    private readonly TextForm form;
    private readonly Dictionary<string, int> codes = new(StringComparer.Ordinal);
    private readonly Lock growing = new();

    /// <summary>By code, those that have none yet behind the others.</summary>
    private Value[] values = [new([], double.NegativeInfinity)];

    /// <summary>The ranks of those that had a code when somebody last asked.</summary>
    private volatile ushort[] ranks = [];

    /// <summary>None yet.</summary>
    public SaidValues(TextForm form) => this.form = form;

    /// <summary>Those that were written.</summary>
    public SaidValues(TextForm form, BinaryReader from)
        : this(form)
    {
        for (var count = from.Read7BitEncodedInt(); count > 0; count--)
        {
            var (text, steps) = (from.ReadString(), new double[from.Read7BitEncodedInt()]);
            foreach (ref var step in steps.AsSpan()) step = from.ReadDouble();
            Add(text, steps);
        }
    }

    /// <summary>Writes all that have a code, in its order.</summary>
    public void WriteTo(BinaryWriter to)
    {
        lock (growing)
        {
            to.Write7BitEncodedInt(codes.Count);
            foreach (var (text, code) in codes.OrderBy(one => one.Value))
            {
                to.Write(text);
                to.Write7BitEncodedInt(values[code].Steps.Length);
                foreach (var step in values[code].Steps) to.Write(step);
            }
        }
    }

    /// <summary>The code of a value, as it is written.</summary>
    public int CodeOf(string text, object value)
    {
        lock (growing) return codes.TryGetValue(text, out var code) ? code : Add(text, [.. form.StepsOf(value)]);
    }

    /// <summary>Of every code, how far from a value what it stands for lies, in hundredths of a step: nothing of what is written alike, and at least one of all else.</summary>
    public int[] Apart(string text, object value)
    {
        var (known, count, same) = Known(text);
        var (apart, steps) = (new int[count], form.StepsOf(value).ToArray());
        for (var code = 1; code < apart.Length; code++) apart[code] = Math.Max(1, (int)Math.Round(Step * Steps.Apart(steps, known[code].Steps)));
        apart[same] = 0;
        apart[FieldCodes.Unknown] = NotSaid;
        return apart;
    }

    /// <summary>Of every code, how many different places there are before its own; what is not said stands first. Of more than 65,535 the rest stand together.</summary>
    public ushort[] Ranks()
    {
        var (known, count, _) = Known(string.Empty);
        if (ranks.Length == count) return ranks;
        var places = known.Take(count).Select(value => value.Place).ToList();
        var rankOf = places.Distinct().Order().Index().ToDictionary(one => one.Item, one => (ushort)Math.Min(one.Index, ushort.MaxValue));
        return ranks = [.. places.Select(place => rankOf[place])];
    }

    /// <summary>All values that have a code, how many places they take, and the code of one as it is written; that of what is not known where it has none.</summary>
    private (Value[] Values, int Count, int Same) Known(string text)
    {
        lock (growing) return (values, codes.Count + 1, codes.GetValueOrDefault(text, FieldCodes.Unknown));
    }

    private int Add(string text, double[] steps)
    {
        var code = codes.Count + 1;
        if (code == values.Length) Array.Resize(ref values, 2 * code);
        values[code] = new(steps, steps.Length > 0 ? steps[0] : Beginning(text));
        return codes[text] = code;
    }

    /// <summary>Words in the order of their first three letters.</summary>
    private static double Beginning(string text) => text.Take(3).Aggregate(0.0, (place, letter) => (place * 65_536) + letter) * Math.Pow(65_536, 3 - Math.Min(3, text.Length));

    /// <summary>What a code stands for.</summary>
    /// <param name="Steps">Its figures, in steps; none of words.</param>
    /// <param name="Place">Where it stands among others: by its first figure, or its first letters.</param>
    [StructLayout(LayoutKind.Auto)]
    private readonly record struct Value(double[] Steps, double Place);
}
