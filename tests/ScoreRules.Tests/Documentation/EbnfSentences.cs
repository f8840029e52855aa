namespace ScoreRules.Tests.Documentation;

/// <summary>Makes sentences of a rule in EBNF, with names that mean nothing.</summary>
internal sealed class EbnfSentences(IReadOnlyDictionary<string, EbnfNode> rules, int seed)
{
    private const int MostRepeated = 2;
    private static readonly string[] Words = ["quill", "ember", "thrush", "fjord", "o'clock", "Zander", "45-degree", "mid/long"];
    private static readonly string[] Numbers = ["0", "3", "2.5", "120", "-1"];
    private readonly Random random = new(seed);

    /// <summary>A sentence.</summary>
    public string Make(EbnfNode node) => node switch
    {
        EbnfTerminal terminal => terminal.Text is "," or "%" or "°" ? terminal.Text : $" {terminal.Text}",
        EbnfSpecial special => $" {Of(special.Described)}",
        EbnfReference reference => Make(rules[reference.Name]),
        EbnfOptional optional => random.Next(2) == 0 ? "" : Make(optional.Inner),
        EbnfRepeated repeated => string.Concat(Enumerable.Range(0, random.Next(MostRepeated + 1)).Select(_ => Make(repeated.Inner))),
        EbnfSequence sequence => string.Concat(sequence.Parts.Select(Make)),
        EbnfChoice choice => Make(choice.Parts[random.Next(choice.Parts.Count)]),
        _ => throw new InvalidOperationException(node.ToString()),
    };

    private string Of(string described) => described.Split(' ')[0] switch
    {
        "three" => "3.0.1",
        "digits," => Numbers[random.Next(Numbers.Length)],
        "a" => Words[random.Next(Words.Length)],
        "anything" when described.Contains("quote", StringComparison.Ordinal) => "\"quill, not for 3\"",
        "anything" => "some text, with 3 words and not more",
        _ => throw new InvalidOperationException(described),
    };
}
