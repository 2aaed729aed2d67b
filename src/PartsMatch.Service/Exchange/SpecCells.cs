using System.Runtime.InteropServices;
using PartsMatch.Fit.Judging;
using PartsMatch.Service.Counter;
using NamedText = PartsMatch.Store.NamedText;

namespace PartsMatch.Service.Exchange;

/// <summary>Reads a spec's cells one by one. A catalogue says few things many times over, so each is read once and kept once.</summary>
internal sealed class SpecCells(Family family, int longest)
{
    /// <summary>A hostile file may have no text twice.</summary>
    private const int MostKept = 200_000;

    private readonly Dictionary<(Field Field, string Text), (NamedText? Read, RowComplaint? Wrong)> _kept = [];

    /// <summary>The cell as the catalogue writes it, or what is wrong with it.</summary>
    public (NamedText? Read, RowComplaint? Wrong) Read(Field field, string text)
    {
        if (text.Length > longest) return (null, new(field.Name, Codes.TooLong, FormattableString.Invariant($"A cell has at most {longest} characters; this one has {text.Length}.")));
        if (_kept.Count >= MostKept) _kept.Clear();
        ref var kept = ref CollectionsMarshal.GetValueRefOrAddDefault(_kept, (field, text), out var isKept);
        if (!isKept) kept = ReadAnew(field, text);
        return kept;
    }

    private (NamedText? Read, RowComplaint? Wrong) ReadAnew(Field field, string text)
    {
        var (spec, complaints) = family.ReadSpec([new(field.Name, text)]);
        return complaints is [var complaint, ..]
            ? (null, new(field.Name, complaint.Code, complaint.Message))
            : (new(field.Name, field.TextOf(spec) ?? string.Empty), null);
    }
}
