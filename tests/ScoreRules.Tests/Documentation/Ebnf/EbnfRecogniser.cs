namespace ScoreRules.Tests.Documentation.Ebnf;

/// <summary>Tells whether a text follows a rule. Follows all ways at once, so ambiguous rules do no harm.</summary>
/// <param name="rules">The rules.</param>
/// <param name="special">Where something said in prose, standing at an offset, may end.</param>
internal sealed class EbnfRecogniser(Dictionary<string, EbnfPart> rules, Func<string, string, int, IEnumerable<int>> special)
{
    /// <summary>Whether all of a text follows a rule.</summary>
    public bool Fits(string rule, string text) => Ends(new EbnfPart.Reference(rule), text, [0]).Any(end => Skip(text, end) == text.Length);

    private HashSet<int> Ends(EbnfPart part, string text, HashSet<int> starts) => part switch
    {
        EbnfPart.Terminal terminal => [.. starts.Select(start => Skip(text, start)).Where(start => Stands(terminal.Text, text, start)).Select(start => start + terminal.Text.Length)],
        EbnfPart.Special said => [.. starts.SelectMany(start => special(said.Said, text, Skip(text, start)))],
        EbnfPart.Reference reference => Ends(rules[reference.Name], text, starts),
        EbnfPart.Sequence sequence => sequence.Parts.Aggregate(starts, (at, one) => at.Count == 0 ? at : Ends(one, text, at)),
        EbnfPart.Choice choice => [.. choice.Parts.SelectMany(one => Ends(one, text, starts))],
        EbnfPart.Optional optional => Optional(optional, text, starts),
        _ => throw new InvalidOperationException(),
    };

    private HashSet<int> Optional(EbnfPart.Optional optional, string text, HashSet<int> starts)
    {
        var (all, fresh) = (new HashSet<int>(starts), starts);
        do
        {
            fresh = [.. Ends(optional.Part, text, fresh).Where(all.Add)];
        }
        while (optional.Repeats && fresh.Count > 0);
        return all;
    }

    private static bool Stands(string words, string text, int at) =>
        string.Compare(text, at, words, 0, words.Length, StringComparison.OrdinalIgnoreCase) == 0
        && (!char.IsLetter(words[^1]) || at + words.Length >= text.Length || !char.IsLetterOrDigit(text[at + words.Length]));

    private static int Skip(string text, int at)
    {
        while (at < text.Length && text[at] == ' ')
        {
            at++;
        }

        return at;
    }
}
