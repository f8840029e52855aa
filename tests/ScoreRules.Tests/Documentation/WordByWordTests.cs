using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;
using ScoreRules.Tests.Binding;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Documentation;

/// <summary>
/// Every word of every example of the language page, which are all kinds of statement and line, is lost, made nonsense, or
/// replaced by the first words of another line. Each time the text means the same, or a message that says more than "wrong" stands by it.
/// </summary>
public sealed class WordByWordTests
{
    public static TheoryData<int> Examples() => [.. LanguagePage.Examples.Select(example => example.Number)];

    [Theory]
    [MemberData(nameof(Examples))]
    public void A_word_lost_or_replaced_is_told_where_it_stands_and_what_should_stand_there(int number)
    {
        var example = LanguagePage.Examples[number];
        var others = Parsed(example);
        var before = Findings(example, example.Block.Text, others).Select(Key).ToHashSet(StringComparer.Ordinal);
        var meaning = HouseMeaning.Of(example.Block.Text);
        var roles = new WordRoles(example.Block.Text);
        WordMutant.Of(example.Block.Text).Select(mutant => Fault(mutant, meaning, roles, [.. Findings(example, mutant.Text, others).Where(finding => !before.Contains(Key(finding)))]))
            .OfType<string>().ShouldBeEmpty();
    }

    private static string? Fault(WordMutant mutant, string[] meaning, WordRoles roles, List<Diagnostic> found)
    {
        if (found.Count == 0)
        {
            return roles.IsFree(mutant) || HouseMeaning.Of(mutant.Text).SequenceEqual(meaning, StringComparer.Ordinal) ? null : $"silent: {mutant.Told} at {mutant.At}";
        }

        if (found.Find(IsGeneric) is { } generic)
        {
            return $"generic: {mutant.Told} at {mutant.At}: {DiagnosticText.Full(generic)}";
        }

        var source = new SourceText(LanguageExample.Path, mutant.Text);
        var places = found.SelectMany(finding => finding.Others.Prepend(finding.Primary)).Select(label => label.Location).Where(place => place.Path == LanguageExample.Path);
        return places.Any(place => roles.IsNear(mutant, source, place.Line)) ? null : $"elsewhere: {mutant.Told} at {mutant.At}: {string.Join(" / ", found.Select(DiagnosticText.Short))}";
    }

    /// <summary>Says that something is wrong, but neither what should stand there nor what it clashes with.</summary>
    private static bool IsGeneric(Diagnostic finding) => finding.Suggestions.IsEmpty && finding.Notes.IsEmpty && finding.Others.IsEmpty;

    private static string Key(Diagnostic finding) => $"{finding.Code} {finding.Headline}";

    private static List<FileSyntax> Parsed(LanguageExample example) =>
        [.. example.With("").Files.Where(file => file.Path != LanguageExample.Path).Select(file => SyntaxParser.Parse(new SourceText(file.Path, file.Text) { Layer = file.Layer, IsOfBase = file.Layer == 1 }))];

    private static Diagnostic[] Findings(LanguageExample example, string text, List<FileSyntax> others)
    {
        var own = SyntaxParser.Parse(new SourceText(LanguageExample.Path, text) { Layer = example.Below is null ? 1 : 2 });
        var reader = RulesetReader.From(others.Append(own).OrderBy(file => file.Source.Path, StringComparer.Ordinal), new Surroundings(["Riverside"], null));
        reader.Bind([]);
        if (!reader.Findings.HasErrors)
        {
            reader.CheckNames();
        }

        return [.. reader.Findings.ToSorted()];
    }
}
