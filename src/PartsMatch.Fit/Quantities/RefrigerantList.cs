using System.Collections;
using PartsMatch.Fit.Physics;

namespace PartsMatch.Fit.Quantities;

/// <summary>The refrigerants that a part is listed for, each once, by rising number. Equal when the same are listed.</summary>
public sealed class RefrigerantList : IReadOnlyList<Refrigerant>, IEquatable<RefrigerantList>, IHaveTextForm<RefrigerantList>
{
    private static readonly Dictionary<Refrigerant, int> Places = Refrigerants.All.Select((one, at) => (one, at)).ToDictionary(pair => pair.one, pair => pair.at);

    private readonly Refrigerant[] all;

    /// <summary>Keeps the refrigerants.</summary>
    public RefrigerantList(params IEnumerable<Refrigerant> refrigerants) => all = [.. refrigerants.Distinct().OrderBy(one => Places[one])];

    /// <inheritdoc/>
    public static TextForm<RefrigerantList> Form { get; } = new RefrigerantListForm();

    /// <inheritdoc/>
    public int Count => all.Length;

    /// <inheritdoc/>
    public Refrigerant this[int index] => all[index];

    /// <summary>The place of a refrigerant among all that are known: a facet's plain number for it.</summary>
    public static int PlaceOf(Refrigerant refrigerant) => Places[refrigerant];

    /// <inheritdoc/>
    public bool Equals(RefrigerantList? other) => other is not null && all.AsSpan().SequenceEqual(other.all);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as RefrigerantList);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        var hash = default(HashCode);
        foreach (var one in all) hash.Add(one);
        return hash.ToHashCode();
    }

    /// <inheritdoc/>
    public IEnumerator<Refrigerant> GetEnumerator() => ((IEnumerable<Refrigerant>)all).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    private sealed class RefrigerantListForm : TextForm<RefrigerantList>
    {
        public override string Expected => "refrigerants with commas between, such as R-404A, R-507A";

        public override string Example => "R-404A, R-507A";

        public override IReadOnlyList<string> Words => Refrigerant.Form.Words;

        public override bool JoinsSeveral => true;

        public override TextReading<RefrigerantList> Read(string text)
        {
            List<Refrigerant> found = [];
            foreach (var name in text.Split([',', ';', '/'], StringSplitOptions.TrimEntries))
            {
                if (Refrigerants.Find(name) is not { } one) return TextReading<RefrigerantList>.Refused(name.Length == 0 ? "nothing is written" : $"“{name}” is no refrigerant that is known here; write {Expected}");
                found.Add(one);
            }

            return TextReading<RefrigerantList>.Of(new(found));
        }

        public override string Write(RefrigerantList value, Units units = Units.AsGiven) => string.Join(", ", value.Select(one => one.Name));
    }
}
