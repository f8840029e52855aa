using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;
using Superpower.Model;

namespace ScoreRules.Language.Syntax.Layout;

/// <summary>Answers where a line would fit, without reporting anything.</summary>
internal sealed class LineFit(SourceText source, LineView[] lines)
{
    /// <summary>Whether a line starts with a head.</summary>
    public bool IsHead(LineView line) => StarterTables.Heads.Match(source.Text, line.Content) is not null;

    /// <summary>Whether the words of a head stand in another order: "tiers change" for "change tiers".</summary>
    public bool IsChangedOver(HeadSpec head, LineView line, int restStart)
    {
        var rest = source.Slice(SourceSpan.FromBounds(Math.Min(restStart, line.Content.End), line.Content.End)).Trim();
        var turned = $"{rest} {head.Words}";
        return StarterTables.Heads.Match(turned, new SourceSpan(0, turned.Length)) is { } other && other.RestStart == turned.Length;
    }

    /// <summary>Whether a line holds a verb, as facts and tiers do.</summary>
    public bool HasVerb(LineView line) => line.HasVerb(source);

    /// <summary>Whether a line right below a statement goes on with it.</summary>
    public bool GoesOn(HeadSpec spec, LineView line) =>
        StarterTables.LinesOf(spec).Match(source.Text, line.Content) is not null
        || (spec.NamedLine is { } named && HasVerb(line) && Reads(named, line, line.Content.Start));

    /// <summary>
    /// Whether a line below a blank line goes on with the statement above. Prose may begin with a clause word, and the lines
    /// may belong to a statement whose first line is lost; so the line has to read well, and not stand there already.
    /// </summary>
    public bool Rejoins(StatementBuilder above, LineView line) =>
        StarterTables.LinesOf(above.Spec).Match(source.Text, line.Content) is { } match
            ? Reads(match.Value.Spec, line, match.RestStart) && !(match.Value.Once && above.Has(match.Value.Spec))
            : above.Spec.NamedLine is { } named && HasVerb(line) && !IsHead(line) && Reads(named, line, line.Content.Start);

    /// <summary>Whether what is set in below a line goes on with a statement too and repeats nothing of it; if not, the line began another statement.</summary>
    public bool NextGoOn(StatementBuilder above, int at)
    {
        while (++at < lines.Length && lines[at].Kind == LineKind.Inner)
        {
            var match = StarterTables.LinesOf(above.Spec).Match(source.Text, lines[at].Content);
            if (!GoesOn(above.Spec, lines[at]) || (match is { Value: { Once: true, Spec: var spec } } && above.Has(spec)))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>
    /// Whether an inner line that starts with a head begins a statement, set in by mistake. It does not if it states a fact
    /// or reads badly as one, nor if the line below it goes on with the statement above and not with the new one: then a
    /// first word is lost.
    /// </summary>
    public bool BeginsStatement(HeadSpec above, HeadSpec head, int restStart, int at)
    {
        if ((above.NamedLine is not null && HasVerb(lines[at])) || !Reads(head.FirstLine, lines[at], restStart))
        {
            return false;
        }

        var next = at + 1 < lines.Length ? lines[at + 1] : default;
        return next.Kind != LineKind.Inner || !GoesOn(above, next) || GoesOn(head, next);
    }

    /// <summary>The last line that a line which ends with a comma is continued in.</summary>
    public int LastOfContinued(int at)
    {
        while (at + 1 < lines.Length && lines[at + 1].Kind == LineKind.Inner && source.Text[lines[at].Content.End - 1] == ',')
        {
            at++;
        }

        return at;
    }

    /// <summary>Whether a line reads well as a kind of clause.</summary>
    public bool Reads(ClauseSpec spec, LineView line, int restStart)
    {
        var tokens = new List<Token<TokenKind>>();
        new LineScanner(source, new DiagnosticBag()).Scan(SourceSpan.FromBounds(restStart, line.Content.End), spec.Mode, tokens, ("", null));
        return spec.Parse(new TokenList<TokenKind>([.. tokens]), line.Content) is not null;
    }
}
