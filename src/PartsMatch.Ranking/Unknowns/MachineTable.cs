using System.Collections.Immutable;

namespace PartsMatch.Ranking.Unknowns;

/// <summary>Known machines, and what they say field by field: a need is compared with all of them, one field after the other.</summary>
internal sealed class MachineTable
{
    private readonly Dictionary<int, int[]> columns;

    public MachineTable(ImmutableArray<Machine> all, FieldCodes codes) =>
        (All, columns) = (all, codes.Read.ToDictionary(at => at, at => all.Select(machine => machine.Codes[at]).ToArray()));

    /// <summary>The machines.</summary>
    public ImmutableArray<Machine> All { get; }

    /// <summary>Of every machine, the code of what it says in a field that some answer follows from, by the field's place.</summary>
    public int[] Column(int at) => columns[at];
}
