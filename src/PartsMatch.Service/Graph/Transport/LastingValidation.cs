using System.Runtime.CompilerServices;
using GraphQL.Validation;
using GraphQLParser.AST;

namespace PartsMatch.Service.Graph.Transport;

/// <summary>Judges an operation without variables once: it costs and says the same whenever its document is sent again. One with variables is judged each time.</summary>
/// <remarks>A result is kept as long as its document is: <see cref="KnownDocuments"/>.</remarks>
internal sealed class LastingValidation : IDocumentValidator
{
    private readonly DocumentValidator _validator = new();
    private readonly ConditionalWeakTable<GraphQLOperationDefinition, IValidationResult> _passed = [];

    public Task<IValidationResult> ValidateAsync(in ValidationOptions options) =>
        _passed.TryGetValue(options.Operation, out var result) ? Task.FromResult(result) : JudgeAsync(_validator.ValidateAsync(options), options.Operation);

    private async Task<IValidationResult> JudgeAsync(Task<IValidationResult> judging, GraphQLOperationDefinition operation)
    {
        var result = await judging;
        if (result.IsValid && operation.Variables is not { Count: > 0 }) _passed.AddOrUpdate(operation, result);
        return result;
    }
}
