using GraphQL;
using GraphQL.Types;

namespace PartsMatch.Service.Graph;

/// <summary>The schema as text, as /graphql/schema serves it and docs/schema.graphql holds it.</summary>
public static class PrintedSchema
{
    /// <summary>Types in alphabetical order, fields in their own.</summary>
    public static string Text(IServiceProvider services) => services.GetRequiredService<ISchema>().Print().ReplaceLineEndings("\n");

    /// <summary>The same without a running service: it needs no store.</summary>
    public static string Text()
    {
        using var services = new ServiceCollection().AddLogging().AddOptions().AddGraph().BuildServiceProvider();
        return Text(services);
    }
}
