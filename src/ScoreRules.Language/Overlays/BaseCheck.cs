using System.Collections.Immutable;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax;
using ScoreRules.Language.Syntax.Grammar;
using ScoreRules.Language.Syntax.Nodes;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Overlays;

/// <summary>Checks that each house of a chain stands on the house it says it builds on.</summary>
/// <param name="nearby">Names of the houses in the folders beside, for suggestions; one that stands there twice is doubtful.</param>
/// <param name="findings">Where findings go.</param>
internal sealed class BaseCheck(ImmutableArray<string> nearby, DiagnosticBag findings)
{
    /// <summary>Whether every base is there.</summary>
    /// <param name="rulesets">The statements <c>ruleset</c> of the chain, base first.</param>
    public bool Holds(IReadOnlyList<StatementSyntax> rulesets)
    {
        for (var i = rulesets.Count - 1; i >= 0; i--)
        {
            var below = i == 0 ? null : rulesets[i - 1];
            if (rulesets[i].Find(HouseGrammar.BuildsOn) is { } line && !Fits(rulesets[i], line, below, rulesets))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Whether a version is the one asked for; fewer numbers ask for less: "3" is content with 3.1.4.</summary>
    public static bool IsVersion(string asked, string found)
    {
        var (wanted, given) = (asked.Split('.'), found.Split('.'));
        return wanted.Select((part, i) => (i < given.Length ? given[i] : "0").TrimStart('0') == part.TrimStart('0')).All(same => same);
    }

    private bool Fits(StatementSyntax ruleset, ClauseSyntax<BaseSyntax> line, StatementSyntax? below, IReadOnlyList<StatementSyntax> chain)
    {
        var name = line.Content.Name;
        if (below is null || below.Head<NameSyntax>().Key != name.Key)
        {
            NoBase(ruleset, name, chain.FirstOrDefault(house => house.Head<NameSyntax>().Key == name.Key));
            return false;
        }

        var found = below.Find(HouseGrammar.Version);
        if (line.Content.Version is { } asked && found is not null && !IsVersion(asked.Text, found.Content.Text))
        {
            Report("SR2102", $"\"{name.Text}\" is version {found.Content.Text}, and version {asked.Text} is asked for", ruleset, asked.Span, "asked for here",
                [new Label(below.At(found.Span), "found here")],
                new Suggestion($"read what changed in \"{name.Text}\", then ask for its version", new TextEdit(ruleset.At(asked.Span), found.Content.Text)));
            return false;
        }

        return true;
    }

    private void NoBase(StatementSyntax ruleset, NameSyntax name, StatementSyntax? inChain)
    {
        if (inChain is not null)
        {
            var itself = ReferenceEquals(inChain, ruleset);
            Report("SR2103", itself ? "A house cannot build on itself" : $"\"{ruleset.Head<NameSyntax>().Text}\" and \"{name.Text}\" build on one another in a circle", ruleset, name.Span, itself ? "its own name" : "leads back",
                itself ? [] : [new Label(inChain.HeadLocation, "builds on it, directly or over others")], new Suggestion("take the line \"builds on\" out of the house that all others start from"));
        }
        else if (nearby.Count(other => NameText.Same(other, name.Text)) > 1)
        {
            Report("SR2104", $"Several houses beside this one are called \"{name.Text}\"", ruleset, name.Span, "which one", [], new Suggestion("give each house a name of its own"));
        }
        else
        {
            var near = NameSuggester.Nearest(name.Text, nearby);
            Report("SR2101", $"There is no house \"{name.Text}\" to build on", ruleset, name.Span, "found in no folder beside this one", [],
                near.IsEmpty
                    ? new Suggestion(nearby.IsEmpty ? "put the folder of that house beside the folder of this one" : $"houses beside this one: {string.Join(", ", nearby.Distinct(StringComparer.Ordinal).Take(8))}")
                    : new Suggestion($"did you mean \"{near[0]}\"?", new TextEdit(ruleset.At(name.Span), NameQuotes.Of(near[0])), EditSafety.Shown));
        }
    }

    private void Report(string code, string headline, StatementSyntax ruleset, SourceSpan place, string label, Label[] others, Suggestion suggestion) =>
        findings.Add(new Diagnostic(code, Severity.Error, headline, new Label(ruleset.At(place), label))
        {
            Within = $"ruleset \"{ruleset.Head<NameSyntax>().Text}\"",
            Others = [.. others],
            Suggestions = [suggestion],
        });
}
