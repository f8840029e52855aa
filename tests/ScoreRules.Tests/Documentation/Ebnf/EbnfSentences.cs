namespace ScoreRules.Tests.Documentation.Ebnf;

/// <summary>Writes sentences that follow the rules. The same number gives the same sentence; neighbouring numbers take other ways.</summary>
internal sealed class EbnfSentences(Dictionary<string, EbnfPart> rules, Func<string, int, string> special)
{
    private const int MostTimes = 2;
    private ulong state;

    /// <summary>A sentence for a rule.</summary>
    public string Write(string rule, int number)
    {
        state = ((ulong)number * 2_862_933_555_777_941_757UL) + 3_037_000_493UL;
        return string.Join(' ', Of(new EbnfPart.Reference(rule)).Where(piece => piece.Length > 0));
    }

    private IEnumerable<string> Of(EbnfPart part) => part switch
    {
        EbnfPart.Terminal terminal => [terminal.Text],
        EbnfPart.Special said => [special(said.Said, Pick(1000))],
        EbnfPart.Reference reference => Of(rules[reference.Name]),
        EbnfPart.Sequence sequence => [.. sequence.Parts.SelectMany(Of)],
        EbnfPart.Choice choice => Of(choice.Parts[Pick(choice.Parts.Length)]),
        EbnfPart.Optional optional => [.. Enumerable.Range(0, Pick((optional.Repeats ? MostTimes : 1) + 1)).SelectMany(_ => Of(optional.Part).ToList())],
        _ => throw new InvalidOperationException(),
    };

    // A linear congruential generator: same numbers on every machine.
    private int Pick(int count)
    {
        state = (state * 6_364_136_223_846_793_005UL) + 1_442_695_040_888_963_407UL;
        return (int)((state >> 33) % (ulong)count);
    }
}
