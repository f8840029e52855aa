using ScoreRules.Language.Syntax.Tree;

namespace ScoreRules.Language.Syntax.Advice;

/// <summary>Words that newcomers start an inner line with, and the clause that says it. Used only in messages.</summary>
internal static class ClauseSynonyms
{
    // A word may stand for several clauses; the statement it stands in decides.
    private static readonly (string Written, string Clause)[] Pairs =
    [
        ("weight", "counts"), ("weighs", "counts"), ("weighted", "counts"), ("looks at", "reads"), ("measures", "reads"), ("uses", "reads"), ("based on", "reads"),
        ("scores", "worth"), ("marks", "worth"), ("value", "worth"), ("if", "when"), ("where", "when"), ("or if", "or when"), ("and when", "and"), ("but not when", "unless"),
        ("except when", "unless"), ("except if", "unless"), ("but not for", "except for"), ("except", "except for"), ("only", "only for"), ("reason", "because"),
        ("since", "because"), ("comment", "note"), ("name", "named"), ("replaces", "overrides"), ("starting", "from"), ("ends", "until"), ("till", "until"),
        ("maybe", "we may be wrong"), ("probably", "we think so"), ("certainly", "we are sure"), ("sure", "we are sure"), ("we are guessing", "we may be wrong"),
        ("muscles", "made of"), ("consists of", "made of"), ("baseline", "benchmark"), ("compared with", "benchmark"), ("measured against", "benchmark"),
        ("belongs to", "part of"), ("aka", "also known as"), ("alias", "also known as"), ("also called", "also known as"), ("called", "also known as"),
        ("targets", "trains"), ("works", "trains"), ("similar to", "like"), ("same as", "like"), ("variation of", "like"), ("guess", "at a guess"),
        ("author", "written by"), ("by", "written by"), ("reviewed", "checked"), ("scale", "rated"), ("unit", "in"), ("measured in", "in"), ("values", "one of"),
        ("choices", "one of"), ("description", "described as"), ("begin with", "start with"), ("add", "plus"), ("subtract", "minus"), ("multiply by", "times"),
        ("divide by", "divided by"), ("level", "severity"), ("show", "shown"), ("pros", "in favour"), ("cons", "against"), ("equipment", "kit"), ("gear", "kit"),
        ("pain", "sore"), ("avoid", "avoid when"), ("prefer", "prefer when"), ("everyone", "always"), ("all", "always"), ("result", "found"), ("subjects", "people"),
        ("hold it", "let it decide"), ("principles give or take", "principles may be off by"), ("one sd", "one standard deviation is worth"), ("lone study", "a lone study adds"),
        ("asks for a guess", "lets the reader guess first"), ("allows", "allows its authors"), ("spreads to likeness", "spreads to movements at least"),
    ];

    /// <summary>The words written, as long as in the line, and the clause meant; null when the line starts with none that fits the statement.</summary>
    public static (string Written, string Clause)? Find(string line, HeadSpec spec)
    {
        foreach (var (written, clause) in Pairs)
        {
            if (StartsWith(line, written) && spec.Lines.Any(use => use.Spec.Starter == clause))
            {
                return (line[..written.Length], clause);
            }
        }

        return null;
    }

    private static bool StartsWith(string line, string words) =>
        line.StartsWith(words, StringComparison.OrdinalIgnoreCase) && (line.Length == words.Length || char.IsWhiteSpace(line[words.Length]));
}
