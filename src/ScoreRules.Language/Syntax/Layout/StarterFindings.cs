using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax.Advice;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Syntax.Layout;

/// <summary>Findings about lines that start with no word the language knows there. Where one word was plainly meant, says so and lets reading go on with it.</summary>
internal sealed class StarterFindings(SourceText source, DiagnosticBag findings)
{
    private const int MostListed = 8;
    private const int MostMeant = 3;
    private const int FewestWordsOfProse = 4;
    private static readonly List<string> Heads = [.. StatementTable.All.Select(head => head.Words).Where(words => !words.EndsWith(" caution", StringComparison.Ordinal))];

    /// <summary>Whether the first words of a line are nearly those of a line of this kind of statement, or are commonly written for one.</summary>
    public bool IsNear(LineView line, HeadSpec spec) =>
        ClauseSynonyms.Find(source.Slice(line.Content), spec) is not null || Words.NearestStarter(source, line.Content, Starters(spec)).Near.Length > 0
        || Array.Exists(Words.BrokenStarters(source, line.Content, Starters(spec)), broken => source.Slice(line.Content).Split(' ')[0] == broken.Starter.Split(' ')[0]);

    /// <summary>An inner line whose first words its statement does not know.</summary>
    public StarterGuess<ClauseUse>? UnknownClause(LineView line, StatementBuilder statement)
    {
        var (span, written, near) = Words.NearestStarter(source, line.Content, Starters(statement.Spec));
        if (!near.Any(starter => starter.Contains(' ', StringComparison.Ordinal)) && Words.BrokenStarters(source, line.Content, Starters(statement.Spec)) is { Length: > 0 } broken)
        {
            var place = broken.Select(one => one.Place).MaxBy(one => one.Length);
            Add("SR1004", place, $"No line below \"{statement.Spec.Words}\" starts with \"{source.Slice(place)}\"", statement, [], [.. broken.Select(one => Replace($"did you mean \"{one.Starter}\"?", one.Place, one.Starter, EditSafety.Shown))]);
            return null;
        }

        if (near.IsEmpty && ClauseSynonyms.Find(source.Slice(line.Content), statement.Spec) is { } synonym)
        {
            var place = line.Content with { Length = synonym.Written.Length };
            Add("SR1004", place, $"No line below \"{statement.Spec.Words}\" starts with \"{source.Slice(place)}\"", statement, [], Replace($"say it with \"{synonym.Clause}\"", place, synonym.Clause, EditSafety.Shown));
            return MayGoOn(line, place, synonym.Clause, statement.Spec) ? Use(statement.Spec, synonym.Clause, place.End) : null;
        }

        var edits = near.Select(name => Replace($"did you mean \"{name}\"?", span, name, near.Length == 1 ? EditSafety.Safe : EditSafety.Shown));
        Add("SR1004", span, $"No line below \"{statement.Spec.Words}\" starts with \"{written}\"", statement, near.IsEmpty ? Listed(statement.Spec) : [], [.. edits]);
        return near.Length == 1 ? Use(statement.Spec, near[0], span.End) : null;
    }

    /// <summary>A head whose lines all belong to other kinds of statement.</summary>
    public void ReplacedHead(LineView line, HeadSpec head, IReadOnlyList<HeadSpec> meant)
    {
        var place = line.Content with { Length = head.Words.Length };
        var edits = meant.Count > MostMeant ? [] : meant.Select(other => Replace($"did you mean \"{other.Words}\"?", place, other.Words, EditSafety.Shown));
        string[] notes = meant.Count > MostMeant ? [$"such lines stand below: {string.Join(", ", meant.Select(other => other.Words).Take(MostListed))}"] : [];
        Add("SR1025", place, $"What stands below \"{head.Words}\" belongs to another kind of statement", null, head.NamedLine is null ? [.. notes, .. Listed(head)] : notes, [.. edits]);
    }

    /// <summary>Edge lines that start with no head: a misspelt head, a word from elsewhere, or prose. Passes over all lines of a run of prose.</summary>
    public StarterGuess<HeadSpec>? UnknownHead(LineView[] lines, ref int at)
    {
        var line = lines[at];
        if (HeadSynonyms.Find(source.Slice(line.Content)) is { } synonym)
        {
            var place = line.Content with { Length = synonym.Written.Length };
            Add("SR1003", place, $"No statement starts with \"{source.Slice(place)}\"", null, [], synonym.Head is { } head ? Replace(synonym.Advice, place, head, EditSafety.Shown) : new Suggestion(synonym.Advice));
            return synonym.SameForm && IsPlain(SourceSpan.FromBounds(place.End, line.Content.End)) ? Head(synonym.Head!, place.End) : null;
        }

        var (span, written, near) = Words.NearestStarter(source, line.Content, Heads);
        if (near.IsEmpty && source.Slice(line.Content).Split(' ').Length >= FewestWordsOfProse)
        {
            ReportProseAtEdge(lines, ref at);
            return null;
        }

        if (near.IsEmpty && written.ToLowerInvariant() is "change" or "drop")
        {
            ReportKind(span, written.ToLowerInvariant());
            return null;
        }

        Add("SR1003", span, $"No statement starts with \"{written}\"", null, near.IsEmpty ? ["a statement starts with a word such as attribute, target, tiers, criterion, call, give, movement or expect"] : [], [.. near.Select(name => Replace($"did you mean \"{name}\"?", span, name, near.Length == 1 ? EditSafety.Safe : EditSafety.Shown))]);
        return near.Length == 1 ? Head(near[0], span.End) : null;
    }

