using System.Runtime.InteropServices;
using PartsMatch.Fit.Judging;

namespace PartsMatch.Benchmarks.Engine;

/// <summary>A need, and its judgements made ready for those who cannot judge.</summary>
internal sealed record Asked(Need Need, CodeLists Lists);

/// <summary>What an engine tells of one answer, where it does.</summary>
[StructLayout(LayoutKind.Auto)]
internal readonly record struct EngineFigures(long? FacetsJudged, long? RowsTouched);

/// <summary>One way to find the best parts: percent as shown, then supply, price with unknown last, number. On one thread.</summary>
internal abstract class Contender(string name) : IDisposable
{
    /// <summary>How many parts are asked for.</summary>
    public const int First = 20;

    public string Name => name;

    /// <summary>Whether it is a database: the engine is compared with the best of them.</summary>
    public virtual bool IsDatabase => false;

    /// <summary>What it holds a part, where it tells.</summary>
    public virtual double? BytesAPart => null;

    /// <summary>What the last answer took, where it tells.</summary>
    public virtual EngineFigures? Figures => null;

    /// <summary>Is asked everything before, where that compiles its code; not measured.</summary>
    public virtual void WarmUp(IReadOnlyList<Asked> all)
    {
    }

    /// <summary>Answers something just before it is measured, as one does that is asked again and again: its code and what all queries look at are at hand then. Who has lists can only be asked the same.</summary>
    public virtual void Resume(Asked asked) => Best(asked);

    /// <summary>Takes the code lists in; not measured.</summary>
    public virtual void MakeReady(Asked asked)
    {
    }

    /// <summary>The rows of the best parts, best first; measured.</summary>
    public abstract IReadOnlyList<int> Best(Asked asked);

    public virtual void Dispose()
    {
    }
}
