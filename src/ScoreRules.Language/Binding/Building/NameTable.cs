using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Binding.Building;

/// <summary>Declared names of one kind. A name that is not found is reported once, however often it is used.</summary>
/// <param name="kind">Head of the statements that declare such names.</param>
/// <param name="what">What such a thing is called in messages, with its article: "a movement".</param>
/// <param name="code">Code of the finding for a name that is not found.</param>
/// <param name="findings">Where findings go.</param>
/// <param name="doubts">Texts that may declare names but could not be read.</param>
internal sealed class NameTable<T>(string kind, string what, string code, DiagnosticBag findings, Doubts doubts)
    where T : class
{
    private const int MostListed = 8;
    private const int ShortWord = 3;
    private readonly Dictionary<string, (T Value, SourceLocation Location)> byKey = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> synonyms = new(StringComparer.Ordinal);
    private readonly List<string> names = [];
    private readonly Dictionary<string, DateOnly> absent = new(StringComparer.Ordinal);
    private readonly HashSet<string> used = new(StringComparer.Ordinal);

    /// <summary>Declared names in order.</summary>
    public IReadOnlyList<string> Names => names;

    /// <summary>What such a thing is called in messages, with its article.</summary>
    public string What => what;

    /// <summary>Declared names that no other statement mentions, with their places.</summary>
    public IEnumerable<(string Name, SourceLocation Location)> Unused =>
        names.Where(name => !used.Contains(NameText.Key(name))).Select(name => (name, byKey[NameText.Key(name)].Location));

    /// <summary>Declares a name; reports when it was declared before.</summary>
    public bool Declare(NameSyntax name, StatementSyntax statement, T value)
    {
        if (byKey.TryGetValue(name.Key, out var before))
        {
            findings.Add(Twice(name, statement, before.Location));
            return false;
        }

        Add(name.Text, statement.At(name.Span), value);
        return true;
    }

    /// <summary>Declares a name of something that is not in force on the day to judge for, unless something that is has the name.</summary>
    public void DeclareAbsent(NameSyntax name, StatementSyntax statement, T value, DateOnly day)
    {
        if (!byKey.ContainsKey(name.Key))
        {
            Add(name.Text, statement.At(name.Span), value);
            absent.Add(name.Key, day);
        }
    }

    /// <summary>Declares a name that cannot clash.</summary>
    public void Add(string name, SourceLocation location, T value)
    {
        if (byKey.TryAdd(NameText.Key(name), (value, location)))
        {
            names.Add(name);
        }
    }

    /// <summary>Replaces what a declared name means.</summary>
    public void Set(string name, T value)
    {
        var key = NameText.Key(name);
        byKey[key] = (value, byKey[key].Location);
    }

    /// <summary>Adds a word that is only used for suggestions.</summary>
    public void Hint(string synonym, string name) => synonyms.TryAdd(NameText.Key(synonym), name);

    /// <summary>The thing of a name, or null without a report.</summary>
    public T? TryFind(string name) => byKey.TryGetValue(NameText.Key(name), out var found) ? found.Value : null;

    /// <summary>Where a name was declared, or null.</summary>
    public SourceLocation? LocationOf(string name) => byKey.TryGetValue(NameText.Key(name), out var found) ? found.Location : null;

    /// <summary>Whether a name may be declared by a text that could not be read.</summary>
    public bool IsDoubtful(NameSyntax name) => doubts.MayDeclare(kind, name.Text);

    /// <summary>The thing of a name; reports when there is none.</summary>
    /// <param name="name">The name as written.</param>
    /// <param name="statement">The statement that uses it.</param>
    /// <param name="note">A remark to add to the finding.</param>
    public T? Find(NameSyntax name, StatementSyntax statement, string? note = null)
    {
        if (byKey.TryGetValue(name.Key, out var found))
        {
            used.Add(name.Key);
            if (absent.TryGetValue(name.Key, out var day) && Overlays.Validity.Covers(statement, day))
            {
                findings.Add(Absences.Used(name, statement, found.Location, day));
            }

            return found.Value;
        }

        if (!IsDoubtful(name) && doubts.IsNew(name.Text))
        {
            findings.Add(doubts.Dropped.Find(kind, name.Text) is { } dropped ? Gone(name, statement, dropped) : NotFound(name, statement, note));
        }

        return null;
    }

    private static Diagnostic Twice(NameSyntax name, StatementSyntax statement, SourceLocation before)
    {
        var here = statement.At(name.Span);
        var (own, other) = here.Source.IsShared && !before.Source.IsShared ? (before, here) : (here, before);
        var labels = own.Path == other.Path ? ("second time", "first time") : ("declared here", "and here");
        return new Diagnostic("SR2002", Severity.Error, $"\"{name.Text}\" is declared twice", new Label(own, labels.Item1))
        {
            Within = $"{statement.Spec.Words} \"{name.Text}\"",
            Section = ReferenceEquals(own, here) ? statement.Section : null,
            Others = [new Label(other, labels.Item2)],
            Suggestions = [new Suggestion("give one of them another name; to alter a house that this one builds on, say \"change\"")],
        };
    }

    private string Listed(NameSyntax name) => names.Count switch
    {
        0 => $"nothing in these files is {what}",
        <= MostListed => $"known here: {string.Join(", ", names)}",
        _ => Akin(name) is { Count: > 0 } akin ? $"known here, with a word in common: {string.Join(", ", akin)}" : "\"scorerules words\" and the folder of the house list what is known here",
    };

    private List<string> Akin(NameSyntax name)
    {
        var words = name.Key.Split(' ').Where(word => word.Length > ShortWord).ToHashSet(StringComparer.Ordinal);
        return [.. names.Where(known => NameText.Key(known).Split(' ').Any(words.Contains)).Order(StringComparer.Ordinal).Take(MostListed)];
    }

    private Diagnostic Gone(NameSyntax name, StatementSyntax statement, Overlays.DroppedName dropped) =>
        new(code, Severity.Error, dropped.NewName is null ? $"\"{name.Text}\" was dropped, and is still used" : $"\"{name.Text}\" is now called \"{dropped.NewName}\"", new Label(statement.At(name.Span), "used here"))
        {
            Within = BindContext.TitleOf(statement),
            Section = statement.Section,
            Others = [new Label(dropped.Place, dropped.NewName is null ? $"dropped by {dropped.House}" : $"renamed by {dropped.House}")],
            Suggestions =
            [
                dropped.NewName is { } renamed ? new Suggestion($"write \"{renamed}\"", new TextEdit(statement.At(name.Span), NameQuotes.Of(renamed)), EditSafety.Safe)
                : new Suggestion("change or drop this statement as well, or keep what it uses"),
            ],
        };

    private Diagnostic NotFound(NameSyntax name, StatementSyntax statement, string? note)
    {
        var near = synonyms.TryGetValue(name.Key, out var meant) ? [meant] : NameSuggester.Nearest(name.Text, names);
        var place = statement.At(name.Span);
        var safety = near.Length == 1 ? EditSafety.Safe : EditSafety.Shown;
        var listed = near.IsEmpty && note is null ? Listed(name) : null;
        return new Diagnostic(code, Severity.Error, $"\"{name.Text}\" is not {what}", new Label(place, "not declared anywhere"))
        {
            Within = BindContext.TitleOf(statement),
            Section = statement.Section,
            Notes = [.. new[] { note, listed }.OfType<string>()],
            Suggestions = [.. near.Select(suggestion => new Suggestion($"did you mean \"{suggestion}\"?", new TextEdit(place, NameQuotes.Of(suggestion)), safety))],
        };
    }
}
