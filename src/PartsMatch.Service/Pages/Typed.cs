using Microsoft.Extensions.Primitives;
using PartsMatch.Fit.Judging;
using PartsMatch.Service.Access;

namespace PartsMatch.Service.Pages;

/// <summary>What came with a form or a link, by the names of its inputs, as it was typed. Inputs left blank are left out.</summary>
/// <remarks>An input that takes several choices comes several times, and is one text with commas.</remarks>
public sealed class Typed
{
    private readonly List<NamedText> _texts;

    private Typed(IEnumerable<NamedText> texts) => _texts = [.. texts.Where(text => !string.IsNullOrWhiteSpace(text.Text))];

    public static Typed Of(IEnumerable<KeyValuePair<string, StringValues>> pairs) =>
        new(pairs.Select(pair => new NamedText(pair.Key, string.Join(", ", pair.Value.Where(text => !string.IsNullOrWhiteSpace(text))))));

    /// <summary>A form that was posted. A choice of units that came with it is kept.</summary>
    /// <exception cref="BadHttpRequestException">It is no form, or one with more in it than any page sends.</exception>
    public static async Task<Typed> ReadAsync(HttpContext context)
    {
        if (!context.Request.HasFormContentType) throw new BadHttpRequestException("No form.", StatusCodes.Status415UnsupportedMediaType);
        try
        {
            var form = Of(await context.Request.ReadFormAsync(context.RequestAborted));
            UnitChoice.Keep(context, form);
            return form;
        }
        catch (InvalidDataException unreadable)
        {
            // What no page sends: too many inputs or too long ones, of which the framework says that a limit was exceeded; or a form that was cut short, or with a character that no text has.
            var status = unreadable.Message.Contains("limit", StringComparison.OrdinalIgnoreCase) ? StatusCodes.Status413PayloadTooLarge : StatusCodes.Status400BadRequest;
            throw new BadHttpRequestException("The form cannot be read.", status, unreadable);
        }
    }

    /// <summary>The text of one input; empty when it was left blank.</summary>
    public string this[string name] => _texts.Find(text => text.Name == name)?.Text ?? string.Empty;

    /// <summary>Whether the form was sent only to be shown again, with all that is typed: in other units, for another kind of part, or after signing in or out. Nothing is done with it yet.</summary>
    public bool IsOnlyShown => this[UnitChoice.Name].Length + this[OtherKind].Length + this[SignInLink.Onward].Length > 0;

    /// <summary>The input by which a form asks to be shown for another kind of part.</summary>
    public const string OtherKind = "to";

    /// <summary>All inputs but these.</summary>
    public IReadOnlyList<NamedText> Except(params IEnumerable<string> names) => [.. _texts.Where(text => !names.Contains(text.Name, StringComparer.Ordinal))];

    /// <summary>All inputs of a record: those whose name begins with its prefix and a dot.</summary>
    public IReadOnlyList<NamedText> Under(string prefix) =>
        [.. _texts.Where(text => text.Name.StartsWith($"{prefix}.", StringComparison.Ordinal)).Select(text => text with { Name = text.Name[(prefix.Length + 1)..], Text = text.Text.Trim() })];
}
