using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Syntax.Layout;
using ScoreRules.Language.Syntax.Tree;
using ScoreRules.Language.Text;

namespace ScoreRules.Language.Syntax;

/// <summary>Text to statements. Any text ends in a result: what cannot be read is reported, the rest is kept.</summary>
internal static class SyntaxParser
{
    /// <summary>Parses one file.</summary>
    public static FileSyntax Parse(SourceText source)
    {
        var read = Read(source);
        var proof = new EditProof(source, text => Read(text).Findings);
        return read with { Findings = [.. read.Findings.Select(proof.Check)] };
    }

    /// <summary>Parses a text composed of pieces. Its findings come without edits, which would be made in the texts the pieces were taken from.</summary>
    public static FileSyntax ParseComposed(SourceText source)
    {
        var read = Read(source);
        return read with { Findings = [.. read.Findings.Select(finding => finding with { Suggestions = [.. finding.Suggestions.Select(suggestion => new Suggestion(suggestion.Advice))] })] };
    }

    private static FileSyntax Read(SourceText source)
    {
        var findings = new DiagnosticBag();
        var splitter = new StatementSplitter(source, findings);
        var statements = splitter.Split();
        return new FileSyntax(source, [.. statements], findings.ToSorted(), [.. splitter.Doubtful]);
    }
}
