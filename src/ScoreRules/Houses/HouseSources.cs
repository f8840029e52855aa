using System.Collections.Immutable;
using ScoreRules.Language.Diagnostics;
using ScoreRules.Language.Text;

namespace ScoreRules.Houses;

/// <summary>All files of a house, by path, with what could not be read.</summary>
/// <param name="Files">The files.</param>
/// <param name="Findings">Files or stretches that could not be read.</param>
public sealed record HouseSources(ImmutableArray<HouseFile> Files, ImmutableArray<Diagnostic> Findings)
{
    /// <summary>Names of the houses in the folders beside.</summary>
    public ImmutableArray<string> Nearby { get; init; } = [];

    /// <summary>The rule text among the files, each with the house it belongs to.</summary>
    public IEnumerable<SourceText> Rules()
    {
        var top = Files.Max(file => (int?)file.Layer) ?? 0;
        return Files.Where(file => !file.IsSpreadsheet).Select(file => new SourceText(file.Path, file.Text) { Layer = file.Layer, IsOfBase = file.Layer > 0 && file.Layer < top });
    }
}
