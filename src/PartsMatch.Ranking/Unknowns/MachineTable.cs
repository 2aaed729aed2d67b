using System.Collections.Immutable;

namespace PartsMatch.Ranking.Unknowns;

/// <summary>Known machines, and what they say field by field: a need is compared with all of them, one field after the other.</summary>
internal sealed class MachineTable
{
    private readonly Dictionary<int, int[]> columns;

    public MachineTable(ImmutableArray<Machine> all, FieldCodes codes) =>
        (All, columns) = (all, codes.Telling.ToDictionary(field => field.At, field => all.Select(machine => machine.Codes[field.At]).ToArray()));

    /// <summary>The machines.</summary>
    public ImmutableArray<Machine> All { get; }

    /// <summary>Of every machine, the code of what it says in a field that machines are compared by.</summary>
    public int[] Column(TellingField field) => columns[field.At];
}
