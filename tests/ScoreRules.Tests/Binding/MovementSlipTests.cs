using ScoreRules.Language.Binding;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;
using ScoreRules.Tests.Support;
using Shouldly;
using Xunit;

namespace ScoreRules.Tests.Binding;

/// <summary>
/// A sample of the slips of <see cref="WordSlipTests"/> in the facts of the shared movements, which are too many to try them all: every so
/// manyth slip, the same ones each time, in its own movement beside the names of all others. Posture and resistance are left out:
/// they are not bound yet, so that a misspelt joint is not seen.
/// </summary>
public sealed class MovementSlipTests
{
    private const int EveryNth = 701;
    private static readonly string[] Geometry = ["keeps", "moves", "but keeps", "but moves", "pulley", "but pulley", "foot line", "external load", "band", "cam radius", "accepts"];
    private static readonly string[] Labels = ["movement", "also known as"];
    private static readonly string[] Kept = ["movement", "also known as", "trains", "like"];

    private static readonly FileSyntax[] Others =
    [
        .. Files("shared", 0).Where(source => !source.Path.EndsWith("movements.rules", StringComparison.Ordinal)).Concat(Files("longreach", 1)).Select(SyntaxParser.Parse),
    ];

    private static readonly string[] Movements =
        [.. Repository.Read("rulesets", "shared", "movements.rules").ReplaceLineEndings("\n").Split("\n\n").Where(block => block.StartsWith("movement ", StringComparison.Ordinal))
            .Select(block => string.Join('\n', block.Split('\n').TakeWhile(line => !Starts(line, Geometry))))];

    private static readonly string[] Names = [.. Movements.Select(block => string.Join('\n', block.Split('\n').Where(line => Starts(line, Kept))))];

    [Fact]
    public void A_sample_of_slips_is_neither_silent_nor_has_an_echo()
    {
        var slips = Enumerable.Range(0, Movements.Length)
            .SelectMany(movement => WordSlip.In(Movements[movement]).Where(slip => !Starts(LineAt(Movements[movement], slip.At), Labels)).Select(slip => (Movement: movement, Slip: slip)))
            .Where((_, index) => index % EveryNth == 0).ToList();
        slips.Count.ShouldBeGreaterThan(100);
        Findings(0, Movements[0]).ShouldBeEmpty();
        slips.AsParallel().AsOrdered().Select(pair => Fault(pair.Movement, pair.Slip)).OfType<string>().ShouldBeEmpty();
    }

    private static string? Fault(int movement, WordSlip slip)
    {
        var found = Findings(movement, slip.Text);
        return found.Length > 1 && !slip.IsSwap ? $"echo: {slip.Told}:\n  {string.Join("\n  ", found.Select(DiagnosticText.Short))}"
            : found.Length == 0 && !HouseMeaning.Of(slip.Text).SequenceEqual(HouseMeaning.Of(Movements[movement]), StringComparer.Ordinal) ? $"silent: {slip.Told} of\n{Movements[movement]}"
            : null;
    }

    private static bool Starts(string line, string[] words) => Array.Exists(words, word => line.TrimStart().StartsWith(word + " ", StringComparison.Ordinal));

    private static string LineAt(string text, int at) => text[(text.LastIndexOf('\n', at) + 1)..].Split('\n')[0];

    private static IEnumerable<SourceText> Files(string folder, int layer) =>
        Directory.GetFiles(Repository.PathOf("rulesets", folder), "*.rules").Order(StringComparer.Ordinal)
            .Select(path => new SourceText($"rulesets/{folder}/{Path.GetFileName(path)}", File.ReadAllText(path).ReplaceLineEndings("\n")) { Layer = layer });

    private static Diagnostic[] Findings(int movement, string damaged)
    {
        var text = string.Join("\n\n", [.. Names[..movement], damaged, .. Names[(movement + 1)..]]);
        var reader = RulesetReader.From(Others.Append(SyntaxParser.Parse(new SourceText("rulesets/shared/movements.rules", text))).OrderBy(file => file.Source.Path, StringComparer.Ordinal), new Surroundings([], null));
        reader.Bind([]);
        return [.. reader.Findings.ToSorted()];
    }
}
