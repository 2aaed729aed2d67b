using System.Text;
using PartsMatch.Service.Exchange;
using PartsMatch.Service.Tests.Support;

namespace PartsMatch.Service.Tests.Lists;

/// <summary>Lists sent to a service, and their answers read as the tables that they are.</summary>
internal static class AnsweredList
{
    public static Task<Answered> SendAsync(this TestService service, string list, string query = "") =>
        service.SendAsync(new(HttpMethod.Post, $"/cross-reference{query}") { Content = new StringContent(list, Encoding.UTF8, "text/csv") });

    /// <summary>The rows of an answer, blank ones too.</summary>
    public static List<CsvRow> Rows(this Answered answer) => [.. new CsvReader(Encoding.UTF8.GetBytes(answer.Body), _ => false).Rows()];

    /// <summary>What is told of one replacement, or <paramref name="name"/> of the row.</summary>
    public static string Of(this CsvRow row, int replacement, string name) => row[FormattableString.Invariant($"replacement{replacement}.{name}")];
}
