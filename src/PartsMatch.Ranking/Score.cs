using System.Runtime.InteropServices;

namespace PartsMatch.Ranking;

/// <summary>A sum of contributions in fixed point: the same in whatever order it is added, so that an explanation adds up exactly.</summary>
/// <param name="Millionths">In millionths of a unit of log-odds (a natural logarithm); never positive.</param>
[StructLayout(LayoutKind.Auto)]
public readonly record struct Score(long Millionths)
{
    /// <summary>The score of a part that nothing speaks against.</summary>
    public static Score Zero => default;

    /// <summary>The score as a number, for showing and for the likelihood.</summary>
    public double Value => Millionths / 1e6;

    /// <summary>The two together.</summary>
    public static Score operator +(Score one, Score other) => one.Add(other);

    /// <summary>The two together.</summary>
    public Score Add(Score other) => new(Millionths + other.Millionths);

    /// <summary>What a penalty takes from the score: rounded to a millionth, which keeps the order of penalties.</summary>
    /// <param name="penalty">In units of log-odds, 0 or more.</param>
    public static Score Less(double penalty) => new(-(long)Math.Round(penalty * 1e6));
}

/// <summary>How likely a part does the job the first time.</summary>
/// <param name="Percent">Whole percent, 1 to 99: neither is ever certain.</param>
/// <param name="IsHandSet">Whether it comes from hand-set weights and not from outcomes: say so wherever it shows.</param>
/// <param name="Machines">Over how many known machines it was averaged, since the plate does not tell enough; 0 when it is the need's own.</param>
public sealed record Likelihood(int Percent, bool IsHandSet, int Machines = 0)
{
    /// <summary>Whether any of the outcomes that it comes from is demo data: say so wherever it shows.</summary>
    public bool IsOfInvented { get; init; }
}

/// <summary>The mean of a likelihood over known machines by what they count, nothing for those that the part fails.</summary>
/// <param name="Sum">Over all that it passes: what each counts, times its likelihood in billionths.</param>
/// <param name="Weight">What all of them count.</param>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct MeanLikelihood(long Sum, int Weight)
{
    /// <summary>In whole percent, halves up, 1 to 99.</summary>
    public int Percent => Weight == 0 ? 1 : (int)Math.Clamp(((200 * Sum / Weight) + (long)Logistic.Whole) / (2 * (long)Logistic.Whole), 1, 99);
}
