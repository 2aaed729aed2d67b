using System.Buffers.Binary;
using System.Collections.Immutable;
using System.Runtime.InteropServices;
using System.Security.Cryptography;
using PartsMatch.Fit.Judging;
using PartsMatch.Ranking.Columns;

namespace PartsMatch.Ranking.Unknowns;

/// <summary>Machines whose plates are known: what an unread plate may well say. Immutable; of a large catalogue a fair sample.</summary>
/// <remarks>
/// A machine is a part of the catalogue as it was sold, with what can be deduced of it; retired ones are out there, too. They are kept in the order of a hash of their numbers: the first
/// of them are a sample that neither depends on the order of writing nor favours a maker.
/// </remarks>
public sealed class KnownMachines
{
    /// <summary>How many are kept: a share of one in a hundred is then known to a tenth of itself.</summary>
    public const int Most = 10_000;

    private readonly Family family;
    private readonly ImmutableArray<SampledMachine> sample;
    private readonly FieldCodes codes;
    private readonly Lock reading = new();
    private MachineTable? read;

    private KnownMachines(Family family, IEnumerable<SampledMachine> candidates, FieldCodes codes)
    {
        (this.family, this.codes) = (family, codes);
        sample = [.. candidates.OrderBy(one => one.Order).ThenBy(one => one.Number, StringComparer.Ordinal).Take(Most)];
    }

    /// <summary>How many there are.</summary>
    public int Count => sample.Length;

    /// <summary>Whether most of them have been read, so that what was read is worth being kept.</summary>
    public bool AreMostlyRead => 2 * sample.Count(machine => machine.Read.IsValueCreated) > sample.Length;

    /// <summary>Whether they came out of what <see cref="WriteTo"/> wrote, and none was added since.</summary>
    public bool AreAsWritten { get; private init; }

    /// <summary>The machines that a family's parts are.</summary>
    public static KnownMachines Of(Family family, IEnumerable<CataloguePart> parts) => new KnownMachines(family, [], new(family)).With(parts);

    /// <summary>The machines that a catalogue's parts are. Those that are kept are read once, when the first need with unknowns asks for them.</summary>
    /// <param name="catalogue">The catalogue: its numbers tell which are kept.</param>
    /// <param name="read">
    /// Tells of a number what the part is at the moment of this snapshot, whatever was written since; asked from many threads, of a number more than once at worst.
    /// </param>
    public static KnownMachines Of(Catalogue catalogue, Func<string, CataloguePart> read)
    {
        // A million numbers are not sorted to keep a hundredth: only their hashes are, and the texts are thrown away again.
        var parts = catalogue.Book.Parts;
        var orders = new ulong[parts.Length];
        Parallel.For(0, parts.Length, at => orders[at] = OrderOf(catalogue.Book.NumberOf(parts[at])));
        ulong[] sorted = [.. orders];
        Array.Sort(sorted);
        var last = sorted.Length > Most ? sorted[Most - 1] : ulong.MaxValue;
        var (family, codes) = (catalogue.Family, new FieldCodes(catalogue.Family));
        return new(family, parts.Where((_, at) => orders[at] <= last).Select(part => Sampled(family, catalogue.Book.NumberOf(part), read, codes)), codes);
    }

    /// <summary>The machines that were written; null when what is there is not whole, or was not written of this family by this code.</summary>
    /// <param name="from">Stands at the first byte; nothing may follow the last.</param>
    /// <param name="family">The family.</param>
    /// <param name="read">Tells of a number what the part is, as in <see cref="Of(Catalogue, Func{string, CataloguePart})"/>: asked of those alone that a need is completed with.</param>
    /// <returns>The machines, and what was said when they were written.</returns>
    /// <exception cref="IOException">It cannot be read from.</exception>
    public static (KnownMachines Machines, long AsOf)? ReadFrom(Stream from, Family family, Func<string, CataloguePart> read)
    {
        using var reader = new ColumnsReader(from, family);
        if (reader.Refusal is not null) return null;
        var (asOf, written) = (reader.NextFigure(), reader.Next<byte>());
        if (!reader.IsWhole()) return null;
        using var bytes = new BinaryReader(new MemoryStream(written));
        var known = new FieldCodes(family, bytes);
        var machines = new SampledMachine[bytes.ReadInt32()];
        foreach (ref var machine in machines.AsSpan())
        {
            var (number, order) = (bytes.ReadString(), bytes.ReadUInt64());
            machine = new(order, number, new(new Machine(number, order, SpecOf(family, number, read), known.CodesFrom(bytes))));
        }

        return (new(family, machines, known) { AreAsWritten = true }, asOf);
    }