    /// <summary>Inner lines below a blank line that fit no statement: their first line is lost, or they are prose.</summary>
    /// <param name="lines">All lines of the file.</param>
    /// <param name="at">Index of the first of them.</param>
    /// <param name="above">What a sentence calls the statement above the blank line; null without one.</param>
    public void Orphans(LineView[] lines, int at, string? above)
    {
        if (IsProse(lines, at))
        {
            var gap = source.At(new SourceSpan(source.LineSpan(lines[at].Number).Start, 0));
            ReportProse(lines[at], lines[LastOfBlock(lines, at)], new Suggestion("put \"philosophy\" above it", new TextEdit(gap, "philosophy\n"), EditSafety.Safe));
            return;
        }

        string[] notes = above is null ? [] : [$"{above} ended at the blank line"];
        Add("SR1005", lines[at].Content, "No statement begins above this line", null, notes, new Suggestion("start with a line at the edge, such as \"criterion ...\"; what goes on with it is set in right below"));
    }

    /// <summary>Whether a block of inner lines reads like prose: a sentence, and no clause of any statement in its first two lines.</summary>
    public bool IsProse(LineView[] lines, int first) =>
        source.Slice(lines[first].Content).Split(' ').Length >= FewestWordsOfProse
        && Enumerable.Range(first, Math.Min(2, LastOfBlock(lines, first) - first + 1)).All(i => StarterTables.AnyLine.Match(source.Text, lines[i].Content) is null)
        && !new LineFit(source, lines).Reads(VocabularyGrammar.Tier, lines[first], lines[first].Content.Start);

    private static List<string> Starters(HeadSpec spec) => [.. spec.Lines.Select(use => use.Spec.Starter).Where(starter => starter.Length > 0)];

    private static string[] Listed(HeadSpec spec)
    {
        var own = Starters(spec).Where(starter => !Uniform.Lines.Any(use => use.Spec.Starter == starter)).ToList();
        var more = own.Count > MostListed ? ", and others" : "";
        return own.Count == 0 ? ["a line here starts with one of: because, note, source, only for, except for, from, until, named"] : [$"a line here starts with one of: {string.Join(", ", own.Take(MostListed))}{more}; or with because, note, source, only for, except for"];
    }

    private static StarterGuess<ClauseUse>? Use(HeadSpec spec, string starter, int restStart) =>
        spec.Lines.FirstOrDefault(use => use.Spec.Starter == starter) is { } use ? new StarterGuess<ClauseUse>(use, restStart) : null;

    // Signs that nobody sees may be what the first words are not known for; they would be told a second time.
    private bool IsPlain(SourceSpan place) => SignNames.Meant(source.Slice(place)) == source.Slice(place).Replace('\t', ' ');

    private static StarterGuess<HeadSpec>? Head(string words, int restStart) =>
        StatementTable.Own.FirstOrDefault(head => head.Words == words) is { } head ? new StarterGuess<HeadSpec>(head, restStart) : null;

    // "only" may begin a sentence, "avoid plover" is no condition, and where a clause word follows the other word was one too many.
    private bool MayGoOn(LineView line, SourceSpan written, string clause, HeadSpec spec)
    {
        var rest = SourceSpan.FromBounds(line.Content.End - source.Slice(line.Content)[written.Length..].TrimStart().Length, line.Content.End);
        return clause is not ("only for" or "except for" or "avoid when" or "prefer when") && StarterTables.LinesOf(spec).Match(source.Text, rest) is null;
    }

    private void ReportKind(SourceSpan place, string verb)
    {
        var kinds = Heads.Where(words => words.StartsWith(verb + " ", StringComparison.Ordinal)).Select(words => words[(verb.Length + 1)..]);
        Add("SR1003", place, $"Nothing behind \"{verb}\" says what kind of thing is meant", null, [], new Suggestion($"write \"{verb}\" and one of: {string.Join(", ", kinds)}; then its name"));
    }

    private static int LastOfBlock(LineView[] lines, int first)
    {
        while (first + 1 < lines.Length && lines[first + 1].Kind == LineKind.Inner)
        {
            first++;
        }

        return first;
    }

    private void ReportProseAtEdge(LineView[] lines, ref int at)
    {
        var first = lines[at];
        while (at + 1 < lines.Length && lines[at + 1].Kind == LineKind.Edge && StarterTables.Heads.Match(source.Text, lines[at + 1].Content) is null)
        {
            at++;
        }

        var place = first.Content.Cover(lines[at].Content);
        var mended = "philosophy\n" + string.Join('\n', source.Slice(place).Split('\n').Select(text => "  " + text.TrimEnd('\r')));
        ReportProse(first, lines[at], Replace("put \"philosophy\" above it and set it in", place, mended, EditSafety.Safe));
    }

    private void ReportProse(LineView first, LineView last, Suggestion suggestion)
    {
        var word = source.Slice(first.Content).Split([' ', '\t'], 2)[0];
        var lines = first.Number == last.Number ? "" : $"prose, down to line {last.Number.ToString(System.Globalization.CultureInfo.InvariantCulture)}";
        findings.Add(new Diagnostic("SR1016", Severity.Error, $"This reads like prose: no statement starts with \"{word}\"", new Label(source.At(first.Content), lines)) { Suggestions = [suggestion] });
    }

    private Suggestion Replace(string advice, SourceSpan place, string with, EditSafety safety) => new(advice, new TextEdit(source.At(place), with), safety);

    private void Add(string code, SourceSpan place, string headline, StatementBuilder? within, string[] notes, params Suggestion[] suggestions) =>
        findings.Add(new Diagnostic(code, Severity.Error, headline, new Label(source.At(place), ""))
        {
            Within = within?.Title,
            Section = within?.Section,
            Notes = [.. notes],
            Suggestions = [.. suggestions],
        });
}
