using System.Buffers.Binary;
using System.Collections.Concurrent;
using System.Runtime.InteropServices;
using System.Security.Cryptography;
using PartsMatch.Fit;
using PartsMatch.Fit.Judging;
using PartsMatch.Ranking.Unknowns;

namespace PartsMatch.Ranking.Tests.Unknowns;

/// <summary>Known machines made of parts, and made of a catalogue that reads those that are kept when they are first asked for.</summary>
public sealed class KnownMachinesTests
{
    private static readonly Family Family = Families.Find("capacitor")!;

    /// <summary>More than are kept; some are retired.</summary>
    private static readonly List<CataloguePart> Parts =
        [.. Machines.Demo(Family).Cycle(KnownMachines.Most + 1500).Select((part, index) => part with { Number = FormattableString.Invariant($"K{index}"), IsOffered = index % 9 > 0 })];

    private static readonly List<Need> Open = [.. Parts.Take(400).Where((_, index) => index % 40 == 0).Select(NeedWithHoles)];

    [Fact]
    public void Both_ways_give_the_same_machines()
    {
        var (ofParts, ofCatalogue) = (KnownMachines.Of(Family, Parts), KnownMachines.Of(Catalogue.Of(Family, Parts), Read(Parts)));

        ofCatalogue.Count.ShouldBe(KnownMachines.Most);
        Said(ofCatalogue).ShouldBe(Said(ofParts));
        Said(ofParts).ShouldContain(said => said.Length > 0);
    }

    [Fact]
    public void Those_kept_are_the_first_by_their_numbers_hashes_and_each_is_read_once_when_a_need_asks()
    {
        var read = new ConcurrentBag<string>();
        var parts = Read(Parts);
        var machines = KnownMachines.Of(Catalogue.Of(Family, Parts), number =>
        {
            read.Add(number);
            return parts(number);
        });
        read.ShouldBeEmpty();

        Parallel.For(0, 8, index => machines.Complete(Open[index % Open.Count]));

        read.Order(StringComparer.Ordinal).ShouldBe(Parts.Select(part => part.Number).OrderBy(Hash).Take(KnownMachines.Most).Order(StringComparer.Ordinal));

        // A snapshot made of one that was read reads nothing again.
        var asked = read.Count;
        machines.With([Parts[0] with { Spec = Parts[1].Spec }]).Complete(Open[0]);
        read.Count.ShouldBe(asked);

        static ulong Hash(string number) => BinaryPrimitives.ReadUInt64LittleEndian(SHA256.HashData(MemoryMarshal.AsBytes(number.AsSpan())));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void A_change_is_right_before_the_machines_are_read_and_after_and_leaves_the_snapshot_before_it_as_it_was(bool isRead)
    {
        var few = Parts.Take(60).ToList();
        List<CataloguePart> changed = [few[3] with { Spec = few[20].Spec }, few[7] with { IsOffered = false }, few[9] with { Number = "ANOTHER" }, few[5] with { Spec = few[40].Spec }];
        var before = KnownMachines.Of(Catalogue.Of(Family, few), Read(few));
        if (isRead) Said(before).ShouldNotBeEmpty();

        var after = before.With(changed);

        Said(after).ShouldBe(Said(KnownMachines.Of(Family, [.. few, .. changed])));
        Said(before).ShouldBe(Said(KnownMachines.Of(Family, few)));
        after.Count.ShouldBe(61);
    }

    [Fact]
    public void A_part_that_could_not_be_read_is_asked_for_again_by_the_next_need()
    {
        var few = Parts.Take(60).ToList();
        var (fails, read) = (true, Read(few));
        var machines = KnownMachines.Of(Catalogue.Of(Family, few), number => Volatile.Read(ref fails) ? throw new IOException("The disk is away.") : read(number));

        Should.Throw<AggregateException>(() => machines.Complete(Open[0]));
        Volatile.Write(ref fails, false);

        Said(machines).ShouldBe(Said(KnownMachines.Of(Family, few)));
    }

    [Fact]
    public void What_was_written_of_them_says_the_same_and_only_those_that_complete_a_need_are_read_of_their_parts()
    {
        var asked = new ConcurrentBag<string>();
        var (parts, made) = (Read(Parts), KnownMachines.Of(Family, Parts));
        var (machines, asOf) = KnownMachines.ReadFrom(Written(made, 7), Family, number =>
        {
            asked.Add(number);
            return parts(number);
        }).ShouldNotBeNull();

        (asOf, machines.Count, machines.AreAsWritten, machines.AreMostlyRead).ShouldBe((7, KnownMachines.Most, true, true));
        asked.ShouldBeEmpty();
        Said(machines).ShouldBe(Said(made));
        asked.Distinct().Count().ShouldBeInRange(1, Open.Count * Completions.Usual);

        // And what is added to them stands beside them as beside those that were made.
        List<CataloguePart> changed = [Parts[3] with { Spec = Parts[20].Spec }, Parts[9] with { Number = "ANOTHER" }];
        var after = machines.With(changed);
        Said(after).ShouldBe(Said(made.With(changed)));
        after.AreAsWritten.ShouldBeFalse();
    }

    [Fact]
    public void Those_of_another_family_or_with_any_byte_changed_or_missing_are_not_read()
    {
        var few = KnownMachines.Of(Family, Parts.Take(60));
        var whole = Written(few, 7).ToArray();
        ShouldBeRefused(whole, Families.Find("motor")!);
        foreach (var at in Enumerable.Range(0, 200).Select(part => part * (whole.Length - 1) / 199))
        {
            ShouldBeRefused([.. whole[..at], (byte)(whole[at] ^ 1), .. whole[(at + 1)..]], Family);
            ShouldBeRefused(whole[..at], Family);
        }

        ShouldBeRefused([.. whole, 0], Family);
        KnownMachines.ReadFrom(new MemoryStream(whole), Family, Read(Parts)).ShouldNotBeNull();

        static void ShouldBeRefused(byte[] bytes, Family family) => KnownMachines.ReadFrom(new MemoryStream(bytes), family, Read(Parts)).ShouldBeNull();
    }

    private static MemoryStream Written(KnownMachines machines, long asOf)
    {
        var to = new MemoryStream();
        machines.WriteTo(to, asOf);
        to.Position = 0;
        return to;
    }

    private static Func<string, CataloguePart> Read(List<CataloguePart> parts)
    {
        var byNumber = parts.ToDictionary(part => part.Number);
        return number => byNumber[number];
    }

    /// <summary>All completions of all needs.</summary>
    private static List<string> Said(KnownMachines machines) =>
        [.. Open.Select(need => machines.Complete(need)).Select(all => FormattableString.Invariant($"{all.Agreeing}: {string.Join("; ", all.All.Select(one => $"{one.Weight} x {one.Need.Plate} {one.Need.Site}"))}"))];

    private static Need NeedWithHoles(CataloguePart part, int index) =>
        Family.ReadNeed(new(null, [.. Family.SpecShape.Write(part.Spec).Where((text, at) => text.Name != "rating" && at % 3 != index % 3)], [])).Need;
}

/// <summary>Test lists of any length.</summary>
file static class Cycles
{
    public static IEnumerable<T> Cycle<T>(this IEnumerable<T> values, int count)
    {
        var all = values.ToList();
        return Enumerable.Range(0, count).Select(index => all[index % all.Count]);
    }
}