    /// <summary>Writes what all of them say, so that it need not be read of their specs again.</summary>
    /// <param name="to">Nothing else may be written behind it.</param>
    /// <param name="asOf">What the reader is to be told, such as of which parts they are.</param>
    /// <exception cref="IOException">It cannot be written to.</exception>
    public void WriteTo(Stream to, long asOf)
    {
        var all = All().All;
        using var written = new MemoryStream();
        using var bytes = new BinaryWriter(written);
        codes.WriteTo(bytes);
        bytes.Write(all.Length);
        foreach (var machine in all)
        {
            bytes.Write(machine.Number);
            bytes.Write(machine.Order);
            foreach (var code in machine.Codes) bytes.Write7BitEncodedInt(code);
        }

        var writer = new ColumnsWriter();
        writer.Add(asOf);
        writer.Add<byte>(written.ToArray());
        writer.WriteTo(to, family);
    }

    /// <summary>The same with machines added, or put in the place of those with the same number.</summary>
    public KnownMachines With(IEnumerable<CataloguePart> changed)
    {
        var last = new Dictionary<string, CataloguePart>(StringComparer.Ordinal);
        foreach (var part in changed) last[part.Number] = part;
        if (last.Count == 0) return this;
        var added = last.Values.Select(part => Sampled(family, part.Number, _ => part, codes));
        return new(family, sample.Where(machine => !last.ContainsKey(machine.Number)).Concat(added), codes);
    }

    /// <summary>
    /// What a need with unknowns may be: known machines, by how near they come to what is known of it. None when no deciding aspect is open for want of the plate, or when no machine is known.
    /// </summary>
    /// <param name="need">The need.</param>
    /// <param name="most">How many different completions at most; <see cref="Completions.Most"/> at most.</param>
    public Completions Complete(Need need, int most = Completions.Usual) =>
        sample.IsEmpty || !IsOpen(need) ? Completions.None : Completed(need, All(), most);

    /// <summary>All machines that count for a need, whether anything is open in it or not, each by itself: what <see cref="Complete"/> sums up.</summary>
    public IReadOnlyList<NearMachine> Near(Need need)
    {
        if (sample.IsEmpty) return [];
        var all = All();
        var weights = Nearness.Of(all, Known(need)).Weights;
        return [.. all.All.Select((machine, index) => new NearMachine(machine.Number, machine.Spec, weights[index])).Where(machine => machine.Weight > 0)];
    }

    /// <summary>Whether a deciding aspect cannot be answered even of the old part itself, and the plate could tell.</summary>
    private bool IsOpen(Need need)
    {
        var asked = codes.Deciding.Where(one => Array.Exists(one.Plate, field => field.Get(need.Plate) is null)).ToList();
        if (asked.Count == 0) return false;
        return asked.Exists(one => one.Aspect.JudgeUnread(need, one.Aspect.FacetOf(need.Plate)).Verdict == Verdict.Unknown);
    }

    private Completions Completed(Need need, MachineTable all, int most) => Completions.Of(family, need, codes, all, Known(need), most);

    /// <summary>What is known of a need, once all machines are read: there are codes for all that they say.</summary>
    private List<KnownField> Known(Need need) =>
        [.. codes.Telling.Select(field => (field, value: codes.ValueOf(need, field.At))).Where(one => one.value is not null).Select(one => new KnownField(one.field, codes.Apart(one.field.At, one.value!)))];

    /// <summary>All of them, in the order of their hashes. What one snapshot has read the others need not.</summary>
    private MachineTable All()
    {
        lock (reading) return read ??= new([.. sample.AsParallel().AsOrdered().Select(machine => machine.Read.Value)], codes);
    }

    private static SampledMachine Sampled(Family family, string number, Func<string, CataloguePart> read, FieldCodes codes)
    {
        var order = OrderOf(number);
        return new(order, number, new(
            () =>
            {
                var known = SpecOf(family, number, read);
                return new(number, order, known, codes.Of(known.Value));
            },
            LazyThreadSafetyMode.PublicationOnly));
    }

    /// <summary>A copy, so that what was worked out while deducing is not kept with ten thousand machines.</summary>
    private static Lazy<Spec> SpecOf(Family family, string number, Func<string, CataloguePart> read) => new(() => family.Deduce(read(number).Spec).Spec with { }, LazyThreadSafetyMode.PublicationOnly);

    private static ulong OrderOf(string number)
    {
        Span<byte> hash = stackalloc byte[SHA256.HashSizeInBytes];
        SHA256.HashData(MemoryMarshal.AsBytes(number.AsSpan()), hash);
        return BinaryPrimitives.ReadUInt64LittleEndian(hash);
    }

    /// <summary>One that is kept.</summary>
    /// <param name="Order">Its place among all.</param>
    /// <param name="Number">Its number.</param>
    /// <param name="Read">What it is, once that was asked. A failure is not kept: the next need asks again.</param>
    private sealed record SampledMachine(ulong Order, string Number, Lazy<Machine> Read);
}
