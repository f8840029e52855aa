using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax;
using ScoreRules.Language.Text;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Binding;

/// <summary>
/// A sample of the slips of <see cref="WordSlipTests"/> over the facts of the shared movements, which are too many to try them all: every so
/// manyth slip, the same ones each time. Each is tried in a copy of its own statement beside the names of all others.
/// </summary>
public sealed class MovementSlipTests
{
    private const int EveryNth = 397;
    private static readonly string Text = Repository.Read("rulesets", "shared", "movements.rules").ReplaceLineEndings("\n");
    private static readonly FileSyntax[] Others = [.. Files("shared").Concat(Files("longreach")).Where(path => !path.EndsWith("movements.rules", StringComparison.Ordinal)).Select(path => SyntaxParser.Parse(new SourceText(path, File.ReadAllText(path).ReplaceLineEndings("\n")) { Layer = path.Contains("shared", StringComparison.Ordinal) ? 0 : 1 }))];

    [Fact]
    public void A_sample_of_slips_is_neither_silent_nor_has_an_echo()
    {
        var known = Findings(Text);
        known.ShouldBeEmpty();
        var slips = WordSlip.In(Text).Where((slip, index) => index % EveryNth == 0).ToList();
        slips.Count.ShouldBeGreaterThan(100);
        slips.AsParallel().AsOrdered().Select(Fault).OfType<string>().ShouldBeEmpty();
    }

    private static string? Fault(WordSlip slip)
    {
        var found = Findings(slip.Text);
        var line = new SourceText("x", Text).LineOf(slip.At);
        return found.Length > 1 && !(slip.IsSwap && found.All(finding => Math.Abs(finding.Location.Line - line) <= 1)) ? $"echo: {slip.Told}:\n  {string.Join("\n  ", found.Select(DiagnosticText.Short))}"
            : found.Length == 0 && !HouseMeaning.Of(Around(slip.Text, slip.At)).SequenceEqual(HouseMeaning.Of(Around(Text, slip.At)), StringComparer.Ordinal) ? $"silent: {slip.Told} in line {line}"
            : null;
    }

    // The block of lines without a blank one that holds an offset.
    private static string Around(string text, int at)
    {
        var start = text.LastIndexOf("\n\n", at, StringComparison.Ordinal);
        var end = text.IndexOf("\n\n", at, StringComparison.Ordinal);
        return text[(start + 1)..(end < 0 ? text.Length : end)];
    }

    private static IEnumerable<string> Files(string folder) => Directory.GetFiles(Repository.PathOf("rulesets", folder), "*.rules").Order(StringComparer.Ordinal);

    private static Diagnostic[] Findings(string movements)
    {
        var reader = RulesetReader.From(Others.Append(SyntaxParser.Parse(new SourceText("rulesets/shared/movements.rules", movements))).OrderBy(file => file.Source.Path, StringComparer.Ordinal), new Surroundings([], null));
        reader.Bind([]);
        if (!reader.Findings.HasErrors)
        {
            reader.CheckNames();
        }

        return [.. reader.Findings.ToSorted()];
    }
}
