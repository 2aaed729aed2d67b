using System.ComponentModel;
using GraphQL.Types;
using PartsMatch.Service.Counter;

namespace PartsMatch.Service.Graph.Results;

[Description("The part is on the disk as it stands here.")]
internal sealed class PartWritten(CatalogueEntry part)
{
    [Description("The part, with its new version.")]
    public Part Part => new(part);
}

[Description("Nothing was written: the catalogue has something else there than the writer knew of.")]
internal sealed class PartConflict(CatalogueEntry present, string sentence)
{
    [Description("What the catalogue has.")]
    public Part Present => new(present);

    [Description("What is in the way, in plain words.")]
    public string Sentence => sentence;
}

/// <summary>How a write ended.</summary>
internal sealed class PartWriteUnion : UnionGraphType
{
    public PartWriteUnion()
    {
        Name = "PartWriteResult";
        Description = "How a write ended. A conflict is an answer, not an error: read what is there now, and decide.";
        Type<AutoRegisteringObjectGraphType<PartWritten>>();
        Type<AutoRegisteringObjectGraphType<PartConflict>>();
    }

    public static object Of(PartWrite write) => write.Conflict is { } sentence ? new PartConflict(write.Part, sentence) : new PartWritten(write.Part);
}
