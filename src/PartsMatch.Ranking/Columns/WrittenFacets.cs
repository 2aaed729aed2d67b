using PartsMatch.Ranking.Engine;

namespace PartsMatch.Ranking.Columns;

/// <summary>What is read of a part, as bytes, question by question.</summary>
/// <param name="block">All of them, one behind the other.</param>
/// <param name="ends">Where each ends.</param>
internal sealed class WrittenFacets(byte[] block, int[] ends)
{
    /// <summary>What a question reads.</summary>
    public ReadOnlySpan<byte> this[int question] => block.AsSpan()[(question == 0 ? 0 : ends[question - 1])..ends[question]];

    /// <summary>What a part has, with what follows from its spec; of one that is not offered nothing is read.</summary>
    public static WrittenFacets Of(Questions questions, CataloguePart part)
    {
        if (!part.IsOffered) return new([], []);
        var deduced = questions.Family.Deduce(part.Spec).Spec;
        using var bytes = new MemoryStream();
        using var to = new BinaryWriter(bytes);
        var ends = new int[questions.Count];
        for (var question = 0; question < ends.Length; question++)
        {
            FacetForm.Of(questions.AspectOf(question).FacetType).Write(to, questions.Read(question, deduced));
            ends[question] = (int)bytes.Position;
        }

        return new(bytes.ToArray(), ends);
    }
}
