namespace PartsMatch.Fit.Judging.Nameplates;

/// <summary>Where a placement's label stands.</summary>
internal enum LabelStands
{
    /// <summary>It has none, or one on both sides.</summary>
    Nowhere,

    /// <summary>Before: HP 1/4.</summary>
    Before,

    /// <summary>Behind: 1/4 HP.</summary>
    Behind,
}

/// <summary>Tokens that belong together.</summary>
/// <param name="From">The first.</param>
/// <param name="To">The one behind the last.</param>
internal readonly record struct Stretch(int From, int To);

/// <summary>A value that a stretch of the plate may be.</summary>
/// <param name="Field">Its field.</param>
/// <param name="Text">The value, as the field's form writes it.</param>
/// <param name="Where">The stretches it comes from, with its label.</param>
internal sealed record PlacedValue(Field Field, string Text, params IReadOnlyList<Stretch> Where);

/// <summary>A label beside a figure that is no value of its field: HP 1/0.</summary>
/// <param name="Label">The label.</param>
/// <param name="Figure">Where the figure stands.</param>
internal sealed record Unread(LabelEntry Label, Stretch Figure);

/// <summary>One way of reading a stretch of the plate.</summary>
/// <param name="From">Its first token.</param>
/// <param name="To">The token behind its last.</param>
/// <param name="Stands">Where its label stands.</param>
/// <param name="Cost">What speaks against it: dividers within it.</param>
/// <param name="Values">What it says; nothing for a stranger.</param>
internal sealed record Placement(int From, int To, LabelStands Stands, int Cost, params IReadOnlyList<PlacedValue> Values)
{
    /// <summary>What was announced but could not be read; null for all others.</summary>
    public Unread? Unread { get; init; }

    /// <summary>What it would be without its second figure; null for all that have none.</summary>
    public Placement? Main { get; init; }

    /// <summary>The field that its value goes to where the plate says its own field otherwise: the watts in beside the watts out. Null when it stays.</summary>
    public Field? YieldsTo { get; init; }

    /// <summary>Whether the others of its values stay where the first yields: they are figures of their own, and not what its label says.</summary>
    public bool OthersStay { get; init; }

    /// <summary>The same with all up to a token, which says nothing more.</summary>
    public Placement Until(int to) => this with { To = to, Values = [.. Values.Select(value => value with { Where = [.. value.Where.Select(stretch => stretch.To == To ? stretch with { To = to } : stretch)] })] };

    /// <summary>The same with all from a token on, which says nothing more.</summary>
    public Placement Since(int from) => this with { From = from, Values = [.. Values.Select(value => value with { Where = [.. value.Where.Select(stretch => stretch.From == From ? stretch with { From = from } : stretch)] })] };

    /// <summary>The same without what it says of a figure, which is asked for.</summary>
    public Placement Asking(Stretch figure) => new(From, To, Stands, Cost) { Unread = new(new(new(Values[0].Field.Name), Values[0].Field, null, IsSymbol: false), figure) };

    /// <summary>Whether it says the same as another: such readings of a stretch are one.</summary>
    public bool SaysAs(Placement other)
    {
        if (Values.Count != other.Values.Count) return false;
        for (var at = 0; at < Values.Count; at++)
        {
            if (Values[at].Field != other.Values[at].Field || Values[at].Text != other.Values[at].Text) return false;
        }

        return true;
    }
}
