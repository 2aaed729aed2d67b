using System.Collections.Immutable;
using System.Numerics;
using System.Runtime.InteropServices;

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

    /// <summary>Takes machines, by their places, for the same that say the same in some fields.</summary>
    /// <param name="fields">The fields' places.</param>
    public IEqualityComparer<int> SayingTheSame(IReadOnlyList<int> fields) => new SameIn([.. fields.Select(Column)], All.Length);

    /// <summary>Hashes are made field by field, several machines at once.</summary>
    private sealed class SameIn : IEqualityComparer<int>
    {
        private readonly int[][] columns;
        private readonly int[] hashes;

        public SameIn(int[][] columns, int machines)
        {
            (this.columns, hashes) = (columns, new int[machines]);
            foreach (var column in columns) Take(column);
        }

        public bool Equals(int one, int other)
        {
            foreach (var column in columns)
            {
                if (column[one] != column[other]) return false;
            }

            return true;
        }

        public int GetHashCode(int machine) => hashes[machine];

        private void Take(int[] column)
        {
            var hashesAtOnce = MemoryMarshal.Cast<int, Vector<int>>(hashes.AsSpan());
            var columnAtOnce = MemoryMarshal.Cast<int, Vector<int>>(column.AsSpan());
            for (var at = 0; at < hashesAtOnce.Length; at++) hashesAtOnce[at] = (hashesAtOnce[at] * 31) + columnAtOnce[at];
            for (var machine = hashesAtOnce.Length * Vector<int>.Count; machine < hashes.Length; machine++) hashes[machine] = (hashes[machine] * 31) + column[machine];
        }
    }
}
