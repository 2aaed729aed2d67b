using System.Diagnostics.CodeAnalysis;

namespace PartsMatch.Service.Counter;

/// <summary>Why something that was asked is not answered: what is wrong, at which place of the input, and what would be right.</summary>
/// <param name="Code">One of <see cref="Codes"/>.</param>
/// <param name="At">The place, with dots: plate.power. Each edge puts its own place before it.</param>
/// <param name="Message">The whole sentence for a person.</param>
public sealed record Refusal(string Code, string At, string Message)
{
    public Refusal Under(string place) => this with { At = At.Length == 0 ? place : $"{place}.{At}" };
}

/// <summary>What was asked for, or all that is wrong with the asking, at once.</summary>
public sealed record Answer<T>(T? Value, IReadOnlyList<Refusal> Refusals)
    where T : class
{
    [MemberNotNullWhen(true, nameof(Value))]
    public bool IsGiven => Value is not null;

    public static implicit operator Answer<T>(T value) => new(value, []);

    public static implicit operator Answer<T>(Refusal refusal) => new(null, [refusal]);

    public static Answer<T> Refused(IReadOnlyList<Refusal> refusals) => new(null, refusals);
}
