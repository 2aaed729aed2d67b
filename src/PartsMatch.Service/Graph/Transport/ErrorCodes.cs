using GraphQL;
using GraphQL.Execution;
using GraphQL.Validation;
using GraphQL.Validation.Errors.Custom;
using PartsMatch.Service.Counter;
using PartsMatch.Service.Graph.Limits;

namespace PartsMatch.Service.Graph.Transport;

/// <summary>Says each error under one of our codes. The library's own codes are dozens and change with it.</summary>
internal sealed class ErrorCodes : ErrorInfoProvider
{
    public override ErrorInfo GetInfo(ExecutionError executionError)
    {
        var extensions = new Dictionary<string, object?>(StringComparer.Ordinal) { ["code"] = CodeOf(executionError) };
        foreach (var (name, value) in executionError.Extensions ?? []) extensions[name] = value;
        return new() { Message = executionError.Message, Extensions = extensions };
    }

    private static string CodeOf(ExecutionError error) => error switch
    {
        SyntaxError => Codes.QueryUnreadable,
        TooDeepError => Codes.QueryTooDeep,
        ComplexityError => Codes.QueryTooCostly,
        InvalidVariableError => Codes.VariablesInvalid,
        DocumentError => Codes.QueryInvalid,
        TimeoutError => Codes.TooSlow,
        UnhandledError => Codes.Internal,
        _ => error.Code ?? Codes.Internal,
    };
}
