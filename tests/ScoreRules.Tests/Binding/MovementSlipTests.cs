using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Binding;

/// <summary>A sample of the slips of a word in the facts of the shared movements: of each movement every so-many-th, always the same ones.</summary>
public sealed class MovementSlipTests
{
    private const int Step = 401;

    // Joints, angles and directions are read and not yet applied, and their names are not yet checked.
    private static readonly string[] NotYetChecked = ["movement ", "also known as ", "keeps ", "moves ", "pulley ", "source ", "note "];

    private static readonly FileSyntax[] Around =
    [
        .. new[] { "shared/vocabulary.rules", "shared/muscles.rules" }.Select(file => SyntaxParser.Parse(new SourceText($"rulesets/{file}", Repository.Read(["rulesets", .. file.Split('/')])))),
        SyntaxParser.Parse(new SourceText("rulesets/shared/targets.rules", Targets())),
    ];

    [Fact]
    public void No_slip_in_a_fact_is_silent_and_none_has_an_echo()
    {
        var movements = Repository.Read("rulesets", "shared", "movements.rules").ReplaceLineEndings("\n").Split("\n\n").Where(block => block.StartsWith("movement ", StringComparison.Ordinal)).ToList();
        var slips = movements.SelectMany((block, number) => WordSlip.In(block).Where((slip, index) => (index + (number * 7)) % Step == 0 && IsFact(block, slip)).Select(slip => (block, slip))).ToList();
        slips.Count.ShouldBeGreaterThan(150);
        slips.AsParallel().AsOrdered().Select(pair => Fault(pair.block, pair.slip)).OfType<string>().ShouldBeEmpty();
    }

    private static string? Fault(string block, WordSlip slip)
    {
        var found = Findings(slip.Text);
        if (found.Length > (slip.IsSwap ? 2 : 1))
        {
            return $"echo: {slip.Told}:\n  {string.Join("\n  ", found.Select(DiagnosticText.Short))}";
        }

        return found.Length > 0 || HouseMeaning.Of(slip.Text).SequenceEqual(HouseMeaning.Of(block), StringComparer.Ordinal) ? null : $"silent: {slip.Told} in {block.Split('\n')[0]}";
    }

    private static Diagnostic[] Findings(string block)
    {
        var own = SyntaxParser.Parse(new SourceText("rulesets/shared/movements.rules", block));
        var reader = RulesetReader.From(Around.Append(own).OrderBy(file => file.Source.Path, StringComparer.Ordinal));
        reader.Bind([]);
        return [.. reader.Findings.ToSorted().Where(finding => finding.Location.Path == own.Source.Path && finding.Code != "SR2004")];
    }

    private static bool IsFact(string block, WordSlip slip)
    {
        var start = block.LastIndexOf('\n', Math.Max(0, slip.At - 1)) + 1;
        var line = block[start..].TrimStart();
        return slip.At > 0 && !line.Split('\n')[0].Contains('°', StringComparison.Ordinal) && !NotYetChecked.Any(word => line.StartsWith(word, StringComparison.Ordinal));
    }

    private static string Targets() =>
        string.Join("\n\n", Repository.Read("rulesets", "longreach", "house.rules").ReplaceLineEndings("\n").Split("\n\n").Where(block => block.StartsWith("target ", StringComparison.Ordinal)));
}
