namespace PartsMatch.Service.Commands;

/// <summary>What the command line asks of the service.</summary>
internal static class Questions
{
    /// <summary>How the need was understood.</summary>
    private const string NeedAnswer = """
            nameplate { fields { label text mended deduced } leftovers { text } complaints { sentence } }
            oldPart { number maker title status supersededBy { number saidBy on } }
            deductions { side field text because }
            contradictions { sentence }
        """;

    public const string Replacements = $$"""
        query ($need: NeedInput!, $first: Int!) {
          replacements(need: $need, first: $first) {
        {{NeedAnswer}}
            edges { node {
              part { number maker title status }
              fit likelihood likelihoodFrom onHand price { amount currency }
              changes { words isCheck }
              findings { title verdict isDeciding missing { side field } }
            } }
          }
        }
        """;

    /// <summary>Asked only when nothing fits: it judges every part.</summary>
    public const string NearestMisses = """
        query ($need: NeedInput!) {
          replacements(need: $need, first: 1) {
            nearestMisses { part { number maker title status } inTheWay { title sentence } }
          }
        }
        """;

    public const string FitSheet = $$"""
        query ($need: NeedInput!, $number: ID!) {
          fitSheet(need: $need, partNumber: $number) {
            part { number maker title status onHand price { amount currency } supersededBy { number saidBy on } }
            fit summary likelihood likelihoodFrom score
            changes { words isCheck }
            findings { title verdict sentence caution margin { value unit } source { text status } missing { side field } }
            willDiffer { name title unit old { low high } new { low high } ratio { low high } assumptions }
            notes { steps { stage words detail diagram } }
            kit { what quantity }
            cautions { stage words }
        {{NeedAnswer}}
          }
        }
        """;
}
